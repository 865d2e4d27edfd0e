/** What of an attached pier is higher than its wall: nothing is there to bond with, so it is laid as a pier that stands free. */
import { type AttachedLaid, type CoursePlan, firstOnTop, type PierPlan } from '../../setting-out';
import { moved } from '../pier/placed';
import type { PierFacts } from './piers/placed';
import type { WallPlan } from './spec';

export interface AboveWall {
  readonly spec: NonNullable<PierPlan['above']>;
  /** Placed as those under it: from the pier’s left side and the wall’s front. None where its counts cannot be laid. */
  readonly courses: readonly CoursePlan[];
}

/** Nothing where the wall is as high as its pier. */
export function aboveWall(
  { spec, plan }: PierFacts,
  laid: AttachedLaid,
  wall: WallPlan,
): AboveWall | undefined {
  const from = topBeside(spec, wall) - (spec.base ?? 0);
  if (from >= spec.courses) return undefined;
  const half = (wall.spec.unit.length + wall.spec.joints.perpend) / 2;
  const front = 0 - laid.front * half;
  const courses = (plan.laid?.courses ?? []).map((course) => moved(course, 0, front));
  const below = laid.courses[(Math.max(1, from) - 1) % laid.courses.length]!;
  const { width, depth } = spec;
  const faces = { left: 0, right: width, front, back: front + depth };
  const first = courses.length ? firstOnTop(below, courses, faces) : 0;
  const { plans, apart } = spec;
  const own = { from: Math.max(0, from), plans: turned(plans, first) };
  return {
    spec: apart ? { ...own, apart: turned(apart, first) } : own,
    courses: turned(courses, first),
  };
}

/** Courses above the lowest ground that the wall reaches beside it, on the side where it is higher. */
function topBeside({ from, width }: PierFacts['spec'], { top }: WallPlan): number {
  const beside = top.filter((level) => level.to > from + 1 && level.from < from + width - 1);
  return Math.max(0, ...beside.map(({ level }) => level));
}

function turned<T>(courses: readonly T[], first: number): readonly T[] {
  return courses.map((_, i) => courses[(i + first) % courses.length]!);
}
