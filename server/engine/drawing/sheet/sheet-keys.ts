import type { Key } from '../model';
import type { Mark, Paper } from './paper';
import { textWidth } from './paper';

/** Height of a row of keys or notes, mm on paper. */
export const ROW = 6;
const SIZE = 2.8;
const SWATCH = { width: 7, height: 3.4 };
const GAP = 6;

interface Placed {
  key: Key;
  x: number;
  row: number;
}

function placeKeys(keys: readonly Key[], paper: Paper): Placed[] {
  let x = paper.margin;
  let row = 0;
  return keys.map((key) => {
    const width = SWATCH.width + 2 + textWidth(key.text, SIZE) + GAP;
    if (x > paper.margin && x + width > paper.width - paper.margin + GAP) {
      x = paper.margin;
      row++;
    }
    const placed = { key, x, row };
    x += width;
    return placed;
  });
}

function swatch({ style }: Key, x: number, y: number): Mark {
  const middle = y - SWATCH.height / 2 + 0.4;
  if (style === 'dpc' || style === 'movement')
    return {
      kind: 'line',
      ink: style,
      x1: x,
      y1: middle,
      x2: x + SWATCH.width,
      y2: middle,
      key: true,
    };
  return { kind: 'box', ink: style, x, y: y - SWATCH.height + 0.4, ...SWATCH, key: true };
}

/** The key to a drawing: how many rows it takes, and its marks, notes under it, ending at `end` down the paper. */
export function keyRow(keys: readonly Key[], paper: Paper) {
  const placed = placeKeys(keys, paper);
  const rows = placed.length === 0 ? 0 : placed.at(-1)!.row + 1;
  const marks = (end: number, notes: readonly string[]): Mark[] => {
    const top = end - ROW * (rows + notes.length - 1);
    const text = (x: number, y: number, words: string): Mark => {
      return { kind: 'text', x, y, size: SIZE, align: 'start', text: words };
    };
    return [
      ...placed.flatMap(({ key, x, row }) => {
        const y = top + row * ROW;
        return [swatch(key, x, y), text(x + SWATCH.width + 2, y, key.text)];
      }),
      ...notes.map((note, i) => text(paper.margin, top + (rows + i) * ROW, note)),
    ];
  };
  return { rows, marks };
}
