/** Whether a wall is one work from front to back: a piece that goes through from each half brick of it into the next. */
import type { PlacedPiece } from '../types';
import { type LayoutFault, SAME } from './types';

/**
 * Judges all courses of a whole repeat together, on plan. `lines` are the joints between the half bricks of the wall,
 * front to back, mm from its front face. One that no piece in any course crosses has two leaves side by side, which
 * only ties would hold together; `measured` of the fault is the line, and it has no place along the wall of its own.
 */
export function proveTied(
  courses: readonly (readonly PlacedPiece[])[],
  lines: readonly number[],
): LayoutFault[] {
  if (!courses.some((pieces) => pieces.length)) return [];
  const crosses = (line: number) => (piece: PlacedPiece) =>
    piece.y < line - SAME && piece.y + piece.across > line + SAME;
  return lines
    .filter((line) => !courses.some((pieces) => pieces.some(crosses(line))))
    .map((line) => ({ kind: 'untied', course: 0, at: 0, measured: line, wanted: 0 }));
}
