/** The walls that may ask for a bond, and the bond proved as each of them. */
import { bondOf, halvesSetOut } from '../../brickwork/wall/bond';
import type { BlockFacts } from '../../resolve/env';
import {
  type BondPattern,
  type BondProof,
  bondHolds,
  depthsOf,
  proveBond,
  type Thickness,
} from '../../setting-out';
import { takesNumber } from '../idle';

/** A bond with more units before it repeats is not tried: every one that has a name has far fewer. */
const MOST_UNITS = 64;
const MOST_COURSES = 16;

/** One way in which a wall may ask for the bond. */
export interface Trial {
  readonly thickness: Thickness;
  /** What the wall gives for `n`; the bond’s own where it gives none. */
  readonly n?: number;
}

/** What a wall may sensibly give for `n`. */
const NUMBERS = [1, 2, 3, 4, 5, 6];
/** Of walls with a number of their own only so few lengths are tried, half bricks apart: odd and even ones. */
const FEW = 5;

const everyOf = ({ n }: Trial) => (n === undefined ? 1 : FEW);

/** Each thickness as a wall gets it that gives no number, then with the other numbers. */
export function trialsOf(facts: BlockFacts): Trial[] {
  const thick = thicknessesOf(facts);
  const own = facts.line('n')?.number('n') ?? 1;
  const others = takesNumber(facts) ? NUMBERS.filter((n) => n !== own) : [];
  const numbered = others.flatMap((n) => thick.map((thickness) => ({ thickness, n })));
  return [...thick.map((thickness) => ({ thickness })), ...numbered];
}

/** The thicknesses it is given for; without one, the least that its units show. */
function thicknessesOf(facts: BlockFacts): Thickness[] {
  const lines = facts.lines('thick');
  if (lines.length) return lines.flatMap((line) => halvesSetOut(line.number('thick')) ?? []);
  const bond = bondOf(facts, undefined, 1);
  return bond?.courses.some(({ units }) => units.includes('header')) ? [2] : [1];
}

export function proofOf(facts: BlockFacts, trial: Trial): BondProof | undefined {
  const { thickness, n } = trial;
  const bond = bondOf(facts, n, thickness);
  return bond && isTried(bond, thickness) ? proveBond(bond, thickness, everyOf(trial)) : undefined;
}

function isTried(bond: BondPattern, thickness: Thickness): boolean {
  const units = bond.courses.reduce((sum, course) => sum + course.units.length, 0);
  const few = units <= MOST_UNITS && bond.courses.length <= MOST_COURSES;
  return few && depthsOf(bond, thickness) !== null;
}

export const isSound = ({ pattern, lengths }: BondProof) => pattern.length + lengths.length === 0;

/** Whether the bond as it is given now holds, as a wall asked for it and as any other may. */
export function holdsFor(facts: BlockFacts, trial: Trial): boolean {
  return [trial, ...trialsOf(facts)].every((each) => {
    const bond = bondOf(facts, each.n, each.thickness);
    return bond && isTried(bond, each.thickness) && bondHolds(bond, each.thickness, everyOf(each));
  });
}
