import type { JointLimits } from '../types';

/** A length made up of pieces and their joints, as it is set out along one line. */
export interface Row {
  /** A whole piece along the line, mm. */
  piece: number;
  /** A half piece, mm; null where only whole pieces are laid. */
  half: number | null;
  /** Joints at the two ends together, 0 to 2: none for a pier (CO-), two for an opening (CO+). */
  endJoints: 0 | 1 | 2;
  limits: JointLimits;
}

/** Lengths within this are equal, mm: far finer than anyone measures. */
export const SAME = 1e-6;

/** Joints in a row of `halves` half pieces, laid in as few pieces as it can be. */
export function jointsIn(row: Row, halves: number): number {
  return Math.ceil(halves / 2) - 1 + row.endJoints;
}

/** Length of the pieces alone. */
function piecesIn(row: Row, halves: number): number {
  return Math.floor(halves / 2) * row.piece + (halves % 2) * (row.half ?? 0);
}

/** More pieces in a row than anyone lays, and past which counting by ones would lose them. */
const MOST_PIECES = 1e9;

/** False for a row that no number of pieces could ever fill: nonsense sizes, as an unfinished note may hold. */
export function canBeFilled({ piece, half, limits }: Row, length: number): boolean {
  const { least, best, most, leastCut } = limits;
  const all = [length, piece, half ?? 0, least, best, most, leastCut];
  const few = length <= MOST_PIECES * piece && length <= MOST_PIECES;
  const sound =
    few && all.every(Number.isFinite) && length > 0 && piece > 0 && (half === null || half > 0);
  return sound && least >= 0 && best >= least && most >= best && leastCut >= 0;
}

/** Length of `halves` half pieces at the best joint: 112.5 n - 10, 112.5 n or 112.5 n + 10 for UK bricks. */
export function sizeOf(row: Row, halves: number): number {
  return piecesIn(row, halves) + jointsIn(row, halves) * row.limits.best;
}

/** Joint that makes `halves` half pieces fill `length`; null when no joint of any size does. */
export function jointFor(row: Row, halves: number, length: number): number | null {
  const left = length - piecesIn(row, halves);
  const joints = jointsIn(row, halves);
  if (joints > 0) return left / joints;
  return Math.abs(left) < SAME ? row.limits.best : null;
}

/** Whether a joint, mm, is one that anyone would accept; null, where there is none at all, is not. */
export function withinLimits(joint: number | null, { least, most }: JointLimits): boolean {
  return joint !== null && joint >= least - SAME && joint <= most + SAME;
}

/** Half pieces that go into `length` at the best joint, as a real number. */
export function estimate(row: Row, length: number): number {
  const { piece, endJoints, limits } = row;
  return (2 * (length + limits.best * (1 - endJoints))) / (piece + limits.best);
}

/**
 * The number of half pieces whose joint, within the limits, is nearest the best; null when none is.
 * `parity` 0 asks for whole pieces only, 1 for an odd half. Of two as near, the fewer. An odd half
 * counts as `wholeWorth` further off.
 *
 * The joint falls as the number grows, so the best number stands next to where it passes the best
 * joint: only those neighbours are tried.
 */
export function fittingHalves(row: Row, length: number, parity?: 0 | 1): number | null {
  const guess = Math.floor(estimate(row, length));
  let best: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let halves = Math.max(1, guess - 3); halves <= guess + 4; halves++) {
    if (row.half === null && halves % 2 === 1) continue;
    if (parity !== undefined && halves % 2 !== parity) continue;
    const joint = jointFor(row, halves, length);
    if (!withinLimits(joint, row.limits)) continue;
    const odd = halves % 2 === 1 ? (row.limits.wholeWorth ?? 0) : 0;
    const off = Math.abs(joint! - row.limits.best) + odd;
    if (best === null || off < least - SAME * SAME) [best, least] = [halves, off];
  }
  return best;
}

/** The number of half pieces whose size at the best joint is nearest `length`. At least 1 (2 without halves). */
export function nearestHalves(row: Row, length: number): number {
  const by = row.half === null ? 2 : 1;
  return Math.max(by, by * Math.round(estimate(row, length) / by));
}
