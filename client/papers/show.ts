/** Opens a page, a paper or a drawing in the preview, beside the text. */
import { commands, Range, TextEditorRevealType, Uri, window, workspace } from 'vscode';
import { PAGE_KINDS } from '../../shared/protocol/pages';
import { FRONT } from '../../shared/protocol/preview';
import { documentOf } from '../target';

/** A command for each: `perpend.price`, `perpend.quote`. `perpend.record` writes into the record instead. */
export const SHOWN = PAGE_KINDS.filter((kind) => kind !== 'record');

export async function showPage(show: string, target: unknown): Promise<void> {
  const document = await documentOf(target);
  if (document) await preview(document.uri, show);
}

/** The drawing follows the cursor: so that is put into the piece of work. */
export async function showWork(uri: string, line = 0): Promise<void> {
  const document = await workspace.openTextDocument(Uri.parse(uri, true));
  const selection = new Range(line, 0, line, 0);
  const editor = await window.showTextDocument(document, { selection });
  editor.revealRange(selection, TextEditorRevealType.InCenterIfOutsideViewport);
  await preview(document.uri, FRONT);
}

async function preview(uri: Uri, show: string): Promise<void> {
  await commands.executeCommand('perpend.preview', { uri: uri.toString(), show });
}
