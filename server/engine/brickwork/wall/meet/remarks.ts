/** What there is to say of the ends of a wall that meet other walls. Each corner is told of once, at the wall that the chain comes into there. */
import { quoinFaces } from '../../../findings/quoin-faces';
import { quoinGauge } from '../../../findings/quoin-gauge';
import { quoinUnanswered } from '../../../findings/quoin-unanswered';
import { quoinUnbonded } from '../../../findings/quoin-unbonded';
import type { Remark } from '../../../findings/remark';
import { type BlockFacts, factsOf } from '../../../resolve/env';
import type { LaidAlone } from './alone';
import { claimsOf } from './ends';
import type { Neighbours } from './neighbours';
import { otherBonds } from './other-bonds';
import type { Cornered, Quoin } from './quoins';

export function meetingRemarks(
  facts: BlockFacts,
  alone: LaidAlone,
  { quoins }: Cornered,
  neighbours: Neighbours,
): Remark[] {
  const told = [
    ...unanswered(facts, neighbours),
    ...quoins.flatMap((q) => (q.comesIn ? ofQuoin(q, facts, alone) : [])),
  ];
  return told.filter((r): r is Remark => r !== undefined);
}

/** Told of a wall that cannot be laid yet, too. */
export function unanswered(facts: BlockFacts, neighbours: Neighbours): Remark[] {
  const { block } = facts;
  return claimsOf(block).flatMap(({ kind, side, wall }) => {
    if (kind !== 'quoin' || neighbours.answering({ block, side })) return [];
    return quoinUnanswered(facts.line(side)!, side, neighbours.named(wall)) ?? [];
  });
}

function ofQuoin(quoin: Quoin, facts: BlockFacts, alone: LaidAlone): (Remark | undefined)[] {
  const { side, other, with: theirs } = quoin;
  const line = facts.line(side)!;
  const back = factsOf(other, facts.env)!.line(quoin.otherSide)!;
  const faces = quoinFaces(line, side, back, quoin.otherSide);
  if (!quoin.way)
    return [faces, quoinGauge(line, side, alone.out, { block: other, out: theirs.out }, facts.env)];
  if (quoin.bonded) return [faces];
  return [faces, quoinUnbonded(line, side, other, () => otherBonds(quoin, facts, alone))];
}
