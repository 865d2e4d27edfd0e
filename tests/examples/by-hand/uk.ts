/** What the British examples share: the brick, and the terms of the firm (examples/firm.perp). */
import type { Terms } from './arithmetic';

/** 215 x 102.5 x 65 mm, in litres. */
export const WHOLE = (215 * 102.5 * 65) / 1e6;
/** Half a brick less half a joint: 102.5 mm long. */
export const HALF = (102.5 * 102.5 * 65) / 1e6;
/** Split lengthwise: 46.25 mm wide, 215 mm long. */
export const CLOSER = (46.25 * 215 * 65) / 1e6;
export const FROG = 0.07;

/** A bricklayer and half a labourer, an hour. */
export const GANG = 27.5 + 16 / 2;
export const DAY = 7.5;
/** Two runs of 14 miles at 45p, a day. */
export const DRIVE = 2 * 14 * 0.45;

export const TERMS: Terms = { overhead: 0.1, profit: 0.2, round: 5, tax: 0.2, deposit: 0.25 };

/** Loose litres of a mix by its parts, from litres laid: 10% lost, 1.33 dry volumes to one of mortar. */
export function loose(litres: number, parts: readonly number[]): number[] {
  const dry = litres * 1.33;
  const all = parts.reduce((a, b) => a + b, 0);
  return parts.map((part) => (dry * part) / all);
}
