import { lengthOn, type Units, withUnit } from './lengths';
import type { Box, Key, Stroke, Style } from './model';

const WORDS: [Style, string][] = [
  ['stretcher', 'stretcher'],
  ['header', 'header'],
  ['half', 'half bat'],
  ['three-quarter', 'three-quarter bat'],
  ['closer', 'queen closer'],
  ['block', 'block'],
  ['pier', 'pier'],
];

/** Where a key stands among others: in the order above, all others after. */
export function keyRank({ style }: Key): number {
  const rank = WORDS.findIndex(([known]) => known === style);
  return rank < 0 ? WORDS.length : rank;
}

function cutKey(boxes: readonly Box[], units: Units): Key[] {
  const cuts = boxes.filter((box) => box.style === 'cut').map((box) => box.width);
  if (cuts.length === 0) return [];
  const rising = cuts.sort((a, b) => a - b).map((width) => lengthOn(units, width));
  const listed = [...new Set(rising)];
  const few =
    listed.length <= 4 ? ` ${withUnit(listed.join(', '), units)}` : ` of ${listed.length} lengths`;
  return [{ style: 'cut', text: `cut${few}` }];
}

/** Pieces that are in a drawing, in a fixed order; cuts are for {@link keysOf}. */
export function pieceWords(boxes: readonly Box[]): Key[] {
  const used = new Set(boxes.map((box) => box.style));
  return WORDS.filter(([style]) => used.has(style)).map(([style, text]) => ({ style, text }));
}

/** For joints that let a wall move, where there are any. */
export function movementKey(strokes: readonly Stroke[]): Key[] {
  return strokes.length > 0 ? [{ style: 'movement', text: 'movement joint' }] : [];
}

/** What each style in a drawing stands for, in a fixed order, and only those it has. */
export function keysOf(boxes: readonly Box[], dpc: boolean, units: Units): Key[] {
  const keys = pieceWords(boxes);
  const line: Key[] = dpc ? [{ style: 'dpc', text: 'damp-proof course' }] : [];
  return [...keys, ...cutKey(boxes, units), ...line];
}
