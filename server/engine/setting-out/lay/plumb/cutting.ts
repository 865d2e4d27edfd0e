/** What cutting a stretch off from a longer one takes in, and what it comes to at the ends of each course. */
import type { JointLimits, Segment } from '../../types';
import type { Clear } from '../bands';
import type { Craft } from '../craft';
import type { Fill } from './fills';

/** Ends nearer than this are one end, mm. */
export const SAME = 1e-6;

/** What is cut off and from what, and the perpends that each course lies on and bears, mm along the wall and in order. */
export interface CutOff {
  readonly craft: Craft;
  readonly whole: Segment;
  readonly clear: Clear;
  readonly beware: readonly (readonly number[])[];
  readonly limits: JointLimits;
}

/** How one course is closed at both ends; null where an end is the longer stretch's own. */
export interface Closing {
  readonly left: Fill | null;
  readonly right: Fill | null;
}

/** Which ends are the longer stretch's own, so that nothing is cut there. */
export function ownEnds(clear: Clear, whole: Segment) {
  return {
    left: Math.abs(clear.from - whole.from) < SAME && clear.left === whole.left,
    right: Math.abs(clear.to - whole.to) < SAME && clear.right === whole.right,
  };
}
