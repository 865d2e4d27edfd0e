/** Both ends of what a line gives, for what must hold at the worst of them and not only at the middle. */
import type { QuantityValue } from '../../../grammar/read/values';
import type { Exact } from '../../../shared/exact';
import { toBase } from '../../../shared/units';
import type { LineFacts } from './env';

/** In base units (mm, kg, courses); the same twice where a line gives one figure. */
export interface Ends {
  readonly least: number;
  readonly most: number;
}

/**
 * As the line has them, whatever is picked of its range. Read past `LineFacts.number`: a hazard is no geometry, and
 * nothing is to be laid again for it.
 */
export function endsOf(line: LineFacts | undefined, key: string): Ends | undefined {
  const value = line?.values[key];
  if (value?.kind !== 'quantity') return undefined;
  const ends = [inBase(value.low, value), inBase(value.high ?? value.low, value)];
  if (!ends.every(Number.isFinite)) return undefined;
  return { least: Math.min(...ends), most: Math.max(...ends) };
}

/** The same of each side of a size. */
export function sideEndsOf(line: LineFacts | undefined, key: string): Ends[] | undefined {
  const value = line?.values[key];
  if (value?.kind !== 'size') return undefined;
  return value.sides.map(({ value: low, high = low, unit }) => ({
    least: toBase(low, unit).toNumber(),
    most: toBase(high, unit).toNumber(),
  }));
}

function inBase(amount: Exact, { unit }: QuantityValue): number {
  return (unit ? toBase(amount, unit) : amount).toNumber();
}

/** Both ends of what is one figure. */
export function only(amount: number): Ends {
  return { least: amount, most: amount };
}

export function isRange({ least, most }: Ends): boolean {
  return most > least;
}
