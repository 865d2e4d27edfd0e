/** A corbel on plan: courses of the wall that lie further to the front than what they stand on. */
import type { FaceProjection } from '../../brickwork/needs';
import type { PlacedPiece } from '../../setting-out';

/** Mm that a course lies to the front, at a place along the wall. */
export function laidOut(corbel: FaceProjection | undefined, course: number, x: number): number {
  const here = corbel?.areas.find(({ from, to, courses }) => {
    return x >= from && x <= to && course >= courses.from && course < courses.to;
  });
  if (!corbel || !here) return 0;
  return corbel.out * (corbel.each ? Math.floor(course - here.courses.from) + 1 : 1);
}

export function inCorbel<T extends PlacedPiece>(
  pieces: readonly T[],
  corbel: FaceProjection | undefined,
  course: number,
): T[] {
  return pieces.map((piece) => {
    const out = laidOut(corbel, course, piece.x + piece.along / 2);
    return out ? { ...piece, y: piece.y - out } : piece;
  });
}

/** The courses of a corbel from the left, and where they are, for the place that shows it. */
export function corbelArea(
  corbel: FaceProjection | undefined,
): FaceProjection['areas'][number] | undefined {
  return corbel?.areas.toSorted((a, b) => a.from - b.from)[0];
}
