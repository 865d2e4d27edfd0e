/** Corners with other walls: their bricks are counted where they lie, so there is only what to say of them. */
import { phrase } from '../../../../../shared/phrase';
import { factsOf } from '../../../resolve/env';
import type { SourceBlock } from '../../../workspace/source';
import { saidFrom } from '../../said';
import type { WallJoin } from '../../work';
import type { Quoin } from '../meet/quoins';
import type { Part, PartOf } from './part';

export const corners: PartOf = ({ env, facts }, _plan, { quoins }): Part | undefined => {
  if (!quoins.length) return undefined;
  const called = (block: SourceBlock) => factsOf(block, env)!.title.replaceAll('-', ' ');
  // Each corner is said once, by the wall that the chain of walls comes into there.
  const said = quoins.filter((q) => q.comesIn && q.way);
  const joins = quoins.map((q) => joinOf(q, facts.line(q.side)?.word('faces') === 'inside'));
  return {
    says: said.flatMap((q) =>
      saidFrom([phrase`Bond its corner with ${called(q.other)}.`], facts.line(q.side)),
    ),
    facts: { joins },
  };
};

function joinOf(quoin: Quoin, inside: boolean): WallJoin {
  const { side, other, otherSide, with: met, way, ground, otherGround } = quoin;
  return {
    kind: 'quoin',
    side,
    wall: other.name ?? '',
    otherSide,
    thickness: met.out.thickness,
    inside,
    ground,
    otherGround,
    ...(way ? { givesWay: way.parity } : {}),
  };
}
