/** What heads, lintels and sills are set out in: the wall they stand in, and what may be called its courses. */
import type { JointLimits, Level, WallSpec } from '../../../setting-out';
import { limitsOf, type Masonry } from '../../masonry';
import type { OpeningFacts } from '../openings';
import type { PierFacts } from '../piers/placed';

export interface Site {
  readonly masonry: Masonry;
  readonly spec: WallSpec;
  readonly openings: readonly OpeningFacts[];
  readonly piers: readonly PierFacts[];
  /** Its top, in courses above its lowest ground. */
  readonly top: readonly Level[];
  /** A course with its bed, mm. */
  readonly gauge: number;
  /** Upright joints and beds that anyone would accept. */
  readonly joints: JointLimits;
  readonly beds: JointLimits;
}

export type WallSoFar = Pick<Site, 'spec' | 'openings' | 'piers' | 'top'>;

export function siteOf(masonry: Masonry, wall: WallSoFar): Site {
  const { env, jointTerms } = masonry;
  return {
    masonry,
    spec: wall.spec,
    openings: wall.openings,
    piers: wall.piers,
    top: wall.top,
    gauge: wall.spec.unit.height + wall.spec.joints.bed,
    joints: limitsOf(env, 'joints-accepted', jointTerms.perpend),
    beds: limitsOf(env, 'beds-accepted', jointTerms.bed),
  };
}

/** More courses than anything let into a wall is laid through: a limit of the tool. */
export const MOST_COURSES = 400;

/** Mm through the wall, by its half bricks. */
export function throughOf({ spec }: Pick<Site, 'spec'>): number {
  const { unit, joints, thickness } = spec;
  return thickness === 1
    ? unit.width
    : (thickness * (unit.length + joints.perpend)) / 2 - joints.perpend;
}

/** The lowest course of the wall's top over a stretch of it. */
export function topOver({ top }: Pick<Site, 'top'>, from: number, to: number): number {
  const over = top.filter((level) => level.from < to - 1e-6 && level.to > from + 1e-6);
  return Math.min(...(over.length ? over : top).map(({ level }) => level));
}

/** A part of the face: mm along the wall, and courses, `high` the first above it. */
export interface Zone {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

/** Something let into whole courses, and what lies between its top and the next whole course. */
export interface Coursing {
  readonly courses: number;
  /** Mm over it and its bed, up to the top of its last course; the joint above it is wider by this. */
  readonly over: number;
  /** Whether that joint is one that anyone would accept. */
  readonly works: boolean;
  /** Height of the bricks cut to lie on it, mm; nought where a joint alone makes it up. */
  readonly split: number;
}

/** Courses that something `high` mm takes the place of, bedded like a course. */
export function coursing(high: number, { gauge, spec, beds }: Site): Coursing {
  const { bed } = spec.joints;
  const asked = (high + bed) / gauge;
  const near = Math.max(1, Math.round(asked));
  const joint = (near - asked) * gauge + bed;
  if (joint >= beds.least - 1e-6 && joint <= beds.most + 1e-6)
    return { courses: near, over: joint - bed, works: true, split: 0 };
  const courses = Math.max(1, Math.ceil(asked - 1e-9));
  const over = (courses - asked) * gauge;
  return { courses, over, works: false, split: Math.max(0, over - bed) };
}

/** Heights that make whole courses, one lower and one higher than asked, mm. */
export function coursedHeights(high: number, { gauge, spec }: Site): number[] {
  const { bed } = spec.joints;
  const asked = (high + bed) / gauge;
  return [Math.floor(asked), Math.floor(asked) + 1]
    .filter((courses) => courses >= 1)
    .map((courses) => courses * gauge - bed);
}
