import type { Key } from '../model';
import { type Mark, type Paper, textWidth } from './paper';

/** Height of a row of keys or notes, mm on paper. */
export const ROW = 6;
const SIZE = 2.8;
const SWATCH = { width: 7, height: 3.4 };
const GAP = 6;

/** Words of a key; those that go on from the row above have no swatch. */
interface Placed {
  key?: Key;
  text: string;
  x: number;
  row: number;
}

/** Puts keys side by side and row under row. */
class Rows {
  readonly placed: Placed[] = [];
  private x: number;
  private row = 0;

  constructor(private readonly paper: Paper) {
    this.x = paper.margin;
  }

  put(key: Key): void {
    const [first = '', ...list] = key.list ?? [];
    const text = first ? `${key.text} ${first}` : key.text;
    const width = SWATCH.width + 2 + textWidth(text, SIZE);
    if (this.x > this.paper.margin && !this.fits(width)) this.down();
    this.add({ key, text, x: this.x, row: this.row }, width);
    for (const words of list) this.goOn(words);
    this.x += GAP;
  }

  private add(placed: Placed, width: number): void {
    this.placed.push(placed);
    this.x += width;
  }

  /** More words behind the last, or below it. */
  private goOn(words: string): void {
    const last = this.placed.at(-1)!;
    const more = textWidth(` ${words}`, SIZE);
    if (this.fits(more)) {
      last.text += ` ${words}`;
      this.x += more;
      return;
    }
    this.down();
    this.x += SWATCH.width + 2;
    this.add({ text: words, x: this.x, row: this.row }, textWidth(words, SIZE));
  }

  private fits(width: number): boolean {
    return this.x + width <= this.paper.width - this.paper.margin;
  }

  private down(): void {
    this.x = this.paper.margin;
    this.row++;
  }
}

function placeKeys(keys: readonly Key[], paper: Paper): Placed[] {
  const rows = new Rows(paper);
  for (const key of keys) rows.put(key);
  return rows.placed;
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
      ...placed.flatMap(({ key, text: words, x, row }) => {
        const y = top + row * ROW;
        return key
          ? [swatch(key, x, y), text(x + SWATCH.width + 2, y, words)]
          : [text(x, y, words)];
      }),
      ...notes.map((note, i) => text(paper.margin, top + (rows + i) * ROW, note)),
    ];
  };
  return { rows, marks };
}
