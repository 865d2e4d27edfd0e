/** From the grid of quarter bricks to millimetres. */
import type { Area, PlacedPiece, UnitSize } from '../types';
import { type Region, shows } from './region';
import type { CoursePlan, GridPiece } from './types';

/** Mm to a quarter brick and its joint. */
export function quarterOf(unit: UnitSize, joint: number): number {
  return (unit.length + joint) / 4;
}

/** One piece; every one is cut to the joint. */
function placed(piece: GridPiece, quarter: number, joint: number): PlacedPiece {
  return {
    piece: piece.piece,
    x: piece.x * quarter,
    y: piece.y * quarter,
    along: piece.w * quarter - joint,
    across: piece.d * quarter - joint,
  };
}

/** Cells that hold nothing, as the rectangle that `core` tells, to the faces of the bricks round it. */
export function voidOf(core: Omit<GridPiece, 'piece'>, quarter: number, joint: number): Area {
  return {
    x: core.x * quarter - joint,
    y: core.y * quarter - joint,
    width: core.w * quarter + joint,
    height: core.d * quarter + joint,
  };
}

/** A course in mm: its pieces from the back to the front and from left to right, and what fills its core. */
export function coursePlan(
  pieces: readonly GridPiece[],
  region: Region,
  quarter: number,
  joint: number,
  core: readonly Area[] = [],
): CoursePlan {
  const inOrder = [...pieces].sort((a, b) => a.y - b.y || a.x - b.x);
  const laid = inOrder.map((grid) => ({
    shown: shows(grid, region).length > 0,
    piece: placed(grid, quarter, joint),
  }));
  return {
    pieces: laid.map((l) => l.piece),
    hidden: laid.filter((l) => !l.shown).map((l) => l.piece),
    core,
  };
}
