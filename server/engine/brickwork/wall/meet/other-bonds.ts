/** Bonds in which two walls that meet at a corner could both be built so that it bonds. */
import type { OtherBond } from '../../../findings/quoin-unbonded';
import { type BlockFacts, factsNamed } from '../../../resolve/env';
import {
  type BondPattern,
  chooseChain,
  depthsOf,
  type Giving,
  givesWay,
  type Side,
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
  const own = givingIn(bond, n, alone.out.spec, side, other.out.thickness);
  const theirs = givingIn(bond, n, other.out.spec, otherSide, alone.out.thickness);
  if (!own || !theirs) return false;
  const [a, b] = chooseChain([{ out: own }, { in: theirs }], false);
  return own[a!.begun][a!.out] && theirs[b!.begun][b!.in];
}

/** Nothing for a bond that is not given for the thickness. */
function givingIn(
  facts: BlockFacts,
  n: number | undefined,
  spec: WallSpec,
  side: Side,
  by: number,
): Giving | undefined {
  const { thickness } = spec;
  const given = facts.lines('thick').some((line) => line.number('thick') === thickness / 2);
  const bond: BondPattern | undefined = given ? bondOf(facts, n, thickness) : undefined;
  if (!bond || !depthsOf(bond, thickness)) return undefined;
  const out = setOut({ ...spec, bond });
  return [givesWay(out, side, by, 0), givesWay(out, side, by, 1)];
}
