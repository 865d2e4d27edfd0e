import type { PieceRun, Segment } from '../../types';

/** A piece of a course, mm along the wall. */
export interface Laid {
  readonly piece: PieceRun['piece'];
  readonly from: number;
  readonly to: number;
}

/** One way to lay part of a course. */
export interface Way {
  readonly pieces: readonly Laid[];
  /** Middles of the upright joints in it, mm along the wall, those that its ends share with what stays left out. */
  readonly joints: readonly number[];
  /** What is cut: lower is better. */
  readonly cost: number;
}

/** Part of a course that may be laid otherwise, beside a wall that runs through or past it. */
export interface Part {
  /** From the first of its pieces to the end of the last, or to what stands there, mm along the wall. */
  readonly from: number;
  readonly to: number;
  /** As the course has it, mm. */
  readonly joint: number;
  /** Every small step is tried. */
  readonly fine: boolean;
  /** Made when somebody has to choose; the way that it was among them. */
  readonly ways: () => readonly Way[];
  readonly was: Way;
  /** As it is laid. */
  now: Way;
}

/** A course of a stretch: what may be laid otherwise, and joints in it that stay. */
export interface CourseParts {
  /** One, or where the other wall runs through it one to the left of that and one to the right. */
  readonly parts: readonly Part[];
  readonly fixed: readonly number[];
}

/** A stretch as it was and, parted by another wall, as it is. */
export interface Parted {
  readonly whole: Segment;
  /** The courses past the wall, and those that it runs through to the left and to the right of it. */
  readonly parts: readonly [across: Segment, left: Segment, right: Segment];
}
