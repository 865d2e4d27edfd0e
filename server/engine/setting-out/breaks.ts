import type { Candidate } from './choose';
import { chooseBonded } from './choose';
import { compose, paletteOf } from './compose';
import type { Craft } from './craft';
import { brokenLap } from './craft';
import { BRICK, mod } from './grid';
import type { Boundary, Cell, Tiling } from './tiling';
import { atOrAfter, atOrBefore, next, previous } from './tiling';

/** Steps on either side of a break within which perpends are judged. */
const WINDOW = 2 * BRICK;
/** Most pieces put into a break. */
const MOST = 4;

/** Where one course leaves the left pattern, what fills the break, and where it takes up the right one. */
export interface Joining {
  left: Boundary;
  cells: readonly Cell[];
  right: Boundary;
}

function leftPerpends(tiling: Tiling, from: number, to: Boundary): number[] {
  const found: number[] = [];
  for (let b = to; b.at > from; b = previous(tiling, b)) found.unshift(b.at);
  return found;
}

function rightPerpends(tiling: Tiling, from: Boundary, to: number): number[] {
  const found: number[] = [];
  for (let b = from; b.at < to; b = next(tiling, b)) found.push(b.at);
  return found;
}

function inside(from: number, cells: readonly Cell[]): number[] {
  let at = from;
  return cells.slice(0, -1).map((cell) => {
    at += cell.width;
    return at;
  });
}

function candidatesFor(
  { grid, leastCut }: Craft,
  left: Tiling,
  right: Tiling,
  at: number,
): (Candidate & Joining)[] {
  const palette = paletteOf(left.cells, grid, leastCut);
  const l = atOrBefore(left, at);
  const r = atOrAfter(right, at);
  const pairs = [l, previous(left, l)].flatMap((a) => [r, next(right, r)].map((b) => [a, b]));
  return pairs.flatMap(([a, b]) => joinings(a!, b!));

  function joinings(a: Boundary, b: Boundary): (Candidate & Joining)[] {
    const before = leftPerpends(left, at - WINDOW, a);
    const after = rightPerpends(right, b, at + WINDOW);
    const offCentre = Math.abs((a.at + b.at) / 2 - at) / 1000;
    return compose(b.at - a.at, palette, MOST).map(({ cells, cost }) => ({
      left: a,
      right: b,
      from: a.at,
      to: b.at,
      cells,
      cost: cost + offCentre,
      perpends: [...before, ...inside(a.at, cells), ...(cells.length > 0 ? after : after.slice(1))],
    }));
  }
}

/**
 * Breaks the bond near step `at`: for each course, the pieces between the pattern that comes from
 * the left and the one that comes from the right, with no perpend over another nearer than a
 * quarter brick where any choice of pieces allows it. Null when nothing fills the place.
 */
export function breakBond(
  craft: Craft,
  left: readonly Tiling[],
  right: readonly Tiling[],
  at: number,
): Joining[] | null {
  const layers = left.map((tiling, i) => candidatesFor(craft, tiling, right[i]!, at));
  return chooseBonded(layers, brokenLap(craft)) as (Candidate & Joining)[] | null;
}

/** What the answer of {@link breakBond} depends on, so that like breaks are worked out once. */
export function breakKey(left: readonly Tiling[], right: readonly Tiling[], at: number): string {
  const place = (t: Tiling) =>
    `${mod(t.origin - at + 1e-7, t.period).toFixed(4)}:${t.cells.map((cell) => cell.width)}`;
  return left.map((t, i) => `${place(t)} ${place(right[i]!)}`).join();
}

/** A joining found at one break moved to a like one. */
export function moveJoining({ left, cells, right }: Joining, by: number): Joining {
  return {
    left: { ...left, at: left.at + by },
    cells,
    right: { ...right, at: right.at + by },
  };
}
