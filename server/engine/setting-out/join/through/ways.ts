/** Ways to lay one course beside a wall that runs through it, or across the wall where that runs through the courses over and under it. */
import type { WallSpec } from '../../types';
import { costOf, type Filling, fillings, isLaid, named } from './fillings';
import type { Laid, Way } from './types';

const MOST_CUTS = 4;
/** Cuts in a way of which two are made longer and shorter, so that joints between them come elsewhere. */
const MOST_SHIFTED = 3;

interface Stretch {
  readonly spec: WallSpec;
  /** As the course has it, mm. */
  readonly joint: number;
  readonly from: number;
  readonly to: number;
}

/** Pieces with a joint before or after them too where another wall is. */
type Beside = 'left' | 'right' | 'none';

function wayOf({ pieces, cost }: Filling, { from, joint }: Stretch, beside: Beside): Way {
  let at = from + (beside === 'left' ? joint : 0);
  const laid = pieces.map(({ piece, length }): Laid => {
    const one = { piece, from: at, to: at + length };
    at += length + joint;
    return one;
  });
  return { pieces: laid, joints: middlesOf(laid), cost };
}

const middlesOf = (pieces: readonly Laid[]) =>
  pieces.slice(1).map((p, i) => (pieces[i]!.to + p.from) / 2);

/** As it is laid now. */
export function nowOf(pieces: readonly Laid[], spec: WallSpec): Way {
  const cost = pieces.reduce((sum, p) => {
    const whole = Math.abs(p.to - p.from - spec.unit.length) < 1e-3;
    return sum + (whole ? 0 : costOf(named(p.to - p.from, spec), p.to - p.from, spec));
  }, 0);
  return { pieces, joints: middlesOf(pieces), cost };
}

/** From a piece that stays to the wall that runs through, or from that to a piece that stays. */
export function besideWays(at: Stretch, beside: 'left' | 'right'): Way[] {
  const room = { spec: at.spec, joint: at.joint, room: at.to - at.from, mostCuts: MOST_CUTS };
  return fillings(room).map((filling) => wayOf(filling, at, beside));
}

/** The wall that runs through the courses over and under one. */
export interface Crossed {
  /** Its sides, mm along the wall. */
  readonly from: number;
  readonly to: number;
  /** Joints in it and on either side of it, mm along the wall, and what laps them at least. */
  readonly joints: readonly number[];
  readonly lap: number;
  /** Every small step is tried, not only joints at quarter bricks from it: where nothing else laps. */
  readonly fine: boolean;
}

/** Past that wall: those that lap its joints, else all. */
export function acrossWays(at: Stretch, crossed: Crossed): Way[] {
  const { spec, joint } = at;
  const all = fillings({ spec, joint, room: at.to - at.from + joint, mostCuts: MOST_CUTS });
  const plain = all.map((filling) => wayOf(filling, at, 'none'));
  const clears = ({ joints }: Way) =>
    joints.every((x) => crossed.joints.every((y) => Math.abs(x - y) >= crossed.lap));
  const good = plain.filter(clears);
  const few = plain.filter((w) => cutsOf(w, spec).length <= MOST_SHIFTED);
  const middle = (crossed.from + crossed.to) / 2;
  for (const by of shiftsFor(at, crossed))
    for (const way of few) good.push(...shifted(way, by, middle, spec).filter(clears));
  return good.length ? good : plain;
}

/** Parts of a quarter brick that joints are moved by where every small step is tried. */
const STEPS = 8;

/** So that joints come to quarter bricks from one side of the wall or the other: with joints out of the common they are not the same. */
function shiftsFor({ spec, from: start, to: end }: Stretch, { from, to, fine }: Crossed): number[] {
  const quarter = (spec.unit.length + spec.joints.perpend) / 4;
  if (fine)
    return Array.from({ length: 2 * STEPS - 1 }, (_, i) => ((i + 1 - STEPS) * quarter) / STEPS);
  const left = (from - start) % quarter;
  const right = (end - to) % quarter;
  const all = [left, left - quarter, -right, quarter - right];
  return all.filter(
    (by, i) => Math.abs(by) >= 1 && all.findIndex((b) => Math.abs(b - by) < 1) === i,
  );
}

const cutsOf = ({ pieces }: Way, spec: WallSpec) =>
  pieces.flatMap((p, i) => (p.to - p.from < spec.unit.length - 1e-3 ? [i] : []));

/** The same pieces, those between two cuts moved along: one of the cuts is longer, the other shorter. */
function shifted(way: Way, by: number, middle: number, spec: WallSpec): Way[] {
  const cuts = cutsOf(way, spec);
  return cuts.flatMap((a, n) =>
    cuts.slice(n + 1).flatMap((b) => {
      if (way.pieces[a]!.from > middle || way.pieces[b]!.to < middle) return [];
      const pieces = way.pieces.map((p, i) => {
        const from = i > a && i <= b ? p.from + by : p.from;
        const to = i >= a && i < b ? p.to + by : p.to;
        return { piece: named(to - from, spec), from, to };
      });
      if (![a, b].every((i) => isLaid(pieces[i]!.to - pieces[i]!.from, spec))) return [];
      const cost = pieces.reduce((sum, p) => sum + costOf(p.piece, p.to - p.from, spec), 0);
      return [{ pieces, joints: middlesOf(pieces), cost }];
    }),
  );
}
