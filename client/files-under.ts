/** The files in the notation under a folder: as the editor finds them, or by our own walk where it cannot search. */
import { FileType, RelativePattern, Uri, workspace } from 'vscode';

/** Of a walk: folders as deep as nobody keeps jobs, and more of them than a firm has. */
const DEEPEST = 12;
const MOST_FOLDERS = 1000;

export async function filesUnder(folder: Uri, most: number): Promise<Uri[]> {
  const pattern = new RelativePattern(folder, '**/*.perp');
  const found = await workspace.findFiles(pattern, '**/node_modules/**', most);
  return found.length ? found : walked(folder, most);
}

/** An editor can search only the kinds of folders that somebody taught it, and finds nothing in others. */
async function walked(top: Uri, most: number): Promise<Uri[]> {
  const found: Uri[] = [];
  const waiting: [folder: Uri, depth: number][] = [[top, 0]];
  for (let seen = 0; waiting.length && seen < MOST_FOLDERS && found.length < most; seen++) {
    const [folder, depth] = waiting.shift()!;
    for (const [name, type] of await listed(folder)) {
      if (name.startsWith('.') || name === 'node_modules') continue;
      const each = Uri.joinPath(folder, name);
      if (type === FileType.Directory && depth < DEEPEST) waiting.push([each, depth + 1]);
      if (type === FileType.File && /\.perp$/i.test(name)) found.push(each);
    }
  }
  return found.slice(0, most);
}

async function listed(folder: Uri): Promise<readonly [string, FileType][]> {
  try {
    return await workspace.fs.readDirectory(folder);
  } catch {
    return [];
  }
}
