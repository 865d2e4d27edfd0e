/** The best of each kind of way, found by trying everything: the plain path that the solver is held against. */
import type { CutWay, FitQuestion } from '../../server/engine/setting-out';

export interface Laying {
  halves: number;
  joint: number;
}

const joints = (q: FitQuestion, halves: number) => Math.ceil(halves / 2) - 1 + q.endJoints;
const pieces = (q: FitQuestion, halves: number) =>
  Math.floor(halves / 2) * q.piece + (halves % 2 ? q.half! : 0);

/** Every number of half pieces from one to far too many, with the joint that fills the length. */
export function everyLaying(q: FitQuestion): Laying[] {
  const most = 2 * Math.ceil(q.length / q.piece) + 6;
  const all: Laying[] = [];
  for (let halves = 1; halves <= most; halves++) {
    if (q.half === null && halves % 2 === 1) continue;
    const left = q.length - pieces(q, halves);
    const n = joints(q, halves);
    if (n > 0) all.push({ halves, joint: left / n });
    else if (Math.abs(left) < 1e-6) all.push({ halves, joint: q.limits.best });
  }
  return all;
}

export function bestWithin(q: FitQuestion, parity?: 0 | 1): Laying | null {
  const { least, most, best } = q.limits;
  const good = everyLaying(q).filter(
    ({ halves, joint }) =>
      joint >= least - 1e-6 &&
      joint <= most + 1e-6 &&
      (parity === undefined || halves % 2 === parity),
  );
  const off = (laying: Laying) => Math.abs(laying.joint - best);
  return good.reduce<Laying | null>((a, b) => (a && off(a) <= off(b) + 1e-9 ? a : b), null);
}

/** Sizes at the best joint next to the length on either side, in whole or in any pieces. */
export function nearestSizes(q: FitQuestion, wholeOnly: boolean) {
  const sizes: number[] = [];
  for (let halves = 1; halves <= 2 * Math.ceil(q.length / q.piece) + 6; halves++) {
    if (halves % 2 === 1 && (q.half === null || wholeOnly)) continue;
    sizes.push(pieces(q, halves) + joints(q, halves) * q.limits.best);
  }
  const below = sizes.filter((size) => size < q.length - 1e-6);
  const above = sizes.filter((size) => size > q.length + 1e-6);
  return { below: below.length > 0 ? Math.max(...below) : null, above: Math.min(...above) };
}

/**
 * Cuts at joints tried in steps of `step` mm: no exact optimum, but none better may exist. Where
 * joints a little wider take one more whole, a cut all but a whole brick is no answer.
 */
export function cutsTried(q: FitQuestion, cuts: 1 | 2, step: number): Omit<CutWay, 'where'>[] {
  const { least, most, leastCut } = q.limits;
  const found: Omit<CutWay, 'where'>[] = [];
  for (let wholes = 0; wholes * q.piece <= q.length; wholes++) {
    const whole = (q.length - (wholes + cuts) * q.piece) / (wholes + cuts - 1 + q.endJoints);
    if (whole > q.limits.best - 1e-9 && whole < most + 1e-9) continue;
    for (let joint = least; joint <= most + 1e-9; joint += step) {
      const n = wholes + cuts - 1 + q.endJoints;
      const cut = (q.length - wholes * q.piece - n * joint) / cuts;
      if (cut >= leastCut && cut < q.piece - 1e-6)
        found.push({ kind: 'cut', wholes, cuts, cut, joint });
    }
  }
  return found;
}
