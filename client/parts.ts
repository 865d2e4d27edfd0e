/** The files that come with the extension, wherever it is installed. */
import { Uri, workspace } from 'vscode';

/** @param name of a file in `dist` */
export function partBytes(extension: Uri, name: string): Thenable<Uint8Array> {
  return workspace.fs.readFile(Uri.joinPath(extension, 'dist', name));
}
