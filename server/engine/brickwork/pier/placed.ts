/** Courses of a pier in another place. */
import type { CoursePlan, PlacedPiece } from '../../setting-out';

/** The same course so many mm further along and through. */
export function moved({ pieces, hidden, core }: CoursePlan, x: number, y: number): CoursePlan {
  const there = new Map<PlacedPiece, PlacedPiece>(
    pieces.map((p) => [p, { ...p, x: p.x + x, y: p.y + y }]),
  );
  return {
    pieces: [...there.values()],
    hidden: hidden.map((p) => there.get(p) ?? { ...p, x: p.x + x, y: p.y + y }),
    core: core.map((c) => ({ ...c, x: c.x + x, y: c.y + y })),
  };
}
