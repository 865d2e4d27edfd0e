/**
 * What can be pointed at and gone through on a drawing: bricks course by course, things over and in them, figures. All
 * by numbers: nothing of it asks the page’s elements.
 */
import { INKS, type MarksPart, type RowPart } from '../../../shared/protocol/preview';
import type { Store } from './store';

/** Mm on the screen, y down. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Stop extends Rectangle {
  readonly key: string;
  /** Its place in the list of lines, or -1. */
  readonly from: number;
  readonly ink?: string;
  /** Along the work, mm: of a brick, how long it is. */
  readonly length?: number;
  /** Of words: what they say. */
  readonly text?: string;
  readonly course?: number;
  /** Corners, where it is no rectangle. */
  readonly corners?: readonly number[];
}

/** Stops side by side, or of one kind. */
export interface Group {
  readonly kind: 'course' | 'row' | 'things' | 'figures';
  readonly title: string;
  readonly course?: number;
  readonly stops: readonly Stop[];
}

/** Letters are about this wide for their height. */
const LETTER = 0.56;

export class Stops {
  /** Bricks from the top down, then things, then figures. */
  readonly groups: readonly Group[];

  constructor(private readonly store: Store) {
    const rows: { group: Group; y: number; frame: number }[] = [];
    const things: Group[] = [];
    const figures: Group[] = [];
    let frame = -1;
    for (const key of store.order) {
      const part = store.parts.get(key);
      if (part?.kind === 'frame') frame += 1;
      if (part?.kind === 'row') {
        const group = this.row(key, part);
        if (group.kind === 'things') things.push(group);
        else rows.push({ group, y: group.stops[0]?.y ?? 0, frame });
      }
      if (part?.kind === 'marks') {
        const group = this.marks(key, part);
        (group.kind === 'figures' ? figures : things).push(group);
      }
    }
    rows.sort((a, b) => a.frame - b.frame || a.y - b.y);
    const all = [...rows.map(({ group }) => group), ...things, ...figures];
    this.groups = all.filter(({ stops }) => stops.length);
  }

  private row(key: string, part: RowPart): Group {
    const frame = this.store.frame(part.frame);
    const pieces = this.store.pieces(part.pattern);
    const stops: Stop[] = [];
    for (let i = 0; frame && i < pieces.length; i += 4)
      stops.push(stopOf(key, part, frame, pieces, i));
    const under = /\/r0\//.test(key);
    const kind = under ? 'things' : part.course === undefined ? 'row' : 'course';
    return { kind, title: frame?.title ?? '', course: part.course, stops };
  }

  private marks(key: string, { of, shapes, texts }: MarksPart): Group {
    const outlines = shapes.flatMap(({ ink, from, at }): Stop[] =>
      at.length > 5 ? [{ key, from, ink: INKS[ink]!, ...around(at), corners: at }] : [],
    );
    const words = texts.flatMap((text): Stop[] =>
      text.from < 0 ? [] : [{ key, from: text.from, text: text.text, ...roundOf(text) }],
    );
    return {
      kind: of === 'figures' ? 'figures' : 'things',
      title: '',
      stops: [...outlines, ...words],
    };
  }

  /** What is at a point, mm on the screen: words first, then what lies over bricks, then bricks, then what is behind them. */
  at(x: number, y: number): Stop | undefined {
    let best: { stop: Stop; rank: number } | undefined;
    for (const { stops } of this.groups) {
      const [first] = stops;
      if (!first || (first.course !== undefined && (y < first.y || y > first.y + first.height)))
        continue;
      for (const stop of stops) {
        const rank = rankOf(stop);
        if ((!best || rank > best.rank) && isIn(stop, x, y)) best = { stop, rank };
      }
    }
    return best?.stop;
  }

  /** All that comes from one of these lines. */
  from(lines: ReadonlySet<number>): Stop[] {
    return this.groups.flatMap(({ stops }) => stops.filter(({ from }) => lines.has(from)));
  }
}

function stopOf(
  key: string,
  { y, height, course }: RowPart,
  { x: left, y: base, scale }: { x: number; y: number; scale: number },
  pieces: readonly number[],
  i: number,
): Stop {
  const [x, width, ink, from] = [pieces[i]!, pieces[i + 1]!, pieces[i + 2]!, pieces[i + 3]!];
  return {
    key,
    from,
    ink: INKS[ink]!,
    length: width / 10,
    ...(course === undefined ? {} : { course }),
    x: left / 100 + x / 10 / scale,
    y: base / 100 - (y + height) / 10 / scale,
    width: width / 10 / scale,
    height: height / 10 / scale,
  };
}

function rankOf({ text, corners, key }: Stop): number {
  if (text !== undefined) return 4;
  if (corners) return 3;
  if (/\/r0\//.test(key)) return 0;
  return /\/r2\//.test(key) ? 2 : 1;
}

/** Round words: fingers are wider than letters. */
const MORE = 0.6;

function roundOf(text: MarksPart['texts'][number]): Rectangle {
  const [x, y, size] = [text.x / 100, text.y / 100, text.size / 100];
  const wide = text.text.length * size * LETTER;
  const back = text.align === 'start' ? 0 : text.align === 'end' ? wide : wide / 2;
  const high = size * 0.72;
  const box = text.turned
    ? { x: x - high, y: y - wide + back, width: high, height: wide }
    : { x: x - back, y: y - high, width: wide, height: high };
  return {
    x: box.x - MORE,
    y: box.y - MORE,
    width: box.width + 2 * MORE,
    height: box.height + 2 * MORE,
  };
}

function around(at: readonly number[]): Rectangle {
  const xs = at.filter((_, i) => i % 2 === 0);
  const ys = at.filter((_, i) => i % 2 === 1);
  const [x, y] = [Math.min(...xs) / 100, Math.min(...ys) / 100];
  return { x, y, width: Math.max(...xs) / 100 - x, height: Math.max(...ys) / 100 - y };
}

function isIn(stop: Stop, x: number, y: number): boolean {
  const within =
    x >= stop.x && x <= stop.x + stop.width && y >= stop.y && y <= stop.y + stop.height;
  return within && (!stop.corners || isInside(stop.corners, x * 100, y * 100));
}

/** Of any outline, hollow ones too: a line to the left crosses its edges an odd number of times. */
function isInside(at: readonly number[], x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = at.length - 2; i < at.length; j = i, i += 2) {
    const [x1, y1] = [at[i]!, at[i + 1]!];
    const [x2, y2] = [at[j]!, at[j + 1]!];
    if (y1 > y !== y2 > y && x > ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
  }
  return inside;
}
