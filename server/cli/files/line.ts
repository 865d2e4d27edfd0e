/** A line as it is typed: waited for, and no more of the input taken than that. */
import { readSync } from 'node:fs';

/** So many bytes are more than anyone types in a line. */
const MOST = 4096;

/** Without its end; nothing when the input has ended before it. What is no UTF-8 is shown as such. */
export function lineFrom(file: number): string | undefined {
  const bytes: number[] = [];
  const one = Buffer.alloc(1);
  while (bytes.length < MOST) {
    const read = readByte(file, one);
    if (read === 0) return bytes.length ? textOf(bytes) : undefined;
    if (one[0] === 10) return textOf(bytes);
    bytes.push(one[0]!);
  }
  return textOf(bytes);
}

function textOf(bytes: readonly number[]): string {
  return Buffer.from(bytes).toString('utf8').replace(/\r$/, '');
}

/** A terminal that has nothing yet is asked again. */
function readByte(file: number, into: Buffer): number {
  for (;;) {
    try {
      return readSync(file, into, 0, 1, null);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    }
  }
}
