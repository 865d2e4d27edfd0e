/** Piers of a wall whose every brick has its place, as drawings take them. */
import type { Work } from '../engine/brickwork/work';
import type { PlacedPier } from '../engine/drawing';
import { calledIn } from './work-tops';

export function piersOf(work: Work): PlacedPier[] {
  // Where nothing tells how its free part lies it is ruled in courses, as other piers without a plan are.
  const known = (work.facts.piers ?? []).filter(({ above }) => !above || above.placed.length > 0);
  return known.map(({ name, from: x, y, attached, base, courses: high, placed, above }) => {
    // The pieces of an attached pier are placed from the wall’s front, those of another from its own.
    return {
      name: calledIn(work, 'pier', name),
      x,
      y: attached ? 0 : y,
      base,
      high,
      courses: placed,
      ...(above ? { above: { from: above.from, courses: above.placed } } : {}),
    };
  });
}
