import type { Drawing } from './model';
import type { Mark, Place } from './paper';

const SIZE = 2.2;
/** Mm on paper from the work to the rod. */
const OFF = 6;
/** Courses closer together on paper than this are not marked each. */
const CLOSE = 0.6;

/** The gauge rod: a mark for each course, every fourth longer and numbered, nought at the ground. */
export function layRod({ rod, extent }: Drawing, place: Place): Mark[] {
  if (!rod) return [];
  const x = place.x(extent.left) - OFF;
  const first = Math.round(extent.bottom / rod.gauge);
  const pitch = rod.gauge / place.scale;
  const every = pitch >= CLOSE ? rod.every : rod.every * Math.ceil(CLOSE / pitch);
  const line = (x1: number, y1: number, x2: number, y2: number): Mark => {
    return { kind: 'line', ink: 'rod', x1, y1, x2, y2 };
  };
  const marks: Mark[] = [line(x, place.y(extent.bottom), x, place.y(rod.courses * rod.gauge))];
  for (let course = first; course <= rod.courses; course++) {
    const numbered = course % every === 0;
    if (pitch < CLOSE && !numbered) continue;
    const y = place.y(course * rod.gauge);
    marks.push(line(x - (numbered ? 3 : 1.6), y, x, y));
    if (numbered) marks.push(number(String(course), x - 3.6, y));
  }
  return marks;
}

function number(text: string, x: number, y: number): Mark {
  return { kind: 'text', x, y: y + SIZE * 0.36, size: SIZE, align: 'end', text };
}
