/** The language server is begun where there is something for it. The editor wakes us wherever its list of files is seen. */
import { Disposable, workspace } from 'vscode';
import { filesUnder } from './files-under';
import { LANGUAGE } from './language';

/** A file of ours is open, or stands in a folder that is. */
export async function isWanted(): Promise<boolean> {
  if (workspace.textDocuments.some(({ languageId }) => languageId === LANGUAGE)) return true;
  for (const { uri } of workspace.workspaceFolders ?? [])
    if ((await filesUnder(uri, 1)).length) return true;
  return false;
}

/** Told as soon as one is opened or made, or a folder with one is added. Whoever asks the server for anything begins it too. */
export function whenWanted(begin: () => unknown): Disposable {
  const made = workspace.createFileSystemWatcher('**/*.perp', false, true, true);
  const look = async () => {
    if (await isWanted()) begin();
  };
  return Disposable.from(
    made,
    made.onDidCreate(begin),
    workspace.onDidOpenTextDocument(({ languageId }) => {
      if (languageId === LANGUAGE) begin();
    }),
    workspace.onDidChangeWorkspaceFolders(look),
  );
}
