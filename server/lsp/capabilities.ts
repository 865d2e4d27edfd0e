/** What this server can do, as it tells the client at the start. Loads nothing of the engine. */
import {
  CodeActionKind,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import type { Encoding } from './encoding';
import type { Client } from './from-proto';
import { RENAMED } from './renamed';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from './token-types';

/** All that was plainly meant, for `editor.codeActionsOnSave`. */
const FIX_ALL = 'source.fixAll.perpend';

/** @param positionEncoding as it was chosen of what the client offers */
export function capabilities(positionEncoding: Encoding, client: Client): ServerCapabilities {
  return {
    positionEncoding,
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    diagnosticProvider: {
      identifier: 'perpend',
      interFileDependencies: true,
      workspaceDiagnostics: true,
    },
    hoverProvider: true,
    inlayHintProvider: { resolveProvider: true },
    codeLensProvider: { resolveProvider: true },
    completionProvider: {
      triggerCharacters: [' ', '"'],
      resolveProvider: true,
      completionItem: { labelDetailsSupport: true },
    },
    signatureHelpProvider: { triggerCharacters: [' '], retriggerCharacters: [' ', ',', '+', '"'] },
    documentSymbolProvider: true,
    foldingRangeProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    linkedEditingRangeProvider: true,
    renameProvider: client.preparesRename ? { prepareProvider: true } : true,
    workspaceSymbolProvider: { resolveProvider: true },
    documentLinkProvider: { resolveProvider: true },
    selectionRangeProvider: true,
    semanticTokensProvider: {
      legend: { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] },
      full: { delta: true },
      range: true,
    },
    documentFormattingProvider: true,
    documentRangeFormattingProvider: { rangesSupport: true },
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
    codeActionProvider: {
      codeActionKinds: [CodeActionKind.QuickFix, FIX_ALL, CodeActionKind.Refactor],
      resolveProvider: client.resolvesActions,
    },
    workspace: {
      workspaceFolders: { supported: true, changeNotifications: true },
      fileOperations: { willRename: RENAMED },
    },
  };
}
