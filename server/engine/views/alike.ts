/** How many jobs alike come out between the low and the high price, in words. */
import { later, phrase, spoken } from '../../../shared/phrase';
import { betweenOf } from '../ranges/spread';
import type { Env } from '../resolve/env';

const TENTHS = [
  later`none`,
  later`one`,
  later`two`,
  later`three`,
  later`four`,
  later`five`,
  later`six`,
  later`seven`,
  later`eight`,
  later`nine`,
];

/** `in eight of ten jobs alike`. */
export function inJobsAlike(env: Env): string {
  const { low, high } = betweenOf(env);
  const percent = Math.round((high - low) * 100);
  if (percent >= 100) return phrase`in all jobs alike`;
  const some =
    percent % 10
      ? phrase`${percent} of a hundred`
      : phrase`${spoken(TENTHS[percent / 10]!)} of ten`;
  return phrase`in ${some} jobs alike`;
}

/** The same where a sentence begins. */
export function ofJobsAlike(env: Env): string {
  const text = inJobsAlike(env);
  return text.charAt(0).toUpperCase() + text.slice(1);
}
