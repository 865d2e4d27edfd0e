/** The file that a language model means: in a folder that is open and nowhere else. */
import { Uri, workspace } from 'vscode';
import { filesUnder } from '../files-under';
import { inFront } from '../status-bar';

const MOST_FILES = 200;
/** So many are named to choose from. */
const MOST_NAMED = 20;

/**
 * @param all without a name nothing is meant, and so all of them
 * @throws Error that names the files there are
 */
export async function fileFor(said: string | undefined, all: boolean): Promise<Uri | undefined> {
  if (said === undefined) {
    const front = inFront()?.uri;
    if (front || all) return front;
    throw new Error(`No job is open. Say which in "file". ${await known()}`);
  }
  const file = await found(said);
  if (file) return file;
  throw new Error(`There is no file ${said} in the folders that are open. ${await known()}`);
}

async function found(said: string): Promise<Uri | undefined> {
  for (const uri of candidates(said)) if (inside(uri) && (await isThere(uri))) return uri;
  return undefined;
}

/** An address, a path of this machine, or a way from a folder that is open. */
function candidates(said: string): Uri[] {
  const folders = (workspace.workspaceFolders ?? []).map(({ uri }) => uri);
  if (/^[a-z][a-z\d+.-]+:\/\//i.test(said)) return [straight(Uri.parse(said))];
  const absolute = folders.map((folder) => straight(folder.with({ path: said })));
  return said.startsWith('/') ? absolute : folders.map((folder) => Uri.joinPath(folder, said));
}

/** Without `..`: an editor takes `/jobs/../etc` for a place in `/jobs`. */
function straight(uri: Uri): Uri {
  return Uri.joinPath(uri, '.');
}

/** In a folder that is open, or open itself. */
function inside(uri: Uri): boolean {
  if (workspace.getWorkspaceFolder(uri)) return true;
  return workspace.textDocuments.some((document) => document.uri.toString() === uri.toString());
}

async function isThere(uri: Uri): Promise<boolean> {
  if (workspace.textDocuments.some((document) => document.uri.toString() === uri.toString()))
    return true;
  try {
    await workspace.fs.stat(uri);
    return true;
  } catch {
    return false;
  }
}

async function known(): Promise<string> {
  const folders = workspace.workspaceFolders ?? [];
  const all = await Promise.all(folders.map(({ uri }) => filesUnder(uri, MOST_FILES)));
  const names = all
    .flat()
    .map((uri) => workspace.asRelativePath(uri))
    .sort();
  if (!names.length) return 'The folders that are open hold no job.';
  const more = names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : '';
  return `Jobs there: ${names.slice(0, MOST_NAMED).join(', ')}${more}.`;
}
