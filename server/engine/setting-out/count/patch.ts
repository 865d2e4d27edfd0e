/** Bricks of a wall where its rows are opened for one that is bonded in: see `Patch`. */
import type { Patch, PlacedPiece, UnitSize } from '../types';

/** How long a piece was cut, mm, whichever way it lies: it is as wide as a brick the other way, or a closer half as wide. */
export function cutLength({ piece, along, across }: PlacedPiece, { width }: UnitSize): number {
  if (piece === 'closer') return Math.min(along, across);
  return Math.abs(across - width) <= Math.abs(along - width) ? along : across;
}

/** Whether the patch lies in that course: it may come in every second one only. */
export function isPatched({ from, to, every }: Patch, course: number): boolean {
  return course >= from && course < to && (course - from) % every === 0;
}

/** In which of its courses, within a range, it lies; nothing where in none. */
export function patchedIn(
  { from, to, every }: Patch,
  range: { readonly from: number; readonly to: number | null },
): { from: number; to: number; courses: number } | undefined {
  const low = from + every * Math.max(0, Math.ceil((range.from - from) / every));
  const high = Math.min(to, range.to ?? to);
  return low < high ? { from: low, to: high, courses: Math.ceil((high - low) / every) } : undefined;
}
