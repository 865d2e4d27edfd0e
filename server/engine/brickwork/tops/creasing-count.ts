/** Creasing tiles counted course by course, with their mortar. */
import { phrase } from '../../../../shared/phrase';
import {
  bricksNeeded,
  creasingCourse,
  creasingWidth,
  NOTHING_COUNTED,
  sumTallies,
  type Tally,
  type TileCourse,
  type TileLine,
} from '../../setting-out';
import { counted, type Term, withGaps } from '../../working/term';
import type { TopRow, TopRun } from '../faces';
import { lengthText } from '../lengths';
import { kerfOf, kerfTerm, limitsOf, type Masonry } from '../masonry';
import type { PieceNeed } from '../needs';
import type { CopingRun } from './coping';
import type { Creasing } from './creasing';

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
  const note = phrase`counted by laying the courses`;
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
  return {
    ...NOTHING_COUNTED,
    wholes,
    halves,
    cuts: cuts.map((length) => ({ length, count: 1 })),
  };
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

/** Of the line of tiles that shows in the front; the others with it where they are laid another way round. */
function topsOf(creasing: Creasing, laid: readonly Laid[], masonry: Masonry): TopRun[] {
  const bed = masonry.jointTerms.bed.value.toNumber();
  const { lines, thick: height } = creasing;
  const alike = lines.every(({ along }) => along === lines[0]?.along);
  const deep = lines.map(({ across }) => across);
  const between = masonry.jointTerms.perpend.value.toNumber();
  return laid
    .filter((l) => l.line === lines[0])
    .map((front): TopRun => {
      const { run, course } = front;
      const rows = laid.filter((l) => l.run === run && l.course === course);
      const through = alike ? [] : rows.map((row) => rowOf(row, masonry));
      const over = course * (height + bed);
      const { from, to, on } = run;
      const top = { from, to, on, over, kind: 'tiles', height, deep, between } as const;
      return { ...top, ...rowOf(front, masonry), ...(alike ? {} : { rows: through }) };
    });
}

/** The tiles of one line of a course, in their order. */
function rowOf({ line, course, wholes, halves, cuts, joint }: Laid, masonry: Masonry): TopRow {
  const half = { length: halfOf(line, masonry), cut: true };
  const pieces = [
    ...Array(halves > 0 && course % 2 === 1 ? 1 : 0).fill(half),
    ...Array(Math.min(wholes, MOST_DRAWN)).fill({ length: line.along, cut: false }),
    ...Array(course % 2 === 1 ? Math.max(0, halves - 1) : halves).fill(half),
    ...cuts.map((length) => ({ length, cut: true })),
  ];
  return { pieces, joint };
}

function detailOf(creasing: Creasing, laid: readonly Laid[], { env }: Masonry): string[] {
  const { lines, courses } = creasing;
  const through = lines.map(({ across }) => lengthText(env, across)).join(phrase` and `);
  return [
    phrase`${courses} ${courses === 1 ? phrase`course` : phrase`courses`}, through the wall ${through}`,
    ...laid.map(({ run, wholes, halves, cuts, joint, course }) => {
      const more = [
        ...(halves ? [phrase`${halves} half`] : []),
        ...cuts.map((cut) => phrase`one cut to ${lengthText(env, cut)}`),
      ];
      const pieces = [phrase`${wholes} whole`, ...more].join(', ');
      return phrase`course ${course + 1} over ${lengthText(env, run.to - run.from)}: ${pieces}, joints of ${lengthText(env, joint)}`;
    }),
  ];
}
