/** The sizes of all cuts on a sheet: written on them, or by a letter where there is no room, and listed in the key. */
import { phrase } from '../../../../shared/phrase';
import { withUnit } from '../lengths';
import type { Drawing, Key, Label } from '../model';
import { labelFits } from '../work-marks';

/** Without those that are read as a figure. */
const LETTERS = 'abcdefghijkmnpqrstuvwxyz';
/** More sizes than this are not listed in a key, which has to leave room for the work. */
const MOST = 150;

/** `a` to `z`, then `aa`, `ab` and so on. */
function letterAt(i: number): string {
  const rest = Math.floor(i / LETTERS.length) - 1;
  return (rest < 0 ? '' : letterAt(rest)) + LETTERS[i % LETTERS.length]!;
}

function cutLabels(drawings: readonly Drawing[]): Label[] {
  return drawings.flatMap(({ labels }) => labels.filter(({ cut }) => cut !== undefined));
}

/** A letter for each size, the shortest first, whether it is needed or not. */
export function lettersFor(drawings: readonly Drawing[]): ReadonlyMap<string, string> {
  const rising = cutLabels(drawings).sort((a, b) => a.cut! - b.cut! || (a.text < b.text ? -1 : 1));
  const sizes = [...new Set(rising.map(({ text }) => text))];
  return new Map(sizes.map((size, i) => [size, letterAt(i)]));
}

/** Whether some cut on these drawings has no room for its own size. */
export function needLetters(drawings: readonly Drawing[], scale: number): boolean {
  return cutLabels(drawings).some((label) => !labelFits(label, scale));
}

/** The keys of a sheet, that of its cuts with every size there is; with their letters where some cut bears one. */
export function withSizes(
  keys: readonly Key[],
  drawings: readonly Drawing[],
  lettered: boolean,
): Key[] {
  const units = drawings[0]?.units ?? 'millimetres';
  const all = [...lettersFor(drawings)];
  const listed = all
    .slice(0, MOST)
    .map(([size, letter]) => (lettered ? `${letter} ${size}` : size));
  const more = all.length - listed.length;
  const last = listed.length - 1;
  const list = listed.map((words, i) => (i < last ? `${words},` : withUnit(words, units)));
  if (more > 0) list.push(phrase`and ${more} more sizes: see the cut list`);
  return keys.map((key) => (key.style === 'cut' && list.length ? { ...key, list } : key));
}
