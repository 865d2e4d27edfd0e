/** The protocol’s shapes into plain data for the engine, clamped to what is there. */
import type {
  ClientCapabilities,
  InitializeParams,
  Position,
  Range,
  TextDocumentContentChangeEvent,
} from 'vscode-languageserver';
import type { ActionRange } from '../engine/ide/actions';
import type * as ide from '../engine/ide/types';
import type { SourceFile, TextChange } from '../engine/workspace/source';

export function position({ line, character }: Position): ide.Position {
  return { line, column: character };
}

/** Lines that a range touches; one that ends before the first character of a line does not touch it. */
export function lineRange({ start, end }: Range): ide.LineRange {
  const last = end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
  return { first: start.line, last };
}

export function actionRange({ start, end }: Range): ActionRange {
  return {
    startLine: start.line,
    startColumn: start.character,
    endLine: end.line,
    endColumn: end.character,
  };
}

/** A change of part of a file, or the whole text instead. A place beyond the end is taken for the end. */
export function change(
  event: TextDocumentContentChangeEvent,
  file: SourceFile,
): TextChange | string {
  if (!('range' in event) || !event.range) return event.text;
  const [startLine, startColumn] = clamped(event.range.start, file);
  const [endLine, endColumn] = clamped(event.range.end, file);
  return { startLine, startColumn, endLine, endColumn, text: event.text };
}

function clamped({ line, character }: Position, { lines }: SourceFile): [number, number] {
  if (line >= lines.length) return [lines.length - 1, lines.at(-1)!.length];
  return [line, Math.min(character, lines[line]!.length)];
}

/** What the client can do, as far as it changes an answer. */
export interface Client {
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly refreshesHints: boolean;
  readonly watchesFiles: boolean;
  readonly hasConfiguration: boolean;
  readonly changesFolders: boolean;
  readonly fillsSnippets: boolean;
  readonly takesLinks: boolean;
}

export function client({ workspace, textDocument }: ClientCapabilities): Client {
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport ?? false,
    refreshesHints: workspace?.inlayHint?.refreshSupport ?? false,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration ?? false,
    hasConfiguration: workspace?.configuration ?? false,
    changesFolders: workspace?.workspaceFolders ?? false,
    fillsSnippets: textDocument?.completion?.completionItem?.snippetSupport ?? false,
    takesLinks: textDocument?.definition?.linkSupport ?? false,
  };
}

/** Addresses of the folders that are open. */
export function folders({ workspaceFolders, rootUri }: InitializeParams): string[] {
  if (workspaceFolders?.length) return workspaceFolders.map((folder) => folder.uri);
  return rootUri ? [rootUri] : [];
}
