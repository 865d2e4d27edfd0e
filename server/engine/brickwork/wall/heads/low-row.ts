/** Bricks cut along to lie on a lintel or a head that is no whole number of courses high. */
import {
  type CutPlace,
  type PlacedPiece,
  partOfCourse,
  type SettingOut,
} from '../../../setting-out';
import type { Coursing, Zone } from './site';

/** Something let into a wall, and what lies over it up to its next whole course. */
export interface Splitable {
  readonly coursing: Coursing;
  readonly zone: Zone;
}

interface InWall {
  readonly wall: SettingOut;
}

/** Nearer than this is the same cut, mm. */
const SAME = 0.05;

/** On plan: they go on in the perpends of the course that they fill up, so that the course over them laps. */
export function lowPieces({ coursing, zone }: Splitable, { wall }: InWall): readonly PlacedPiece[] {
  if (coursing.works || coursing.split <= 0) return [];
  return partOfCourse(wall, { course: zone.high - 1, from: zone.from, to: zone.to });
}

/** Where they lie, for the cut list: each is cut along, those as long as a brick too. */
export function lowCuts(thing: Splitable, site: InWall): CutPlace[] {
  const course = thing.zone.high - 1;
  const found: CutPlace[] = [];
  for (const { x, along } of lowPieces(thing, site)) {
    const at = found.findIndex((place) => Math.abs(place.length - along) < SAME);
    const place = found[at];
    const spot = { from: x, by: 0, count: 1 };
    if (!place) {
      const courses = { from: course, to: course + 1, every: 1 };
      const { split: high } = thing.coursing;
      found.push({ piece: 'cut', length: along, high, ...courses, each: 1, at: [spot] });
    } else {
      const known = place.at.some(({ from }) => Math.abs(from - x) < SAME);
      found[at] = { ...place, each: place.each + 1, at: known ? place.at : [...place.at, spot] };
    }
  }
  return found;
}
