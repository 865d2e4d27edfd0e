/** What the server answers a deed with, put where the reader sees it: into the job, or as a new text that is not saved. */
import {
  l10n,
  Range,
  type TextDocument,
  Uri,
  ViewColumn,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import type { Edits } from '../../shared/protocol/edits';
import { LANGUAGE } from '../language';

/** Nothing is put in where the text has gone on meanwhile. */
export async function applied(
  document: TextDocument,
  { documentChanges }: Edits,
): Promise<boolean> {
  const edit = new WorkspaceEdit();
  for (const { textDocument, edits } of documentChanges) {
    if (textDocument.version !== document.version) return sayGoneOn();
    for (const { range, newText } of edits) edit.replace(document.uri, rangeOf(range), newText);
  }
  return (await workspace.applyEdit(edit)) || sayGoneOn();
}

function rangeOf({
  start,
  end,
}: Edits['documentChanges'][number]['edits'][number]['range']): Range {
  return new Range(start.line, start.character, end.line, end.character);
}

function sayGoneOn(): false {
  void window.showWarningMessage(
    l10n.t('The job was edited meanwhile, so nothing was written. Try again.'),
  );
  return false;
}

export async function showLine(document: TextDocument, line: number): Promise<void> {
  const at = document.lineAt(Math.min(line, document.lineCount - 1)).range;
  await window.showTextDocument(document, { selection: at, viewColumn: ViewColumn.Active });
}

/** A file of that name in the folder which is not there yet: `wall.perp`, `wall-2.perp`. */
export async function freePlace(folder: Uri, stem: string): Promise<Uri> {
  for (let i = 1; ; i++) {
    const place = Uri.joinPath(folder, `${stem}${i === 1 ? '' : `-${i}`}.perp`);
    if (!(await isTaken(place))) return place;
  }
}

async function isTaken(place: Uri): Promise<boolean> {
  const open = workspace.textDocuments.some(({ uri }) => uri.path === place.path);
  if (open) return true;
  try {
    await workspace.fs.stat(place);
    return true;
  } catch {
    return false;
  }
}

/** A text that is not saved yet, and will be saved there: whoever reads it decides. */
export async function openNew(place: Uri | undefined, text: string): Promise<TextDocument> {
  if (!place || place.scheme === 'untitled') return openNowhere(text);
  const document = await workspace.openTextDocument(place.with({ scheme: 'untitled' }));
  const edit = new WorkspaceEdit();
  edit.replace(document.uri, new Range(0, 0, document.lineCount, 0), text);
  await workspace.applyEdit(edit);
  await window.showTextDocument(document);
  return document;
}

/** An address without a folder would be saved at the root of the disk: this one is asked for when it is saved. */
async function openNowhere(content: string): Promise<TextDocument> {
  const document = await workspace.openTextDocument({ language: LANGUAGE, content });
  await window.showTextDocument(document);
  return document;
}

/** @param place is free */
export async function openSaved(place: Uri, text: string): Promise<void> {
  await workspace.fs.writeFile(place, new TextEncoder().encode(text));
  const document = await workspace.openTextDocument(place);
  await window.showTextDocument(document, { preview: false });
}
