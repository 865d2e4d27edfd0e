/** The codes that anything can be told by, as the sources have them. Cautions of the libraries are named by their blocks. */
import { files, read } from '../tree';

export const sources = files().filter((f) => /^(grammar\/read|server\/engine)\/.*\.ts$/.test(f));
export const engine = sources.filter((f) => f.startsWith('server/engine/'));

/** `code: 'x'` of the engine, with the two that a condition chooses between; cautions are by name. */
export function codesOf(file: string): string[] {
  const text = read(file);
  const plain = [...text.matchAll(/\bcode: '([a-z-]+)'/g)].map((m) => m[1]!);
  const chosen = [...text.matchAll(/\bcode: \w+ \? '([a-z-]+)' : '([a-z-]+)'/g)];
  return [...plain, ...chosen.flatMap((m) => [m[1]!, m[2]!])];
}

export const made = engine.flatMap(codesOf);
export const faults = sources.flatMap((f) =>
  [...read(f).matchAll(/\bfault\(\s*'([a-z-]+)'/g)].map((m) => m[1]!),
);

/** Each once, in order. */
export function codesTold(): readonly string[] {
  return [...new Set([...made, ...faults])].sort();
}
