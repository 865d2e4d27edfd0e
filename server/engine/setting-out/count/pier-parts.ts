/** A pier that stands higher than the wall it is bonded into, as the two piers that it is made of. */
import type { PierPlan } from '../types';

interface Range {
  readonly from: number;
  readonly to: number | null;
}

interface PierPart {
  readonly pier: PierPlan;
  /** Of the courses asked for, those in it: counted from its own foot. */
  readonly range: Range;
  /** Its foot, courses above that of the whole. */
  readonly base: number;
}

/** What is bonded into the wall, and what stands free above it; all of it in one where it goes on as it began. */
export function pierParts(whole: PierPlan, range: Range): readonly PierPart[] {
  const { above, ...pier } = whole;
  if (!above) return [{ pier, range, base: 0 }];
  const base = Math.min(Math.max(0, above.from), pier.courses);
  const { apart: _, ...own } = pier;
  const { plans, apart } = above;
  const free = { ...own, plans, courses: pier.courses - base, ...(apart ? { apart } : {}) };
  const { from, to } = range;
  return [
    { pier: { ...pier, courses: base }, range, base: 0 },
    { pier: free, range: { from: from - base, to: to === null ? null : to - base }, base },
  ];
}
