/** How far courses go on past the ends of their wall where it makes a corner with one that has a corbel. */
import type { Env } from '../../../resolve/env';
import type { CourseEnds, Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { type LaidAlone, wallAlone } from '../meet/alone';
import type { Quoin } from '../meet/quoins';

/** More courses than anyone lays out: what lies further up is as long as the wall. */
const MOST = 40;

export interface CorbelCorners {
  /** Courses that are longer or shorter at the corners of their wall. */
  readonly ends: readonly CourseEnds[];
  /** Walls with a corbel at a corner where courses are not laid with one another: these are as long as the wall. */
  readonly apart: readonly SourceBlock[];
}

type Inside = (side: Side) => boolean;

/** @param inside whether the front of the wall is on the inner side of a corner */
export function corbelCorners(
  { plan }: LaidAlone,
  quoins: readonly Quoin[],
  inside: Inside,
  env: Env,
): CorbelCorners {
  const courses = new Map<number, { left: number; right: number }>();
  const apart: SourceBlock[] = [];
  for (const quoin of quoins) {
    const past = beyond(quoin, inside(quoin.side), env);
    if (past.length && !quoin.way) apart.push(quoin.other);
    for (const { course, by } of quoin.way ? past : []) {
      if (course < 0 || course >= topAt(plan, quoin.side)) continue;
      const ends = courses.get(course) ?? { left: 0, right: 0 };
      courses.set(course, { ...ends, [quoin.side]: by });
    }
  }
  const ends = [...courses].map(([course, each]) => ({ course, ...each }));
  // Of a wall too short for it nothing would be left.
  const { length, unit } = plan.spec;
  return { ends: ends.filter((e) => length + e.left + e.right > 2 * unit.length), apart };
}

function topAt({ top }: LaidAlone['plan'], side: Side): number {
  return (side === 'left' ? top[0] : top.at(-1))?.level ?? 0;
}

/** By as much as the other wall lies further out there, course by course; further in where its front is on the inner side. */
function beyond({ side, otherSide, other, with: theirs, ...at }: Quoin, inside: boolean, env: Env) {
  const line = wallAlone(other, env).masonry.facts.line('corbel');
  const each = line?.number('project') ?? 0;
  const high = topAt(theirs.plan, otherSide);
  const courses = Math.min(Math.floor(line?.number('courses') ?? 0), high);
  if (!(courses >= 1 && each > 0)) return [];
  // Further out than the wall is thick nothing lies on it.
  const most = Math.min(courses, MOST, Math.floor(theirs.out.thickness / each));
  // Fronts are on the same side of a corner where a right end meets a left one.
  const outer = side === otherSide ? inside : !inside;
  return Array.from({ length: most }, (_, i) => {
    const course = high - courses + i - at.otherGround + at.ground;
    return { course, by: (outer ? 1 : -1) * each * (i + 1) };
  });
}
