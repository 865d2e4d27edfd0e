/** What a course of a pier has to fill, on a grid of quarter bricks, and what lies round it. */
import type { GridPiece, Side } from './types';

/** `air` is outside; `wall` is brickwork that goes on from here and shows no face. */
export type Ground = 'air' | 'fill' | 'wall';

/** `at` answers anywhere, outside its own bounds too. */
export interface Region {
  readonly width: number;
  readonly depth: number;
  readonly at: (x: number, y: number) => Ground;
}

/** A pier that stands alone, `width` by `depth` quarter bricks. */
export function rectangle(width: number, depth: number): Region {
  const inside = (x: number, y: number) => x >= 0 && x < width && y >= 0 && y < depth;
  return { width, depth, at: (x, y) => (inside(x, y) ? 'fill' : 'air') };
}

/** Cells just outside a piece on one side of it. */
function beside(piece: GridPiece, side: Side): (readonly [number, number])[] {
  const { x, y, w, d } = piece;
  if (side === 'front') return range(w).map((i) => [x + i, y - 1] as const);
  if (side === 'back') return range(w).map((i) => [x + i, y + d] as const);
  if (side === 'left') return range(d).map((i) => [x - 1, y + i] as const);
  return range(d).map((i) => [x + w, y + i] as const);
}

export const SIDES: readonly Side[] = ['front', 'back', 'left', 'right'];

/** Sides on which a piece shows. */
export function shows(piece: GridPiece, region: Region): Side[] {
  return SIDES.filter((side) => beside(piece, side).some(([x, y]) => region.at(x, y) === 'air'));
}

function range(n: number): number[] {
  return [...Array(n).keys()];
}
