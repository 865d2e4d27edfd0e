/** Creasing tiles counted course by course, with their mortar. */
import {
  bricksNeeded,
  creasingCourse,
  creasingWidth,
  sumTallies,
  type Tally,
  type TileCourse,
  type TileLine,
} from '../setting-out';
import { counted, type Term, withGaps } from '../working/term';
import type { CopingRun } from './coping';
import type { Creasing } from './creasing';
import { lengthText } from './lengths';
import { kerfOf, kerfTerm, limitsOf, type Masonry } from './masonry';
import type { PieceNeed, TopRun } from './needs';

export interface CreasingCount {
  readonly need: PieceNeed;
  /** Its mortar alone. */
  readonly mortar: Tally;
  readonly tops: readonly TopRun[];
}

interface Laid extends TileCourse {
  readonly run: CopingRun;
  readonly line: TileLine;
  readonly course: number;
}

/** `inputs` are the facts that the wall is laid from. */
export function countCreasing(
  creasing: Creasing,
  runs: readonly CopingRun[],
  masonry: Masonry,
  inputs: readonly Term[],
): CreasingCount {
  const laid = laidIn(creasing, runs, masonry);
  const { material, facts, line } = creasing;
  const title = facts?.title ?? material;
  const detail = () => detailOf(creasing, laid, masonry);
  const size = facts?.line('size');
  const args = [...inputs, ...(size ? [kerfTerm(masonry.env)] : [])];
  const note = 'counted by laying the courses';
  const count = counted(title, neededOf(laid, masonry), 'pieces', { detail, note, args });
  const origin = line.values.material ? line.at('material') : line.origin;
  const need = { material, block: facts?.block, count: withGaps(count, creasing.gaps), origin };
  return { need, mortar: mortarOf(creasing, laid, masonry), tops: topsOf(creasing, laid, masonry) };
}

function laidIn(creasing: Creasing, runs: readonly CopingRun[], masonry: Masonry): Laid[] {
  const limits = limitsOf(masonry.env, 'joints-accepted', masonry.jointTerms.perpend);
  const { courses, lines } = creasing;
  return runs.flatMap((run) =>
    Array.from({ length: courses }, (_, course) =>
      lines.map((line): Laid => {
        const { along } = line;
        const { endJoints } = run;
        const laid = { length: run.to - run.from, along, endJoints, limits };
        return { ...creasingCourse(laid, course % 2 === 1), run, line, course };
      }),
    ).flat(),
  );
}

/** Whole tiles that all of it is cut from: tiles laid the same way round give each other their other halves. */
function neededOf(laid: readonly Laid[], masonry: Masonry): number {
  const joint = masonry.jointTerms.perpend.value.toNumber();
  const ways = [...new Set(laid.map((l) => l.line.along))];
  return ways.reduce((sum, along) => {
    const all = sumTallies(laid.filter((l) => l.line.along === along).map(tallyOf));
    const unit = { length: along, width: along, height: along };
    return sum + bricksNeeded(all, unit, joint, kerfOf(masonry.env)).total;
  }, 0);
}

function tallyOf({ wholes, halves, cuts }: TileCourse): Tally {
  const none = { threeQuarters: 0, closers: 0, brickVolume: 0, grossVolume: 0 };
  return { wholes, halves, cuts: cuts.map((length) => ({ length, count: 1 })), ...none };
}

function halfOf(line: TileLine, masonry: Masonry): number {
  return (line.along - masonry.jointTerms.perpend.value.toNumber()) / 2;
}

function mortarOf(creasing: Creasing, laid: readonly Laid[], masonry: Masonry): Tally {
  const { thick, lines, courses } = creasing;
  const bed = masonry.jointTerms.bed.value.toNumber();
  const wide = lines.length ? creasingWidth(lines, masonry.jointTerms.perpend.value.toNumber()) : 0;
  const runs = [...new Set(laid.map((l) => l.run))];
  const along = runs.reduce((sum, run) => sum + run.to - run.from, 0);
  const tiles = laid.reduce((sum, { wholes, halves, cuts, line }) => {
    const long =
      wholes * line.along + halves * halfOf(line, masonry) + cuts.reduce((a, b) => a + b, 0);
    return sum + long * line.across * thick;
  }, 0);
  return { ...sumTallies([]), grossVolume: along * courses * wide * (thick + bed) - tiles };
}

/** Past this a course is drawn as far as it goes: nobody reads ten thousand tiles. */
const MOST_DRAWN = 4000;

/** Of the line of tiles that shows in the front. */
function topsOf(creasing: Creasing, laid: readonly Laid[], masonry: Masonry): TopRun[] {
  const bed = masonry.jointTerms.bed.value.toNumber();
  const [first] = creasing.lines;
  const front = laid.filter((l) => l.line === first);
  // Lines laid another way round have joints of their own, which the front one does not tell.
  const alike = creasing.lines.every(({ along }) => along === first?.along);
  const deep = alike ? creasing.lines.map(({ across }) => across) : undefined;
  return front.map(({ run, line, course, wholes, halves, cuts, joint }): TopRun => {
    const half = { length: halfOf(line, masonry), cut: true };
    const many = Math.min(wholes, MOST_DRAWN);
    const pieces = [
      ...Array(halves > 0 && course % 2 === 1 ? 1 : 0).fill(half),
      ...Array(many).fill({ length: line.along, cut: false }),
      ...Array(course % 2 === 1 ? Math.max(0, halves - 1) : halves).fill(half),
      ...cuts.map((length) => ({ length, cut: true })),
    ];
    const over = course * (creasing.thick + bed);
    const { from, to, on } = run;
    return { from, to, on, over, kind: 'tiles', pieces, joint, height: creasing.thick, deep };
  });
}

function detailOf(creasing: Creasing, laid: readonly Laid[], { env }: Masonry): string[] {
  const { lines, courses } = creasing;
  const through = lines.map(({ across }) => lengthText(env, across)).join(' and ');
  return [
    `${courses} ${courses === 1 ? 'course' : 'courses'}, through the wall ${through}`,
    ...laid.map(({ run, wholes, halves, cuts, joint, course }) => {
      const more = [
        ...(halves ? [`${halves} half`] : []),
        ...cuts.map((cut) => `one cut to ${lengthText(env, cut)}`),
      ];
      const pieces = [`${wholes} whole`, ...more].join(', ');
      return `course ${course + 1} over ${lengthText(env, run.to - run.from)}: ${pieces}, joints of ${lengthText(env, joint)}`;
    }),
  ];
}
