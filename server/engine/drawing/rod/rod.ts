import { phrase } from '../../../../shared/phrase';
import type { Drawing } from '../model';
import type { Mark, Place } from '../sheet/paper';

const SIZE = 2.2;
/** Mm on paper from the work to the rod. */
const OFF = 6;
/** Courses closer together on paper than this are not marked each, mm. */
const CLOSE = 0.6;

/** The gauge rod: a mark for each course, every fourth longer and numbered, nought at the ground. */
export function layRod({ rod, extent }: Drawing, place: Place): Mark[] {
  if (!rod) return [];
  const x = place.x(extent.left) - OFF;
  const first = Math.ceil(extent.bottom / rod.gauge - 1e-6);
  const pitch = rod.gauge / place.scale;
  const every = pitch >= CLOSE ? rod.every : rod.every * Math.ceil(CLOSE / pitch);
  const line = (x1: number, y1: number, x2: number, y2: number): Mark => {
    return { kind: 'line', ink: 'rod', x1, y1, x2, y2 };
  };
  const marks: Mark[] = [line(x, place.y(extent.bottom), x, place.y(rod.courses * rod.gauge))];
  const step = pitch < CLOSE ? every : 1;
  for (let course = step * Math.ceil(first / step); course <= rod.courses; course += step) {
    const numbered = course % every === 0;
    const y = place.y(course * rod.gauge);
    marks.push(line(x - (numbered ? 3 : 1.6), y, x, y));
    if (numbered) marks.push(number(String(course), x - 3.6, y));
  }
  const words = { size: SIZE, align: 'end' as const, text: phrase`courses` };
  const y = place.y(rod.courses * rod.gauge) - 2;
  return [...marks, { kind: 'text', x: x + 2, y, ...words }];
}

function number(text: string, x: number, y: number): Mark {
  return { kind: 'text', x, y: y + SIZE * 0.36, size: SIZE, align: 'end', text };
}
