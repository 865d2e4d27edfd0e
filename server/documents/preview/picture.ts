/** A drawing as the parts that a preview shows it by. Parts that come out the same under the same key need not be sent. */
import { INKS, type MarksPart, type Part } from '../../../shared/protocol/preview';
import type { Style } from '../../engine/drawing';
import type { TextMark } from '../../engine/drawing/work-marks';

const NUMBERS: ReadonlyMap<string, number> = new Map(INKS.map((ink, i) => [ink, i]));

export function inkNumber(style: Style): number {
  return NUMBERS.get(style)!;
}

/** Tenths of a millimetre of the work. */
export const tenths = (mm: number) => Math.round(mm * 10) + 0;
/** Hundredths of a millimetre of the screen. */
export const hundredths = (mm: number) => Math.round(mm * 100) + 0;

/** Parts as they are gathered, in the order they are painted. */
export class Gathered {
  readonly order: string[] = [];
  readonly parts: Record<string, Part> = {};

  add(key: string, part: Part): void {
    if (!Object.hasOwn(this.parts, key) && part.kind !== 'pattern') this.order.push(key);
    this.parts[key] = part;
  }

  /** Pieces alike are one pattern, and have its key. */
  pattern(pieces: readonly number[]): string {
    const key = `p${hashOf(pieces)}`;
    if (!Object.hasOwn(this.parts, key)) this.add(key, { kind: 'pattern', pieces });
    return key;
  }
}

/** Two hashes of 32 bits of whole numbers, FNV-1a and a multiplicative one. */
export function hashOf(numbers: readonly number[]): string {
  let [a, b] = [0x811c9dc5, 0x9e3779b9];
  for (const number of numbers) {
    a = Math.imul(a ^ (number & 0xffff), 0x01000193);
    a = Math.imul(a ^ (number >> 16), 0x01000193);
    b = Math.imul(b ^ number, 0x85ebca6b);
    b ^= b >>> 15;
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36);
}

/** Lines, outlines and words that belong together. */
export class Marks {
  private readonly byLine = new Map<string, { ink: number; from: number; at: number[] }>();
  private readonly shapes: { ink: number; from: number; at: number[] }[] = [];
  private readonly texts: MarksPart['texts'][number][] = [];

  constructor(private readonly of: MarksPart['of']) {}

  line(style: Style, from: number, ends: readonly number[]): void {
    const ink = inkNumber(style);
    const alike = `${ink} ${from}`;
    const known = this.byLine.get(alike) ?? { ink, from, at: [] };
    known.at.push(...ends.map(hundredths));
    this.byLine.set(alike, known);
  }

  shape(style: Style, from: number, corners: readonly number[]): void {
    this.shapes.push({ ink: inkNumber(style), from, at: corners.map(hundredths) });
  }

  text(mark: TextMark, from: number): void {
    const { x, y, size, align, turned, backed, bold, text } = mark;
    const at = { x: hundredths(x), y: hundredths(y), size: hundredths(size) };
    const more = {
      ...(turned ? { turned } : {}),
      ...(backed ? { backed } : {}),
      ...(bold ? { bold } : {}),
    };
    this.texts.push({ from, ...at, align, ...more, text });
  }

  get part(): MarksPart {
    const { of, shapes, texts } = this;
    return { kind: 'marks', of, lines: [...this.byLine.values()], shapes, texts };
  }

  get isEmpty(): boolean {
    return !this.byLine.size && !this.shapes.length && !this.texts.length;
  }
}
