/** Reading files that anybody may have written: bounded, as UTF-8, and with a plain word for what goes wrong. */

import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { later, phrase, spoken } from '../../../shared/phrase';
import { isUtf16 } from '../../engine/workspace/encoding';
import { FileTrouble } from '../exits';

/** More bytes than the most characters that the engine takes can have. */
export const MOST_BYTES = 16 * 1024 * 1024;

const WHY: Readonly<Record<string, string>> = {
  ENOENT: later`there is no such file`,
  ENOTDIR: later`there is no such file`,
  ENAMETOOLONG: later`there is no such file`,
  ERR_INVALID_ARG_VALUE: later`there is no such file`,
  EISDIR: later`it is a folder`,
  EACCES: later`it may not be read`,
  EPERM: later`it may not be read`,
  ELOOP: later`its links go round in a circle`,
};

/** What an error of the file system means. */
export function whyNot(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  const why = WHY[code];
  return why ? spoken(why) : code || String(error);
}

/** The text of a file, or of what is piped in for a file descriptor. @throws FileTrouble, which names it as `shown` */
export function readText(from: string | number, shown: string): string {
  try {
    return decoded(typeof from === 'number' ? drained(from) : opened(from));
  } catch (error) {
    const why = error instanceof FileTrouble ? error.message : whyNot(error);
    throw new FileTrouble(phrase`${shown} cannot be read: ${why}.`);
  }
}

function opened(name: string): Buffer {
  const file = openSync(name, 'r');
  try {
    if (fstatSync(file).isDirectory()) throw new FileTrouble(phrase`it is a folder`);
    return drained(file);
  } finally {
    closeSync(file);
  }
}

/** Reads to the end, or to the limit: a size on paper says nothing about a device or a pipe. */
function drained(file: number): Buffer {
  const pieces: Buffer[] = [];
  let size = 0;
  for (;;) {
    const piece = Buffer.alloc(64 * 1024);
    const read = readSome(file, piece);
    if (read === 0) return Buffer.concat(pieces);
    pieces.push(piece.subarray(0, read));
    size += read;
    if (size > MOST_BYTES)
      throw new FileTrouble(phrase`it is larger than ${MOST_BYTES / 1024 / 1024} MiB`);
  }
}

/** A pipe that has nothing yet is asked again; one that ended is at its end. */
function readSome(file: number, into: Buffer): number {
  for (;;) {
    try {
      return readSync(file, into);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
    }
  }
}

/** Of so many bytes it shows how a text is written. */
const HEAD = 1024;

/** @throws FileTrouble for what is no UTF-8 */
export function decoded(bytes: Buffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new FileTrouble(
      isUtf16(bytes.toString('latin1', 0, HEAD))
        ? phrase`it is written in UTF-16, and a job is a text in UTF-8. Save it as UTF-8`
        : phrase`it is not text in UTF-8`,
    );
  }
}
