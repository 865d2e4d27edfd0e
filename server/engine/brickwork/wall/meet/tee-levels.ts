/** How high two walls stand where one runs into the other. Both stand on the ground there, as two walls do at a corner. */
import { phrase } from '../../../../../shared/phrase';
import { type Courses, type Level, levelAt, type Side } from '../../../setting-out';
import type { WallPlan } from '../spec';

export interface TeeLevels {
  /** The course of the wall that runs in, and that of the other, that stands on the ground there. */
  readonly ground: number;
  readonly otherGround: number;
  /** Courses by which the numbers of the other are above those of the wall that runs in. */
  readonly lift: number;
  /** Where it stands against the other, by the numbers of the other. */
  readonly courses: Courses;
  /** What of the other is not level there, in a sentence. */
  readonly steps?: string;
  /** It goes on above the other. */
  readonly higher: boolean;
}

/** Levels are asked for this far inside a wall, mm: a step at its very side is none. */
const INSIDE = 1;

export function teeLevels(
  plan: WallPlan,
  side: Side,
  other: WallPlan,
  from: number,
  thickness: number,
): TeeLevels {
  const end = side === 'left' ? INSIDE : plan.spec.length - INSIDE;
  const own = { ground: levelAt(plan.ground, end), top: levelAt(plan.top, end) };
  const [a, b] = [from + INSIDE, from + thickness - INSIDE];
  const otherGround = levelAt(other.ground, a);
  const lift = otherGround - own.ground;
  const tops = [levelAt(other.top, a), levelAt(other.top, b)];
  const top = own.top + lift;
  const steps = stepsIn(other.ground, a, b) ? phrase`The ground under it steps there.` : undefined;
  return {
    ground: own.ground,
    otherGround,
    lift,
    courses: { from: otherGround, to: Math.min(top, ...tops) },
    ...(steps ? { steps } : {}),
    higher: top > Math.min(...tops),
  };
}

function stepsIn(levels: readonly Level[], from: number, to: number): boolean {
  return levelAt(levels, from) !== levelAt(levels, to);
}
