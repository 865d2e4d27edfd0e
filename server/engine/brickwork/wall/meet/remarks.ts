/** What there is to say of the ends of a wall that meet other walls. Each corner is told of once, at the wall that the chain comes into there. */
import { phrase } from '../../../../../shared/phrase';
import { quoinFaces } from '../../../findings/junctions/quoin-faces';
import { quoinGauge } from '../../../findings/junctions/quoin-gauge';
import { quoinRound } from '../../../findings/junctions/quoin-round';
import { quoinTaken } from '../../../findings/junctions/quoin-taken';
import { quoinUnanswered } from '../../../findings/junctions/quoin-unanswered';
import { quoinUnbonded } from '../../../findings/junctions/quoin-unbonded';
import { besideArm } from '../../../findings/perpends-aligned';
import type { Remark } from '../../../findings/remark';
import { type BlockFacts, factsOf } from '../../../resolve/env';
import type { LaidAlone } from './alone';
import { claimsOf, otherSide } from './ends';
import type { Neighbours } from './neighbours';
import { otherBonds } from './other-bonds';
import type { Cornered, Quoin } from './quoins';

export function meetingRemarks(
  facts: BlockFacts,
  alone: LaidAlone,
  { quoins, arms, laid }: Cornered,
  neighbours: Neighbours,
): Remark[] {
  const told = [
    ...arms.map(({ tee }) => besideArm(laid, facts, tee)),
    ...unanswered(facts, neighbours),
    ...quoins.flatMap((q) => (q.comesIn ? ofQuoin(q, facts, alone) : [])),
    ...quoins.map((q) => taken(q, facts, alone)),
  ];
  return told.filter((r): r is Remark => r !== undefined);
}

/** Told of a wall that cannot be laid yet, too. */
export function unanswered(facts: BlockFacts, neighbours: Neighbours): Remark[] {
  const { block } = facts;
  const open = claimsOf(block).flatMap(({ kind, side, wall }) => {
    if (kind !== 'quoin' || neighbours.answering({ block, side })) return [];
    return quoinUnanswered(facts.line(side)!, side, neighbours.named(wall)) ?? [];
  });
  return [...open, ...closing(facts, neighbours)];
}

/** Told of the last wall of a round that starts with the first in the file. */
function closing(facts: BlockFacts, neighbours: Neighbours): Remark[] {
  const chain = neighbours.chainOf(facts.block);
  const [first, last] = [chain?.walls[0], chain?.walls.at(-1)];
  if (!chain?.closed || !first || last?.block !== facts.block) return [];
  const { length } = chain.walls;
  if (length >= 4 && length % 2 === 0) return [];
  const side = otherSide(last.side);
  const end = { line: facts.line(side)!, side };
  const meets = { line: factsOf(first.block, facts.env)!.line(first.side)!, side: first.side };
  return [quoinRound(facts, end, meets, length)];
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

/** A pier or an opening at the end itself. */
function taken(quoin: Quoin, facts: BlockFacts, { plan }: LaidAlone): Remark | undefined {
  const { side, other, otherSide } = quoin;
  const { piers, openings, length } = plan.spec;
  const there = ({ from, width }: { from: number; width: number }) =>
    side === 'left' ? from < AT_END : from + width > length - AT_END;
  const pier = piers.find(there);
  const opening = openings.find(there);
  if (!pier && !opening) return undefined;
  const what = pier ? phrase`The pier ${pier.name}` : phrase`The opening ${opening!.name}`;
  const back = factsOf(other, facts.env)!.line(otherSide)!;
  return quoinTaken(facts.line(side)!, side, what, { line: back, side: otherSide });
}

/** Nearer to the end than this is at the end, mm. */
const AT_END = 0.5;
