import type { JointLimits } from '../types';
import { type Fit, type FitQuestion, fitRun } from './fit';

/** Does a height work in whole courses, each with its bed? `limits` are those of the bed joint. */
export function fitHeight(
  height: number,
  brickHeight: number,
  limits: JointLimits,
  prefer?: FitQuestion['prefer'],
): Fit {
  return fitRun({ length: height, piece: brickHeight, half: null, endJoints: 1, limits, prefer });
}

/** Height of a number of courses with their beds, mm: 4 x 75 = 300 for UK bricks. */
export function heightOf(courses: number, brickHeight: number, bed: number): number {
  return courses * (brickHeight + bed);
}

/**
 * The bed joint that a measured gauge implies: `courses` courses over `height` mm, each with one
 * bed. Null when there are no courses; negative when the bricks alone are higher than that.
 */
export function gaugeJoint(courses: number, height: number, brickHeight: number): number | null {
  return courses > 0 ? height / courses - brickHeight : null;
}
