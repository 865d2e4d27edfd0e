/** Plans of piers: what goes in, and where every piece of each course lies. Half and quarter bricks on plan, mm outside. */
import type { Area, CountedPiece, FacePiece, PieceCount, PlacedPiece, UnitSize } from '../types';

export type Side = 'front' | 'back' | 'left' | 'right';

/**
 * What goes where no face shows it. `bricks`: wholes as far as they go. `halves`: half bats. `bats`: broken
 * bricks that are to hand. `concrete` and `hollow` lay nothing there.
 */
export type CoreFill = 'bricks' | 'halves' | 'bats' | 'concrete' | 'hollow';

/** A rectangular pier that stands alone. */
export interface PierQuestion {
  /** Half bricks along the face, 1 to {@link MOST_HALVES}. */
  readonly width: number;
  /** Half bricks from front to back, the same. */
  readonly depth: number;
  readonly unit: UnitSize;
  /** Upright joint, mm. */
  readonly joint: number;
  /** Told: the faces are then closed with whole bricks round a core. Left out: bonded as `counts` has it. */
  readonly core?: CoreFill;
  /** What each course takes, where somebody has said it; one course serves for both. */
  readonly counts?: readonly (readonly PieceCount[])[];
}

/** One course on plan. */
export interface CoursePlan {
  /** Everything laid, the front row first. */
  readonly pieces: readonly PlacedPiece[];
  /** Those of `pieces` that no face shows. */
  readonly hidden: readonly PlacedPiece[];
  /** Where nothing is laid, to the faces of the bricks round it. */
  readonly core: readonly Area[];
}

/** Courses from the bottom, repeated upward, and what their plans come to. */
export interface PierLaid {
  /** Mm over the faces. */
  readonly width: number;
  readonly depth: number;
  readonly courses: readonly CoursePlan[];
  /** Half bats that a course can hide: where salvaged halves and offcuts go first. The least of any course. */
  readonly coreHalves: number;
}

/** A piece as it shows in a face, mm from that face's left end as it is looked at. */
export interface ShownPiece {
  readonly piece: FacePiece;
  readonly from: number;
  readonly length: number;
}

/** A piece on a grid of quarter bricks, its joint included. */
export interface GridPiece {
  readonly piece: CountedPiece;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly d: number;
}

/** Above two and a half bricks a pier is a wall: its faces no longer hold its core. */
export const MOST_HALVES = 5;
