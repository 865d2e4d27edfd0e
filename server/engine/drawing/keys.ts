import { later, phrase, spoken } from '../../../shared/phrase';
import type { Key, Stroke, Style } from './model';

const WORDS: [Style, string][] = [
  ['stretcher', later`stretcher`],
  ['header', later`header`],
  ['half', later`half bat`],
  ['three-quarter', later`three-quarter bat`],
  ['closer', later`queen closer`],
  ['block', later`block`],
  ['pier', later`pier`],
];

/** Where a key stands among others: in the order above, all others after. */
export function keyRank({ style }: Key): number {
  const rank = WORDS.findIndex(([known]) => known === style);
  return rank < 0 ? WORDS.length : rank;
}

/** For cuts, where there are any: the sheet adds what sizes they have. */
export function cutKey(boxes: readonly { readonly style: Style }[]): Key[] {
  return boxes.some(({ style }) => style === 'cut') ? [{ style: 'cut', text: phrase`cut` }] : [];
}

/** Pieces that are in a drawing, in a fixed order; cuts are for {@link keysOf}. */
export function pieceWords(boxes: readonly { readonly style: Style }[]): Key[] {
  const used = new Set<Style>();
  for (const { style } of boxes) used.add(style);
  return WORDS.filter(([style]) => used.has(style)).map(([style, text]) => ({
    style,
    text: spoken(text),
  }));
}

/** For joints that let a wall move, where there are any. */
export function movementKey(strokes: readonly Stroke[]): Key[] {
  return strokes.length > 0 ? [{ style: 'movement', text: phrase`movement joint` }] : [];
}

/** What each style in a drawing stands for, in a fixed order, and only those it has. */
export function keysOf(boxes: readonly { readonly style: Style }[], dpc: boolean): Key[] {
  const keys = pieceWords(boxes);
  const line: Key[] = dpc ? [{ style: 'dpc', text: phrase`damp-proof course` }] : [];
  return [...keys, ...cutKey(boxes), ...line];
}
