/** What this server can do, as it tells the client at the start. Loads nothing of the engine. */
import {
  CodeActionKind,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from './token-types';

/** UTF-16 is the encoding that every client has to speak; no other is offered. */
export function capabilities(): ServerCapabilities {
  return {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    diagnosticProvider: {
      identifier: 'perpend',
      interFileDependencies: true,
      workspaceDiagnostics: false,
    },
    hoverProvider: true,
    inlayHintProvider: { resolveProvider: false },
    completionProvider: { triggerCharacters: [' '], resolveProvider: false },
    documentSymbolProvider: true,
    foldingRangeProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    semanticTokensProvider: {
      legend: { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] },
      full: { delta: true },
      range: true,
    },
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix], resolveProvider: false },
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
}
