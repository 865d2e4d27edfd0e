/** Bonds in which two walls that meet at a corner could both be built so that it bonds. */
import type { OtherBond } from '../../../findings/junctions/quoin-unbonded';
import { type BlockFacts, factsNamed } from '../../../resolve/env';
import {
  type BondPattern,
  bondsAt,
  depthsOf,
  type SettingOut,
  setOut,
  type WallSpec,
} from '../../../setting-out';
import { bondOf } from '../bond';
import type { LaidAlone } from './alone';
import type { Quoin } from './quoins';

/** As many as anyone chooses among. */
const MOST = 4;

/** Numbers tried for a bond that takes one: of stretcher courses or stretchers to each header. */
const NUMBERS = [3, 5];

export function otherBonds(quoin: Quoin, facts: BlockFacts, alone: LaidAlone): OtherBond[] {
  const found: OtherBond[] = [];
  for (const name of facts.env.book.names('bond')) {
    const bond = factsNamed(facts.env, 'bond', name)!;
    for (const n of bond.line('n') ? NUMBERS : [undefined])
      if (found.length < MOST && bothIn(bond, n, quoin, alone)) {
        const text = n === undefined ? name : `${name} ${n}`;
        found.push({ title: text, text });
      }
  }
  return found;
}

function bothIn(
  bond: BlockFacts,
  n: number | undefined,
  { side, otherSide, with: other }: Quoin,
  alone: LaidAlone,
): boolean {
  const a = laidIn(bond, n, alone.out.spec);
  const b = laidIn(bond, n, other.out.spec);
  if (!a || !b) return false;
  const wall = { begun: 0, inside: false };
  return [0, 1].some((begun) =>
    ([0, 1] as const).some((gives) =>
      bondsAt(
        { ...wall, out: a, side, gives },
        { ...wall, out: b, side: otherSide, begun, gives: gives === 0 ? 1 : 0 },
      ),
    ),
  );
}

/** Nothing for a bond that is not given for the thickness. */
function laidIn(facts: BlockFacts, n: number | undefined, spec: WallSpec): SettingOut | undefined {
  const { thickness } = spec;
  const given = facts.lines('thick').some((line) => line.number('thick') === thickness / 2);
  const bond: BondPattern | undefined = given ? bondOf(facts, n, thickness) : undefined;
  return bond && depthsOf(bond, thickness) ? setOut({ ...spec, bond }) : undefined;
}
