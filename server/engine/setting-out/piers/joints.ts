/** Joints of a course on plan: those that show as perpends, and those inside. */
import { type Region, SIDES } from './region';
import type { GridPiece, Side } from './types';

/** Perpends are told apart by their face (side and line) and place along it, in quarter bricks. */
export type Perpend = number;

/**
 * Every upright joint that shows on a face. A face is a side and the line it lies on, so that the face of a pier and
 * that of the wall behind it are two.
 */
export function perpends(pieces: readonly GridPiece[], region: Region): Set<Perpend> {
  const found = new Set<Perpend>();
  for (const piece of pieces) for (const side of SIDES) addPerpends(piece, side, region, found);
  return found;
}

function addPerpends(piece: GridPiece, side: Side, region: Region, found: Set<Perpend>): void {
  const { x, y, w, d } = piece;
  const across = side === 'front' || side === 'back';
  const line = { front: y, back: y + d, left: x, right: x + w }[side];
  const inner = side === 'front' || side === 'left' ? line : line - 1;
  const outer = side === 'front' || side === 'left' ? line - 1 : line;
  const ground = (along: number, deep: number) =>
    across ? region.at(along, deep) : region.at(deep, along);
  const [low, high] = across ? [x, x + w] : [y, y + d];
  for (const [edge, own, next] of [
    [low, low, low - 1],
    [high, high - 1, high],
  ] as const)
    if (
      (ground(own, outer) === 'air' || ground(next, outer) === 'air') &&
      ground(next, inner) !== 'air'
    )
      found.add(perpendAt(side, line, edge));
}

/** More than any face is long, with room before nought. */
const SPAN = 256;

/** A number that stands for a perpend at a place of a face, so that sets of them are quick to compare. */
export function perpendAt(side: Side, line: number, edge: number): Perpend {
  return (SIDES.indexOf(side) * SPAN + line + SPAN / 4) * SPAN + edge + SPAN / 4;
}

/** Unit lengths of joint inside a course, each under a number of its own. */
export function innerJoints(pieces: readonly GridPiece[], region: Region): Set<number> {
  const found = new Set<number>();
  const inside = (x: number, y: number) => region.at(x, y) !== 'air';
  const add = (x: number, y: number, upright: number) => found.add((x * 1024 + y) * 2 + upright);
  for (const { x, y, w, d } of pieces) {
    for (let i = 0; i < w; i++) {
      if (inside(x + i, y - 1)) add(x + i, y, 0);
      if (inside(x + i, y + d)) add(x + i, y + d, 0);
    }
    for (let i = 0; i < d; i++) {
      if (inside(x - 1, y + i)) add(x, y + i, 1);
      if (inside(x + w, y + i)) add(x + w, y + i, 1);
    }
  }
  return found;
}

/** How many members two sets share. */
export function shared<T>(a: ReadonlySet<T>, b: ReadonlySet<T>): number {
  let count = 0;
  for (const each of a) if (b.has(each)) count++;
  return count;
}
