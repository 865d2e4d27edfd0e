/** Files on disk for the engine: only those inside the open folders, only ordinary ones, only so much of each. */
import { closeSync, openSync, readSync, realpathSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { MOST_CHARACTERS } from '../../engine/workspace/source';
import type { Files } from '../surroundings';
import { NAMES } from './names';

/** Three bytes a character at most: so much of a file always shows when it is too large, and no more is read. */
const MOST_BYTES = 3 * MOST_CHARACTERS + 4;

export class DiskFiles implements Files {
  private folders: readonly string[] = [];
  /** Answers of `resolve`, which is asked at every keystroke. Dropped whenever anything changes outside. */
  private known = new Map<string, string | undefined>();

  /** `folders`: addresses of what is open in the editor. */
  openFolders(folders: readonly string[]): void {
    this.folders = folders.map(NAMES.nameOf).filter((name) => path.isAbsolute(name));
    this.known.clear();
  }

  readonly coming = undefined;
  arrived = (): void => undefined;

  changed(): void {
    this.known.clear();
  }

  resolve(from: string, to: string): string | undefined {
    const key = `${from}\n${to}`;
    if (!this.known.has(key)) this.known.set(key, this.resolved(from, to));
    return this.known.get(key);
  }

  private resolved(from: string, to: string): string | undefined {
    if (to.includes('\0')) return undefined;
    // A file that is on no disk has no neighbours there: whatever it names is not found.
    if (!path.isAbsolute(from)) return `${from}#${to}`;
    const name = path.resolve(path.dirname(from), to);
    return this.isInside(name, from) ? name : undefined;
  }

  /** Within an open folder, or the using file’s own where none holds it, by name and where links lead. */
  private isInside(name: string, from: string): boolean {
    const open = this.folders.filter((folder) => within(from, folder));
    const roots = open.length ? this.folders : [path.dirname(from)];
    return roots.some((root) => within(name, root) && within(real(name), real(root)));
  }

  /** Never throws: a file that cannot be read is one that is not there. */
  read(name: string): string | undefined {
    try {
      return path.isAbsolute(name) && this.mayRead(name) ? textOf(name) : undefined;
    } catch {
      return undefined;
    }
  }

  async bytes(name: string, most: number): Promise<Uint8Array | undefined> {
    try {
      const found = this.mayRead(name) ? statSync(name) : undefined;
      if (!found?.isFile() || found.size > most) return undefined;
      return new Uint8Array(await readFile(name));
    } catch {
      return undefined;
    }
  }

  /** Asked again when it is read: a link may have been turned since. */
  private mayRead(name: string): boolean {
    for (const [key, found] of this.known)
      if (found === name) return this.isInside(name, key.slice(0, key.indexOf('\n')));
    return false;
  }
}

function within(name: string, folder: string): boolean {
  const way = path.relative(folder, name);
  return way === '' || (way !== '..' && !way.startsWith(`..${path.sep}`) && !path.isAbsolute(way));
}

/** Where a name leads in the end; for one that is not there, where it would stand. */
function real(name: string): string {
  try {
    return realpathSync(name);
  } catch {
    const above = path.dirname(name);
    return above === name ? name : path.join(real(above), path.basename(name));
  }
}

function textOf(name: string): string | undefined {
  if (!statSync(name).isFile()) return undefined;
  const file = openSync(name, 'r');
  try {
    const buffer = Buffer.alloc(Math.min(statSync(name).size, MOST_BYTES));
    return buffer.toString('utf8', 0, filled(file, buffer));
  } finally {
    closeSync(file);
  }
}

function filled(file: number, buffer: Buffer): number {
  let length = 0;
  while (length < buffer.length) {
    const got = readSync(file, buffer, length, buffer.length - length, null);
    if (got === 0) break;
    length += got;
  }
  return length;
}
