/** Which job a command is about: the file it was called on, the one that is said, or the one in front. */
import { Disposable, l10n, type TextDocument, Uri, window, workspace } from 'vscode';
import { LANGUAGE } from './language';
import { inFront } from './status-bar';
import { unlinked } from './unlinked';

/** A menu gives its file; a key or another command an object with `uri` in it. */
export function uriIn(target: unknown): Uri | undefined {
  if (target instanceof Uri) return target;
  const said = (target as { uri?: unknown } | null | undefined)?.uri;
  if (said instanceof Uri) return said;
  // A word without a scheme is the path of no file that anybody could mean.
  return typeof said === 'string' ? Uri.parse(said) : undefined;
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

/** A file as it stands in an editor, saved or not. Where it is not there any more, the reader is told. */
export async function documentAt(uri: Uri): Promise<TextDocument | undefined> {
  try {
    return await workspace.openTextDocument(uri);
  } catch {
    void window.showWarningMessage(unlinked(l10n.t('{0} cannot be opened.', shownName(uri))));
    return undefined;
  }
}

/** Opened, since the server answers for open files. Without one the reader is told. */
export async function documentOf(target: unknown): Promise<TextDocument | undefined> {
  const uri = uriIn(target);
  const document = uri ? await documentAt(uri) : meant();
  if (document?.languageId === LANGUAGE) return document;
  if (uri && !document) return undefined;
  void window.showInformationMessage(l10n.t('Open a job first: a file that ends with .perp.'));
  return undefined;
}

/** What a person calls a file: its way from the folder that is open. */
export function shownName(uri: Uri): string {
  return workspace.asRelativePath(uri, false);
}

/** Among others: where several folders are open, with the folder, since files of two may have one name. */
export function listedName(uri: Uri): string {
  return workspace.asRelativePath(uri);
}
