/** The editors of this window, as a preview asks for them. */
import {
  type TextDocument,
  type TextEditor,
  Uri,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';

/** Where a file is to be seen. */
export function editorOf(uri: Uri): TextEditor | undefined {
  const wanted = uri.toString();
  return window.visibleTextEditors.find(({ document }) => document.uri.toString() === wanted);
}

/** Where its cursor is, if it is to be seen. */
export function lineOf(uri: Uri): number | undefined {
  return editorOf(uri)?.selection.active.line;
}

/** A column that the preview is not in. */
export function besides({ viewColumn }: WebviewPanel): number {
  return viewColumn === 1 ? 2 : 1;
}

/** Of a file, without where it lies. */
export function nameOf({ path }: Uri): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

/** The text of a file; nothing where it cannot be had any more. */
export async function opened(uri: Uri): Promise<TextDocument | undefined> {
  try {
    return await workspace.openTextDocument(uri);
  } catch {
    return undefined;
  }
}

/** Where a file stands once it, or a folder that it is in, was renamed; nothing where neither was. */
export function renamedTo(
  file: Uri,
  files: readonly { readonly oldUri: Uri; readonly newUri: Uri }[],
): Uri | undefined {
  for (const { oldUri, newUri } of files) {
    if (oldUri.scheme !== file.scheme || oldUri.authority !== file.authority) continue;
    if (file.path === oldUri.path) return newUri;
    if (file.path.startsWith(`${oldUri.path}/`))
      return Uri.joinPath(newUri, file.path.slice(oldUri.path.length));
  }
  return undefined;
}
