/** A corbel on plan: courses of the wall that lie further to the front than what they stand on. */
import type { FaceArea, FaceProjection } from '../../brickwork/faces';
import type { PlacedPiece } from '../../setting-out';

/** Mm that a course lies to the front, at a place along the wall. */
function laidOut(corbel: FaceProjection | undefined, course: number, x: number): number {
  const here = corbel?.areas.find((area) => {
    const { from, to } = reachOf(area, corbel);
    return x >= from && x <= to && course >= area.courses.from && course < area.courses.to;
  });
  if (!corbel || !here) return 0;
  return corbel.out * (corbel.each ? Math.floor(course - here.courses.from) + 1 : 1);
}

/** At a corner its courses may go on past the end of the wall: nothing else is there. */
function reachOf({ from, to }: FaceArea, { areas, past }: FaceProjection) {
  const end = Math.max(...areas.map((area) => area.to));
  return {
    from: past && from <= 0 ? Number.NEGATIVE_INFINITY : from,
    to: past && to >= end ? Number.POSITIVE_INFINITY : to,
  };
}

/** Mm that its uppermost course lies before the face. */
export function corbelDeep(corbel: FaceProjection | undefined): number {
  const courses = corbel?.areas.map((area) => area.courses.to - area.courses.from) ?? [];
  return corbel ? corbel.out * (corbel.each ? Math.max(0, ...courses) : 1) : 0;
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

/** The courses of a corbel from one end, and where they are, for the place that shows it. */
export function corbelArea(
  corbel: FaceProjection | undefined,
  side: 'left' | 'right' = 'left',
): FaceArea | undefined {
  const rising = corbel?.areas.toSorted((a, b) => a.from - b.from);
  return side === 'left' ? rising?.[0] : rising?.at(-1);
}
