/** Between what and what a price lies. */
import type { Lanes } from './lanes';

/** Of ten jobs alike, eight come between the two. */
const LOW = 0.1;
const HIGH = 0.9;

export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** The value that a tenth of the samples do not exceed, and the one that nine tenths do not: each one of the samples. */
export function endsOf(lanes: Lanes): Ends {
  const sorted = lanes.slice().sort();
  const at = (share: number) => sorted[Math.ceil(share * sorted.length) - 1]!;
  return { low: at(LOW), high: at(HIGH) };
}
