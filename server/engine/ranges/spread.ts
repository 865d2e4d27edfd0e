/** Between what and what a price lies. */
import { endsOf } from '../resolve/ends';
import { defaultLine, type Env } from '../resolve/env';
import type { Lanes } from './lanes';

/** Which shares of all jobs alike come out below the low price and below the high one, 0 to 1. */
export interface Between {
  readonly low: number;
  readonly high: number;
}

/** As the defaults say; everything that may be, where none do. */
export function betweenOf(env: Env): Between {
  const ends = endsOf(defaultLine(env, 'price-between'), 'shares');
  if (!ends) return { low: 0, high: 1 };
  const { least, most } = ends;
  return most > least
    ? { low: least, high: most }
    : { low: 1 - Math.max(least, 1 - least), high: Math.max(least, 1 - least) };
}

export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** The values that those shares of the samples do not exceed: each one of the samples. */
export function spreadBetween(lanes: Lanes, { low, high }: Between): Ends {
  const sorted = lanes.slice().sort();
  const at = (share: number) => sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
  return { low: at(low), high: at(high) };
}
