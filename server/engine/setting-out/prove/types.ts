/**
 * What a checker of brickwork is given: rectangles, what they should fill, and rules. It knows nothing
 * of how they came to lie there. Millimetres throughout.
 */
import type { EndKind, FacePiece } from '../types';

/** One piece as it shows in the face, mm along the wall. */
export interface BuiltPiece {
  readonly piece: FacePiece;
  readonly from: number;
  readonly to: number;
}

/** What one course has to fill without a hole: a clear stretch and how it ends. */
export interface Outline {
  readonly from: number;
  readonly to: number;
  readonly left: EndKind;
  readonly right: EndKind;
}

/** Mm along the wall. */
export interface Place {
  readonly from: number;
  readonly to: number;
}

/** Where the bond is owned to be broken, and the lap that is enough there, mm. */
export interface BrokenPlace extends Place {
  readonly lap: number;
}

/** One course of a face: its pieces in any order, and what they have to fill. */
export interface BuiltCourse {
  /** 0 is the lowest. Courses whose numbers follow one another lie on one another. */
  readonly course: number;
  readonly pieces: readonly BuiltPiece[];
  readonly outline: readonly Outline[];
  readonly broken?: readonly BrokenPlace[];
}

export interface ProofRules {
  /** Least and greatest joint that anyone would accept, mm. */
  readonly joint: { readonly least: number; readonly most: number };
  /** Least lap of perpends in neighbouring courses, mm; 0 for a bond that asks for none. */
  readonly lap: number;
  /** Farthest that a toothed course may end from its line, mm. */
  readonly tooth: number;
  /** Least length of a cut, mm. */
  readonly leastCut: number;
  /** Length of each piece over the face, mm; one that is left out may have any. */
  readonly sizes?: Partial<Record<FacePiece, number>>;
}

export type FaultKind =
  | 'no-piece'
  | 'overlap'
  | 'gap'
  | 'outside'
  | 'joint-out'
  | 'aligned'
  | 'lap-short'
  | 'closer-at-end'
  | 'closer-misplaced'
  | 'closer-missing'
  | 'cut-too-short'
  | 'size-off'
  | 'untied';

/** What is wrong with a layout, and where. */
export interface LayoutFault {
  readonly kind: FaultKind;
  readonly course: number;
  /** Mm along the wall. */
  readonly at: number;
  /** Mm (mm² on plan). */
  readonly measured: number;
  readonly wanted: number;
}

/** Closer than this is the same place, mm: far finer than anyone measures. */
export const SAME = 1e-4;
/** Faults told of one course, or of one pair of courses: nobody reads more. */
export const MOST_TOLD = 100;
