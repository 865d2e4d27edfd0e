/** Writing a file whole or not at all: into a new file beside it, which then takes its place. */

import {
  closeSync,
  fchmodSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { later, phrase, spoken } from '../../../shared/phrase';
import { FileTrouble } from '../exits';

const WHY: Readonly<Record<string, string>> = {
  ENOENT: later`the folder is not there`,
  ENOTDIR: later`the folder is not there`,
  EACCES: later`its folder may not be written to`,
  EPERM: later`its folder may not be written to`,
  EROFS: later`its folder may not be written to`,
  EISDIR: later`it is a folder`,
  ENOSPC: later`the disk is full`,
  EDQUOT: later`the disk is full`,
  EFBIG: later`the disk takes no file so large`,
};

/**
 * Puts `content` in place of what `name` holds, keeping its mode. A link is followed: what it points to changes.
 * @throws FileTrouble, and then the old file is as it was
 */
export function writeWhole(name: string, content: string | Uint8Array, shown: string): void {
  try {
    put(realName(name), content);
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    throw new FileTrouble(
      phrase`${shown} cannot be written: ${spoken(WHY[code] ?? (code || String(error)))}.`,
    );
  }
}

function realName(name: string): string {
  try {
    return realpathSync(name);
  } catch {
    return name; // a new file has no real name yet
  }
}

/** A device or a pipe is written to: a file in its place would take it away. */
function put(name: string, content: string | Uint8Array): void {
  const known = statSync(name, { throwIfNoEntry: false });
  if (!known || known.isFile() || known.isDirectory()) replace(name, content);
  else writeFileSync(name, content);
}

function replace(name: string, content: string | Uint8Array): void {
  const fresh = path.join(path.dirname(name), `.${path.basename(name)}.${process.pid}.new`);
  const mode = modeOf(name);
  const file = openSync(fresh, 'wx'); // never someone else's file
  try {
    fill(file, content, mode);
    renameSync(fresh, name);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error;
  }
}

function modeOf(name: string): number | undefined {
  const known = statSync(name, { throwIfNoEntry: false });
  if (known?.isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
  return known && known.mode & 0o7777;
}

/** On the disk before it takes the old one's place: a power cut leaves one or the other. */
function fill(file: number, content: string | Uint8Array, mode: number | undefined): void {
  try {
    writeFileSync(file, content);
    if (mode !== undefined) fchmodSync(file, mode);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
