/** Room in a wall for those that are bonded into it. */
import type { Env } from '../../../resolve/env';
import type { LetIn, Parity, Tie } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { wallAlone } from './alone';
import { begunOf, tiedIn } from './into-thick';
import type { Neighbours } from './neighbours';
import { standingOf } from './standing';
import { teesOf } from './tees';
import { turnsOf } from './turns';

export interface Room {
  /** Through the whole of a half-brick wall. */
  readonly gaps: readonly LetIn[];
  /** In the back of a thicker one. */
  readonly ties: readonly Tie[];
}

export function roomFor(block: SourceBlock, neighbours: Neighbours, env: Env): Room {
  const gaps: LetIn[] = [];
  const ties: Tie[] = [];
  for (const wall of neighbours.into(block)) {
    const { laid } = wallAlone(wall, env);
    if (!laid) continue;
    const tees = teesOf(wall, laid, neighbours, env).filter((t) => t.bonded);
    const standing = standingOf(wall, laid, neighbours, env);
    const begun = begunOf(wall, neighbours, env);
    const tied = tiedIn(tees, standing, { begun, neighbours, env });
    const ways = turnsOf(standing, begun, tied);
    for (const { side, other, distance: from, levels, entry } of tees) {
      if (other !== block) continue;
      const tie = tied[side]?.tie;
      if (tie) ties.push(tie);
      if (entry) continue;
      const parity = ((ways[side]!.parity + 1 + levels.lift) & 1) as Parity;
      gaps.push({ from, to: from + laid.out.thickness, parity, courses: levels.courses });
    }
  }
  return { gaps, ties };
}
