/** How far a price can move when the job has ranges in it. */
import type { Term } from '../engine/working/term';
import type { Job } from '../engine/workspace/job';

export interface PriceRange {
  readonly low: Term;
  readonly high: Term;
}

/**
 * The lowest and the highest of the price at either end of the ranges; nothing when they do not move it.
 * More salvage leaves less to buy: so the low ends may well make the high price.
 */
export function priceRange(job: Job): PriceRange | undefined {
  const ends = [job.priceEnds.low.total, job.priceEnds.high.total];
  const [low, high] = ends.sort((a, b) => a.value.cmp(b.value));
  return low && high && !low.value.eq(high.value) ? { low, high } : undefined;
}
