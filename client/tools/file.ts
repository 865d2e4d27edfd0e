/** The file that a language model means: in a folder that is open and nowhere else. */
import { FileType, Uri, type WorkspaceFolder, workspace } from 'vscode';
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
  const name = said.length > LONGEST ? `${said.slice(0, LONGEST)}…` : said;
  throw new Error(`There is no file ${name} in the folders that are open. ${await known()}`);
}

/** A name that a model has made up may be of any length. */
const LONGEST = 200;

async function found(said: string): Promise<Uri | undefined> {
  for (const uri of candidates(said)) if (inside(uri) && (await isThere(uri))) return uri;
  return undefined;
}

/** An address, a path of this machine, or a way from a folder that is open. */
function candidates(said: string): Uri[] {
  if (/^[a-z][a-z\d+.-]+:\/\//i.test(said)) return [straight(Uri.parse(said))];
  const folders = workspace.workspaceFolders ?? [];
  const ways = [said, slashed(said)];
  return [...new Set(ways)].flatMap((way) => folders.flatMap((folder) => within(folder, way)));
}

/** As another system writes paths: `C:\jobs\wall.perp`. */
function slashed(said: string): string {
  return said.replaceAll('\\', '/').replace(/^(?=[a-z]:\/)/i, '/');
}

/** Where several folders are open, what the editor shows of a file begins with the name of its own. */
function within({ uri, name }: WorkspaceFolder, way: string): Uri[] {
  if (way.startsWith('/')) return [straight(uri.with({ path: way }))];
  const named = way.startsWith(`${name}/`) ? [Uri.joinPath(uri, way.slice(name.length + 1))] : [];
  return [...named, Uri.joinPath(uri, way)];
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
    return ((await workspace.fs.stat(uri)).type & FileType.Directory) === 0;
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
