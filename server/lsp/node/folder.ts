/** The open folders for an index of jobs: ordinary files only, so much of each, and no links. */
import { isUtf8 } from 'node:buffer';
import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { MOST_CHARACTERS } from '../../engine/workspace/source';
import type { JobFiles } from '../surroundings';

/** More bytes than the most characters that the engine takes can have. */
const MOST_BYTES = 3 * MOST_CHARACTERS + 4;

/** Never throws: what cannot be read is not there. */
export const FOLDER: JobFiles = {
  list: (folder) =>
    tried(() =>
      readdirSync(folder, { withFileTypes: true }).map((each) => ({
        name: each.name,
        is: each.isFile() ? 'file' : each.isDirectory() ? 'folder' : 'other',
      })),
    ) ?? [],
  stamp: (file) =>
    tried(() => {
      const found = lstatSync(file);
      const fit = found.isFile() && found.size <= MOST_BYTES;
      return fit ? { size: found.size, changed: found.mtimeMs } : undefined;
    }),
  read: (file) =>
    tried(() => {
      const bytes = readFileSync(file);
      return isUtf8(bytes) ? bytes.toString('utf8') : undefined;
    }),
  join: path.join,
  bring: () => undefined,
  again: () => undefined,
};

function tried<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
