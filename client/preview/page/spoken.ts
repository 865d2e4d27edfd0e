/** What is said of a stop: to who looks at it, and to who only hears it. */
import type { From } from '../../../shared/protocol/preview';
import { filled, type PageWord, type PageWords } from '../../../shared/protocol/preview-words';
import type { Spot } from './rove';
import type { Group } from './stops';

export type Units = 'millimetres' | 'feet';

/** In tenths of a millimetre, or in sixteenths of an inch. */
export function lengthSaid(mm: number, units: Units, words: PageWords): string {
  if (units === 'millimetres') return filled(words.millimetres, Math.round(mm * 10) / 10);
  const sixteenths = Math.round((mm / 25.4) * 16);
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths % 192) / 16);
  let [top, bottom] = [sixteenths % 16, 16];
  while (top && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const part = top ? ` ${top}/${bottom}` : '';
  return feet ? `${feet}'-${inches}${part}"` : `${inches}${part}"`;
}

function styleSaid(ink: string | undefined, words: PageWords): string {
  if (!ink) return '';
  return Object.hasOwn(words, ink) ? words[ink as PageWord] : ink;
}

/** `course 5, brick 3 of 32, header, 102.5 mm, brick, line 12`. */
export function stopSaid(
  groups: readonly Group[],
  { group: at, stop: i }: Spot,
  lines: readonly From[],
  units: Units,
  words: PageWords,
): string {
  const group = groups[at];
  const stop = group?.stops[i];
  if (!group || !stop) return '';
  const parts = [
    group.course === undefined ? group.title : filled(words.course, group.course),
    group.kind === 'course' ? filled(words.piece, i + 1, group.stops.length) : '',
    stop.text ?? styleSaid(stop.ink, words),
    stop.length === undefined ? '' : lengthSaid(stop.length, units, words),
    lineSaid(lines[stop.from], words),
  ];
  return parts.filter(Boolean).join(', ');
}

export function lineSaid(line: From | undefined, words: PageWords): string {
  if (!line) return words.noLine;
  return filled(line.uri ? words.lineIn : words.line, line.label, line.line + 1);
}

/**
 * Lines that belong to the one the cursor is in: what comes from them is marked. The line itself, or the smallest block
 * of lines round the cursor; nothing where that is most of the drawing.
 */
export function markedFor(lines: readonly From[], cursor: number): ReadonlySet<number> {
  const round = lines.filter(
    ({ uri, most, line, last }) => !uri && !most && line <= cursor && cursor <= last,
  );
  const least = round.sort((a, b) => a.last - a.line - (b.last - b.line))[0];
  if (!least) return new Set();
  const within = ({ uri, line, last }: From) => !uri && line >= least.line && last <= least.last;
  return new Set(lines.flatMap((line, i) => (within(line) ? [i] : [])));
}
