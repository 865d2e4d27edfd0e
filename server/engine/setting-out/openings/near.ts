/** Perpends of the courses that lie on and under one another, where something is let into a wall. */
import { jointsOf } from '../lay/joints';
import type { Band, Segment } from '../types';

/** First of an ordered list for which something holds that then holds for all after it; its length if none. */
function firstOf<T>(list: readonly T[], holds: (one: T) => boolean): number {
  let low = 0;
  for (let high = list.length; low < high; ) {
    const middle = (low + high) >> 1;
    if (holds(list[middle]!)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Its pieces reach this far past its ends where a course is toothed, bricks. */
const PAST = 1;

/** The stretches of a band that reach into `low` to `high`, mm along the wall. */
function reaching({ segments }: Band, low: number, high: number, brick: number): Segment[] {
  const found: Segment[] = [];
  const first = firstOf(segments, ({ to }) => to > low - PAST * brick);
  for (let i = first; i < segments.length && segments[i]!.from < high + PAST * brick; i++)
    found.push(segments[i]!);
  return found;
}

/** Middles of the joints between pieces of one course from `low` to `high`, mm along the wall, in order. The cost goes with what is found. */
export function perpendsAt(
  bands: readonly Band[],
  course: number,
  { low, high, brick }: { low: number; high: number; brick: number },
): number[] {
  const band = bands[firstOf(bands, ({ to }) => to > course)];
  if (!band || course < band.from) return [];
  return reaching(band, low, high, brick)
    .flatMap((segment) => jointsOf(segment, course, low, high))
    .sort((a, b) => a - b);
}

/** How far a perpend is from the nearest of others, mm. */
export function lapOver(at: number, others: readonly number[]): number {
  return others.reduce((least, x) => Math.min(least, Math.abs(x - at)), Number.POSITIVE_INFINITY);
}
