/** Which job a command is about: the file it was called on, the one that is said, or the one in front. */
import { Disposable, l10n, type TextDocument, Uri, window, workspace } from 'vscode';
import { LANGUAGE } from './language';
import { inFront } from './status-bar';

/** A menu gives its file; a key or another command an object with `uri` in it. */
export function uriIn(target: unknown): Uri | undefined {
  if (target instanceof Uri) return target;
  const said = (target as { uri?: unknown } | undefined)?.uri;
  if (said instanceof Uri) return said;
  return typeof said === 'string' ? Uri.parse(said, true) : undefined;
}

let last: TextDocument | undefined;

/** Keeps in mind which file of ours was in front last, for as long as it is open. */
export function rememberFront(): Disposable {
  const keep = () => {
    last = inFront() ?? last;
  };
  keep();
  return Disposable.from(
    window.onDidChangeActiveTextEditor(keep),
    workspace.onDidCloseTextDocument((document) => {
      if (document === last) last = undefined;
    }),
  );
}

/** Behind a page that stands over it, such as the first steps, the file that was in front last. */
export function meant(): TextDocument | undefined {
  return inFront() ?? last;
}

/** Opened, since the server answers for open files. Without one the reader is told. */
export async function documentOf(target: unknown): Promise<TextDocument | undefined> {
  const uri = uriIn(target);
  const document = uri ? await workspace.openTextDocument(uri) : meant();
  if (document?.languageId === LANGUAGE) return document;
  void window.showInformationMessage(l10n.t('Open a job first: a file that ends with .perp.'));
  return undefined;
}

/** What a person calls a file: its way from the folder that is open. */
export function shownName(uri: Uri): string {
  return workspace.asRelativePath(uri, false);
}
