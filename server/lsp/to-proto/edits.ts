/** Edits of texts: a line’s end is written as each document has it. */
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { TextEdit as EngineEdit } from '../../../shared/finding';
import type { FormatEdit } from '../../engine/ide/format';
import { range, type UriOf } from './places';

/** A line’s end is written as the document has it. */
export function textEdit(edit: FormatEdit, eol: string): TextEdit {
  return {
    range: {
      start: { line: edit.startLine, character: edit.startColumn },
      end: { line: edit.endLine, character: edit.endColumn },
    },
    newText: ended(edit.text, eol),
  };
}

function ended(text: string, eol: string): string {
  return eol === '\n' ? text : text.replace(/\r?\n/g, eol);
}

/** What an edit needs to know of the files it is of. */
export interface Files {
  readonly uriOf: UriOf;
  readonly eolOf: (name: string) => string;
}

interface VersionedFiles extends Files {
  readonly versionOf: (name: string) => number | undefined;
}

/** Edits of several files. `versioned`: each says which version of its file it is for, so that none goes into another. */
export function workspaceEdit(
  edits: readonly EngineEdit[],
  files: VersionedFiles,
  versioned: boolean,
): WorkspaceEdit {
  const byUri = changes(edits, files);
  if (!versioned) return { changes: byUri };
  const names = new Map(edits.map(({ place: { file } }) => [files.uriOf(file), file]));
  return {
    documentChanges: Object.entries(byUri).map(([uri, list]) => ({
      textDocument: { uri, version: files.versionOf(names.get(uri)!) ?? null },
      edits: list,
    })),
  };
}

export function changes(
  edits: readonly EngineEdit[],
  { uriOf, eolOf }: Files,
): Record<string, TextEdit[]> {
  const byUri: Record<string, TextEdit[]> = {};
  for (const { place, text } of edits) {
    const list = (byUri[uriOf(place.file)] ??= []);
    list.push({ range: range(place), newText: ended(text, eolOf(place.file)) });
  }
  return byUri;
}
