/** Where a document goes: to a file, or printed. */

import { statSync } from 'node:fs';
import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { WrongUse } from '../exits';
import type { Io } from '../io';
import { writeWhole } from './write';

/** @throws WrongUse for a file in the notation: a slip of the keyboard must not cost the job. FileTrouble */
export function deliver(content: string | Uint8Array, out: string | undefined, io: Io): void {
  if (out === undefined || out === '-') io.raw(content);
  else if (/\.perp$/i.test(out))
    throw new WrongUse(phrase`--out ${out} is a file in the notation, and would be overwritten.`);
  else writeWhole(path.resolve(io.cwd, out), content, out);
}

/** Meant as a folder: it ends like one, or is there. */
export function isFolder(out: string, io: Io): boolean {
  if (/[/\\]$/.test(out)) return true;
  if (out === '-') return false;
  try {
    return statSync(path.resolve(io.cwd, out)).isDirectory();
  } catch {
    return false; // nothing there, or no name at all: writing to it says so
  }
}
