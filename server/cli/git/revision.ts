/** A job as it stood in a revision of git, with the files that it used as they stood there. */
import path from 'node:path';
import type { Host } from '../../engine/resolve/uses';
import type { Job } from '../../engine/workspace/job';
import { Workspace } from '../../engine/workspace/workspace';
import { FileTrouble, WrongUse } from '../exits';
import { decoded, MOST_BYTES } from '../files/read';
import { isWithin } from '../files/workspace';
import { LIBRARIES } from '../libraries';
import { git } from './run';

/** One commit of a repository. */
export interface Revision {
  /** The top folder of its files: a real name. */
  readonly top: string;
  /** Its full name, letters and digits. */
  readonly commit: string;
}

/** The top of the repository that a folder belongs to. @throws FileTrouble when it is in none */
export function topOf(folder: string): string {
  const top = git(folder, ['rev-parse', '--show-toplevel'])
    ?.toString('utf8')
    .replace(/\r?\n$/, '');
  if (!top) throw new FileTrouble('The file is in no git repository.');
  return path.resolve(top);
}

/** @throws WrongUse for what cannot be a revision; FileTrouble for one that is not there */
export function revisionNamed(name: string, folder: string): Revision {
  // One that git could take for an option of its own never gets as far as git.
  if (name.startsWith('-')) throw new WrongUse(`${name} is no revision.`);
  const top = topOf(folder);
  const said = git(top, [
    'rev-parse',
    '--verify',
    '--quiet',
    '--end-of-options',
    `${name}^{commit}`,
  ]);
  const commit = said?.toString('latin1').trim().split('\n').at(-1) ?? '';
  if (!/^[0-9a-f]{40,64}$/.test(commit))
    throw new FileTrouble(`There is no revision ${name} in this repository.`);
  return { top, commit };
}

/** @throws FileTrouble when it was not there, or cannot be read */
export function jobAt(revision: Revision, name: string, root: string, shown: string): Job {
  const text = textAt(revision, name, shown);
  const workspace = new Workspace(hostAt(revision, root), LIBRARIES);
  workspace.opened(name, text);
  return workspace.job(name)!;
}

export function textAt(revision: Revision, name: string, shown: string): string {
  const bytes = bytesAt(revision, name);
  const at = `in revision ${revision.commit.slice(0, 10)}`;
  if (!bytes) throw new FileTrouble(`${shown} cannot be read ${at}: there is no such file there.`);
  try {
    return decoded(bytes);
  } catch (error) {
    throw new FileTrouble(`${shown} cannot be read ${at}: ${(error as Error).message}.`);
  }
}

/** Files of one revision. A link is not followed there: what it leads to may be of no revision at all. */
function hostAt(revision: Revision, root: string): Host {
  return {
    resolve(from, to) {
      const name = path.resolve(path.dirname(from), to);
      return isWithin(root, name) ? name : undefined;
    },
    read: (name) => (isWithin(root, name) ? bytesAt(revision, name)?.toString('utf8') : undefined),
  };
}

/** Nothing for what is no ordinary file there, or larger than is read. */
function bytesAt({ top, commit }: Revision, name: string): Buffer | undefined {
  if (!isWithin(top, name) || name.includes('\0')) return undefined;
  const way = path.relative(top, name).replaceAll(path.sep, '/');
  const entry = git(top, ['ls-tree', '-z', '-l', '--full-tree', commit, '--', way]);
  const [, object, size] =
    /^100\d{3} blob ([0-9a-f]+) +(\d+)\t/.exec(entry?.toString('latin1') ?? '') ?? [];
  if (!object || Number(size) > MOST_BYTES) return undefined;
  return git(top, ['cat-file', 'blob', object]);
}
