/** A folder of jobs on disk, and the index of it where one is kept. */

import { isUtf8 } from 'node:buffer';
import { lstatSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { DiskIndex, type FolderHost, filesUnder, type Indexed } from '../../engine/firm/disk-index';
import { readSaved, savedText } from '../../engine/firm/saved';
import { FileTrouble, WrongUse } from '../exits';
import type { Io } from '../io';
import { MOST_BYTES, whyNot } from './read';
import { writeWhole } from './write';

/** No index of as many files as are looked at is larger. */
const MOST_OF_INDEX = 512 * 1024 * 1024;

/** As every index of ours begins, whole or not. */
const BEGINS = '{"format":"perpend-index"';

export const FOLDER_HOST: FolderHost = {
  list(folder) {
    try {
      return readdirSync(folder, { withFileTypes: true }).map((each) => ({
        name: each.name,
        is: each.isFile() ? 'file' : each.isDirectory() ? 'folder' : 'other',
      }));
    } catch {
      return [];
    }
  },
  stamp(file) {
    const found = lstatSync(file, { throwIfNoEntry: false });
    if (!found?.isFile() || found.size > MOST_BYTES) return undefined;
    return { size: found.size, changed: found.mtimeMs };
  },
  read(file) {
    try {
      const bytes = readFileSync(file);
      return isUtf8(bytes) ? bytes.toString('utf8') : undefined;
    } catch {
      return undefined;
    }
  },
  join: path.join,
};

/** The jobs under a folder. With an index file only what has changed since is read, and the file brought up to it. */
export function indexOf(folder: string, saved: string | undefined, io: Io): DiskIndex {
  const at = saved === undefined ? undefined : path.resolve(io.cwd, saved);
  const before = at === undefined ? undefined : savedAt(at, saved!, folder, io);
  const index = new DiskIndex(FOLDER_HOST, before?.known);
  const files = [...filesUnder(folder, FOLDER_HOST)];
  for (const file of files) index.look(file);
  const gone = index.only(files);
  if (at !== undefined && before && (index.reads || gone || !before.known.size))
    writeWhole(at, savedText(index.entries, folder), saved!);
  return index;
}

interface Saved {
  readonly known: ReadonlyMap<string, Indexed>;
}

/** Nothing where another file stands there: it is left as it is. */
function savedAt(at: string, shown: string, folder: string, io: Io): Saved | undefined {
  if (/\.perp$/i.test(at))
    throw new WrongUse(
      phrase`--index ${shown} is a file in the notation, and would be overwritten.`,
    );
  const text = textAt(at, shown);
  if (!text) return { known: new Map() };
  const found = readSaved(text, folder);
  if (typeof found !== 'string') return { known: found };
  const ours = text.startsWith(BEGINS);
  const then = ours ? phrase`It is made anew.` : phrase`It is left as it is, and no index is kept.`;
  io.err(`perpend: ${shown} ${found}. ${then}\n`);
  return ours ? { known: new Map() } : undefined;
}

/** Empty where there is none yet. @throws FileTrouble */
function textAt(at: string, shown: string): string {
  try {
    const found = statSync(at, { throwIfNoEntry: false });
    if (!found) return '';
    if (!found.isFile()) throw new FileTrouble(phrase`it is no ordinary file`);
    if (found.size > MOST_OF_INDEX) throw new FileTrouble(phrase`it is larger than any index`);
    return readFileSync(at, 'utf8');
  } catch (error) {
    const why = error instanceof FileTrouble ? error.message : whyNot(error);
    throw new FileTrouble(phrase`${shown} cannot be read: ${why}.`);
  }
}
