/** Piers of a wall whose every brick has its place, as drawings take them. */
import type { Work } from '../engine/brickwork/needs';
import type { PlacedPier } from '../engine/drawing';
import { calledIn } from './work-tops';

export function piersOf(work: Work): PlacedPier[] {
  return (work.facts.piers ?? []).map(
    ({ name, from: x, y, attached, base, courses: high, placed }) => {
      // The pieces of an attached pier are placed from the wall’s front, those of another from its own.
      return {
        name: calledIn(work, 'pier', name),
        x,
        y: attached ? 0 : y,
        base,
        high,
        courses: placed,
      };
    },
  );
}
