/** Reads for the server what it cannot reach itself: files of folders that are on no disk of its own. */
import { FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { base64 } from '../shared/base64';
import {
  FIND,
  type FileRead,
  type FindParams,
  PART,
  type PartParams,
  READ,
  type ReadParams,
} from '../shared/protocol/files';
import { filesUnder } from './files-under';
import { partBytes } from './parts';

const MISSING: FileRead = { none: 'missing' };

export function answerFiles(client: BaseLanguageClient, extension: Uri): void {
  client.onRequest<FileRead, never>(READ, (params: ReadParams) => orMissing(() => read(params)));
  client.onRequest<FileRead, never>(PART, ({ name }: PartParams) =>
    orMissing(() => part(extension, name)),
  );
  client.onRequest<string[], never>(FIND, async ({ folder, most }: FindParams) => {
    const found = await filesUnder(Uri.parse(folder, true), most);
    return found.map((uri) => uri.toString());
  });
}

/** Whatever goes wrong, the file is not there. */
async function orMissing(work: () => Promise<FileRead>): Promise<FileRead> {
  try {
    return await work();
  } catch {
    return MISSING;
  }
}

async function part(extension: Uri, name: string): Promise<FileRead> {
  return { base64: base64(await partBytes(extension, name)) };
}

async function read({ uri, within, most }: ReadParams): Promise<FileRead> {
  const file = Uri.parse(uri, true);
  if (!(await isOrdinary(file, Uri.parse(within, true)))) return MISSING;
  const { size } = await workspace.fs.stat(file);
  if (size > most) return { none: 'large' };
  const bytes = await workspace.fs.readFile(file);
  return bytes.length > most ? { none: 'large' } : { base64: base64(bytes) };
}

/** A file, with no link on the way to it from the folder: a link may lead out, and nobody here can see where to. */
async function isOrdinary(file: Uri, within: Uri): Promise<boolean> {
  const way = partsBetween(within, file);
  if (!way?.length) return false;
  for (let i = 1; i <= way.length; i++) {
    const { type } = await workspace.fs.stat(Uri.joinPath(within, ...way.slice(0, i)));
    if (type !== (i === way.length ? FileType.File : FileType.Directory)) return false;
  }
  return true;
}

function partsBetween(folder: Uri, file: Uri): string[] | undefined {
  if (folder.scheme !== file.scheme || folder.authority !== file.authority) return undefined;
  const top = folder.path.endsWith('/') ? folder.path : `${folder.path}/`;
  const parts = file.path.slice(top.length).split('/');
  const fit =
    file.path.startsWith(top) && !parts.some((each) => each === '' || /^\.\.?$/.test(each));
  return fit ? parts : undefined;
}
