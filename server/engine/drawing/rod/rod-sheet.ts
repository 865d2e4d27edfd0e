/** A gauge rod for itself: every course marked and numbered, heights running from the ground, levels named. */
import { phrase } from '../../../../shared/phrase';
import { lengthOn, type Units } from '../lengths';
import type { Drawing, Label, Stroke } from '../model';
import type { DrawingSet, Group } from '../sheet/set';

/** A height that has a name: a sill, a head, a damp-proof course. */
export interface Level {
  /** Mm from the ground. */
  at: number;
  name: string;
}

export interface RodOptions {
  title: string;
  units?: Units;
  gauge: number;
  courses: number;
  levels: readonly Level[];
}

/** Lengths that the rod is cut into, mm of the work: so much goes on a page at {@link SCALE}. */
const PIECE = { millimetres: 1500, feet: 1200 };
const SCALE = { millimetres: 10, feet: 8 };
/** More courses than this are not marked. */
const MOST_COURSES = 600;
/** Width of the rod, mm. */
const WIDE = 40;
const LETTERS = 2.5;
/** Names nearer to each other are moved apart, mm on paper. */
const APART = 3.2;

/** Levels at one height are named together, from the ground up. */
function gathered(levels: readonly Level[]): Level[] {
  const rising = [...levels].sort((a, b) => a.at - b.at);
  const merged: Level[] = [];
  for (const level of rising) {
    const last = merged.at(-1);
    if (last && level.at - last.at < 0.5) {
      if (!last.name.split(', ').includes(level.name)) last.name += `, ${level.name}`;
    } else merged.push({ ...level });
  }
  return merged;
}

const stroke = (style: Stroke['style'], y: number, from: number, to: number): Stroke => {
  return { style, from: { x: from, y }, to: { x: to, y } };
};

const words = (text: string, x: number, y: number, align: 'start' | 'end'): Label => {
  return { text, x, y, size: LETTERS, align };
};

/** Marks of courses: the top of each, its number on the left, its height on the right. */
function courseMarks(from: number, to: number, gauge: number, units: Units, scale: number) {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  for (let course = from; course <= to; course++) {
    const y = course * gauge;
    strokes.push(stroke('rod', y, 0, WIDE));
    labels.push(words(String(course), -2 * scale, y, 'end'));
    labels.push(words(lengthOn(units, y), WIDE + 2 * scale, y, 'start'));
  }
  return { strokes, labels };
}

/** Names beside the rod, with their heights where no course has it. */
function levelMarks(levels: readonly Level[], gauge: number, units: Units, scale: number) {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const x = WIDE + 14 * scale;
  let last = Number.NEGATIVE_INFINITY;
  for (const { at, name } of levels) {
    const off = Math.abs(at - Math.round(at / gauge) * gauge) > 0.5;
    last = Math.max(at, last + APART * scale);
    strokes.push(stroke('mark', at, -0.5 * scale, WIDE + 1.2 * scale));
    if (last === at) strokes.push(stroke('dimension', at, WIDE + 11 * scale, x - scale));
    const text = off || last !== at ? `${name} ${lengthOn(units, at)}` : name;
    labels.push({ ...words(short(text), x, last, 'start'), at });
  }
  return { strokes, labels };
}

function short(text: string): string {
  return text.length > LETTERS_MOST ? `${text.slice(0, LETTERS_MOST - 1)}…` : text;
}

/** Mm on paper that names take beside the rod, and letters that go into it. */
const NAMES = 62;
const LETTERS_MOST = 44;

function lengthOfRod(
  from: number,
  to: number,
  levels: readonly Level[],
  { gauge, units = 'millimetres' }: RodOptions,
): Group {
  const scale = SCALE[units];
  const [low, high] = [from * gauge, Math.max(to * gauge, ...levels.map((level) => level.at))];
  const courses = courseMarks(from, to, gauge, units, scale);
  const named = levelMarks(levels, gauge, units, scale);
  const drawing: Drawing = {
    title: '',
    description: '',
    units,
    extent: { left: -8 * scale, right: WIDE + NAMES * scale, bottom: low, top: high },
    boxes: [{ style: 'outline', x: 0, y: low, width: WIDE, height: high - low }],
    shapes: [],
    strokes: [...courses.strokes, ...named.strokes],
    labels: [...courses.labels, ...named.labels],
    chains: [],
    rod: null,
    keys: [],
    notes: [],
  };
  return { title: phrase`Courses ${from} to ${to}`, drawings: [drawing] };
}

/** The whole rod, in lengths side by side, each beginning with the mark that the one before it ends with. */
export function rodSet(options: RodOptions): DrawingSet {
  const { title, units = 'millimetres', gauge } = options;
  const courses = Math.min(Math.floor(options.courses), MOST_COURSES);
  const levels = gathered(options.levels);
  const each = Math.max(1, Math.floor(PIECE[units] / gauge));
  const groups: Group[] = [];
  for (let from = 0; from < courses; from += each) {
    const to = Math.min(from + each, courses);
    const last = to === courses;
    const here = levels.filter(
      ({ at }) => at >= from * gauge - 0.5 && (last || at < to * gauge - 0.5),
    );
    // What stands on the last course belongs to it; where more courses are, they are not marked.
    const near = here.filter(({ at }) => at <= (to + 6) * gauge);
    groups.push(lengthOfRod(from, to, near, options));
  }
  const cut = options.courses > courses ? [phrase`Marked up to course ${courses}.`] : [];
  return {
    title,
    description: phrase`Gauge rod, ${courses} courses of ${lengthOn(units, gauge)}: ${levels.map((l) => phrase`${l.name} at ${lengthOn(units, l.at)}`).join(', ')}.`,
    units,
    scale: SCALE[units],
    groups,
    notes: [
      phrase`Each mark is the top of a course, bed joint below it included. Heights run from the ground.`,
      ...cut,
    ],
  };
}
