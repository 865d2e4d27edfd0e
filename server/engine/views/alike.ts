/** How many jobs alike come out between the low and the high price, in words. */
import { betweenOf } from '../ranges/spread';
import type { Env } from '../resolve/env';

const TENTHS = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** `in eight of ten jobs alike`. */
export function inJobsAlike(env: Env): string {
  const { low, high } = betweenOf(env);
  const percent = Math.round((high - low) * 100);
  if (percent >= 100) return 'in all jobs alike';
  const some = percent % 10 ? `${percent} of a hundred` : `${TENTHS[percent / 10]} of ten`;
  return `in ${some} jobs alike`;
}

/** The same where a sentence begins. */
export function ofJobsAlike(env: Env): string {
  return inJobsAlike(env).replace('in', 'In');
}
