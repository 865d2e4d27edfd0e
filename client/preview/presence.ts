/** Whether the file of a preview is there: the editor may still hold the text of one that was deleted. */
import { Disposable, TabInputText, type Uri, window, workspace } from 'vscode';

/** Tells when the file may have come or gone: on the disk, or with the tab that still had its text. */
export function comesAndGoes(file: () => Uri, told: () => void): Disposable {
  const same = (uri: Uri) => uri.toString() === file().toString();
  const ifSame = (uri: Uri) => {
    if (same(uri)) told();
  };
  const watcher = workspace.createFileSystemWatcher('**/*.perp', false, true, false);
  return Disposable.from(
    watcher,
    watcher.onDidCreate(ifSame),
    watcher.onDidDelete(ifSame),
    workspace.onDidDeleteFiles(told),
    window.tabGroups.onDidChangeTabs(({ closed }) => {
      if (closed.some(({ input }) => input instanceof TabInputText && same(input.uri))) told();
    }),
  );
}

/** Whoever has its text in a tab sees there that the file is gone, and may save it again: that is still drawn. */
export async function isThere(uri: Uri): Promise<boolean> {
  if (uri.scheme === 'untitled' || isInTab(uri)) return true;
  try {
    await workspace.fs.stat(uri);
    return true;
  } catch (error) {
    return (error as { code?: unknown }).code !== 'FileNotFound';
  }
}

function isInTab(uri: Uri): boolean {
  const tabs = window.tabGroups.all.flatMap((group) => group.tabs);
  return tabs.some(
    ({ input }) => input instanceof TabInputText && input.uri.toString() === uri.toString(),
  );
}
