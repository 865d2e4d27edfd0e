import type { Area, EndKind, PlacedPiece, SettingOut } from '../../types';
import type { Courses, Parity, Side } from '../corner';

/** How far the courses of a wall that runs in reach into the other, and how they end in there. */
export interface Entry {
  /** In quarter bricks. */
  readonly quarters: number;
  /** The same without the joint at its end, mm. */
  readonly by: number;
  readonly end: EndKind;
}

/** A wall against the back of another, and the other; both begun with the course of their bond that they are begun with. */
export interface TieQuestion {
  /** The wall that goes on. */
  readonly main: SettingOut;
  /** The wall that runs in, set out with its courses as long as those that run in (see `runOn`). */
  readonly cross: SettingOut;
  /** The end of it that runs in. */
  readonly side: Side;
  readonly entry: Entry;
  /** From the left end of the other wall to its near side, mm. */
  readonly at: number;
  /** Courses by which the numbers of the other wall are above its own. */
  readonly lift: number;
  /** In which it stands against the other, by the numbers of the other. */
  readonly courses: Courses;
  /** Nothing dearer is looked for; left out: whatever there is. */
  readonly most?: number;
}

/** Of one row of a course: what is taken out of it, from the face of a piece to the face of another, mm along the wall. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

/** One course of the other wall where it is opened. */
export interface Opened {
  /** By row; nothing for a row that is left as it was. */
  readonly windows: readonly (Window | undefined)[];
  /** What is laid there instead: the other wall's own bricks, without what runs in. */
  readonly pieces: readonly PlacedPiece[];
  /** Lower is better. */
  readonly cost: number;
}

/** Courses that are opened alike: every so many from `from` (inclusive) to `to` (exclusive), by the numbers of the other wall. */
export interface OpenedCourses {
  readonly from: number;
  readonly to: number;
  readonly every: number;
  readonly opened: Opened;
}

/** A wall bonded into another. */
export interface Tie {
  /** The courses that run in, by the numbers of the other wall. */
  readonly parity: Parity;
  readonly opened: readonly OpenedCourses[];
  /** What runs in, on plan in the measures of the other wall. */
  readonly box: Area;
  readonly cost: number;
}
