/** Where a new file stands: the folder that is said, known or open; else the reader is asked, since prices are looked for there. */
import { l10n, type Uri, window, workspace } from 'vscode';
import { folderOf } from './papers/save';
import { meant } from './target';

/** Jobs of a folder and of those in it find a firm’s file by this name. */
export const FIRM = 'firm.perp';

/** Examples are copies in a folder of the editor’s own, with prices of nobody: no place for one’s own work. */
const EXAMPLE = /\/globalStorage\/[^/]+\/examples\//;

/** That of the job in front, the one that is open, or that of a firm’s file which is open. */
export function ownFolder(): Uri | undefined {
  const front = meant();
  if (front && !front.isUntitled && !EXAMPLE.test(front.uri.path)) return folderOf(front);
  const firm = workspace.textDocuments.find(
    ({ uri, isUntitled }) =>
      !isUntitled && uri.path.endsWith(`/${FIRM}`) && !EXAMPLE.test(uri.path),
  );
  return workspace.workspaceFolders?.[0]?.uri ?? (firm && folderOf(firm));
}

/** @returns nothing when the reader does not say */
export async function askFolder(title: string): Promise<Uri | undefined> {
  const openLabel = l10n.t('Keep Them Here');
  const only = { canSelectFolders: true, canSelectFiles: false, canSelectMany: false };
  return (await window.showOpenDialog({ ...only, title, openLabel }))?.[0];
}
