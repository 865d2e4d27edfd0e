/** Room in a wall for those that are bonded into it. */
import type { Env } from '../../../resolve/env';
import type { LetIn, Parity, Tie } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { deepBehind } from '../parts/backing/lay';
import { wallAlone } from './alone';
import { type Arm, endsOf, runningIn } from './arms';
import { begunOf, tiedIn } from './into-thick';
import type { Neighbours } from './neighbours';
import { standingOf } from './standing';
import { type Tee, teesOf } from './tees';
import { turnsOf } from './turns';

export interface Room {
  /** Through the whole of a half-brick wall. */
  readonly gaps: readonly LetIn[];
  /** In the back of a thicker one. */
  readonly ties: readonly Tie[];
  /** All that stand against it, those that are only tied too. */
  readonly arms: readonly Arm[];
}

export function roomFor(block: SourceBlock, neighbours: Neighbours, env: Env): Room {
  const rooms = neighbours.into(block).map((wall) => roomForOne(wall, block, neighbours, env));
  return {
    gaps: rooms.flatMap((r) => r.gaps),
    ties: rooms.flatMap((r) => r.ties),
    arms: rooms.flatMap((r) => r.arms),
  };
}

const NONE: Room = { gaps: [], ties: [], arms: [] };

function roomForOne(wall: SourceBlock, block: SourceBlock, neighbours: Neighbours, env: Env): Room {
  const { masonry, laid } = wallAlone(wall, env);
  if (!laid) return NONE;
  const all = teesOf(wall, laid, neighbours, env).filter((t) => !t.off);
  const deep = laid.out.thickness + deepBehind(masonry, laid.out.spec.joints.perpend);
  const gaps: LetIn[] = [];
  const ties: Tie[] = [];
  const arms: Arm[] = [];
  const bonded = all.filter((t) => t.bonded);
  const standing = standingOf(wall, laid, neighbours, env);
  const begun = bonded.length ? begunOf(wall, neighbours, env) : 0;
  const tied = tiedIn(bonded, standing, { begun, neighbours, env });
  const ways = turnsOf(standing, begun, tied);
  for (const tee of all) {
    const { side, other, distance: from, levels, entry } = tee;
    if (other !== block) continue;
    const ends = tee.bonded && endsOf(tee, () => runningIn(laid, standing, begun, ways));
    arms.push({ from, to: from + deep, courses: levels.courses, tee, ...(ends ? { ends } : {}) });
    const tie = tied[side]?.tie;
    if (tie) ties.push(tie);
    if (entry || !tee.bonded) continue;
    const parity = ((ways[side]!.parity + 1 + levels.lift) & 1) as Parity;
    const joints = ends && laid.plan.spec.thickness > 1 ? shownBetween(ends, tee, parity) : [];
    gaps.push({ from, to: from + laid.out.thickness, parity, courses: levels.courses, joints });
  }
  return { gaps, ties, arms };
}

/** Courses of a wall that runs in that are looked at: as many as a bond has before it comes again, or nearly. */
const MOST_SHOWN = 6;

/** Joints between bricks of a wall of a brick or more where it runs right through: its courses show more than one there. */
function shownBetween(
  ends: NonNullable<Arm['ends']>,
  { levels: { courses } }: Tee,
  parity: Parity,
): number[] {
  const found = new Set<number>();
  const last = Math.min(courses.to, courses.from + 2 * MOST_SHOWN);
  for (let course = courses.from; course < last; course++) {
    if ((course & 1) !== parity) continue;
    const shown = [...ends('front', course)].sort((a, b) => a.from - b.from);
    for (const [i, { from }] of shown.slice(1).entries()) found.add((shown[i]!.to + from) / 2);
  }
  return [...found];
}
