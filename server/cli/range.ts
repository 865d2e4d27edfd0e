/** How far a price can move when the job has ranges in it. */
import type { Term } from '../engine/working/term';
import type { Job } from '../engine/workspace/job';

export interface PriceRange {
  readonly low: Term;
  readonly high: Term;
}

/** Between the two the price lies in eight jobs of ten alike; nothing when no range moves it. */
export function priceRange(job: Job): PriceRange | undefined {
  return job.spread;
}
