/** A wall of a million bricks with many openings, each in a row of windows or at a level of its own. */
import {
  type BondPattern,
  type OpeningSpec,
  setOut,
  type Tally,
  tally,
  type WallSpec,
} from '../../server/engine/setting-out';
import { type Paired, paired, spent } from './stats';

const HALF = 112.5;
const COURSES = 200;
/** Half bricks long: a million bricks in 200 courses. */
const HALVES = 10_000;

const STRETCHER: BondPattern = {
  name: 'stretcher',
  lap: 0.5,
  courses: [{ units: ['stretcher'] }, { units: ['stretcher'], start: 0.5 }],
};

export type Levels = 'rows' | 'own';

/** Where an opening stands in height: in one of five rows, or nowhere quite as its neighbours. */
function heightOf(i: number, levels: Levels): { sill: number; top: number } {
  if (levels === 'rows') return { sill: 12 + 36 * (i % 5), top: 30 + 36 * (i % 5) };
  const sill = 1 + ((i * 37) % (COURSES - 40));
  return { sill, top: sill + 12 + (i % 17) };
}

export function wallWithOpenings(many: number, levels: Levels): WallSpec {
  const pitch = Math.floor(HALVES / many);
  const openings = Array.from({ length: many }, (_, i) => ({
    name: `o${i}`,
    from: (i * pitch + Math.floor(pitch / 3) + (i % 3)) * HALF - 10,
    width: (4 + (i % 5)) * HALF + 10,
    ...heightOf(i, levels),
  }));
  return {
    unit: { length: 215, width: 102.5, height: 65 },
    joints: { bed: 10, perpend: 10 },
    bond: STRETCHER,
    thickness: 1,
    length: HALVES * HALF - 10,
    courses: COURSES,
    left: 'stopped',
    right: 'stopped',
    openings,
    piers: [],
    limits: { least: 8, best: 10, most: 13, leastCut: 50 },
  };
}

/** The same brick by brick: each course walked, each brick asked whether an opening stands there. */
function oneByOne({ openings, length, courses }: WallSpec): number {
  let bricks = 0;
  for (let course = 0; course < courses; course++) {
    const here = openings.filter((o) => o.sill <= course && (o.top ?? courses) > course);
    let next = 0;
    for (let at = (course % 2) * HALF; at + 215 <= length; at += 2 * HALF) {
      while (next < here.length && here[next]!.from + here[next]!.width <= at) next++;
      const hole = here[next];
      if (!hole || hole.from >= at + 215) bricks++;
    }
  }
  return bricks;
}

/** Room for the place of every brick: made once, so that filling it makes no rubbish. */
const places = new Float64Array(1_100_000);

/** Every brick's place written down once, and each opening only asked about when its turn comes: no brick by brick way is cheaper. */
function written({ openings, length, courses }: WallSpec): number {
  let bricks = 0;
  for (let course = 0; course < courses; course++) {
    let next = 0;
    const stands = () => {
      while (next < openings.length && !isHere(openings[next]!, course)) next++;
      return openings[next];
    };
    let hole = stands();
    for (let at = (course % 2) * HALF; at + 215 <= length; at += 2 * HALF) {
      while (hole && hole.from + hole.width <= at) {
        next++;
        hole = stands();
      }
      if (!hole || hole.from >= at + 215) places[bricks++] = at;
    }
  }
  return bricks;
}

const isHere = ({ sill, top }: OpeningSpec, course: number) =>
  sill <= course && (top ?? COURSES) > course;

export interface Opened {
  readonly counted: Tally;
  /** Beside every brick walked and nothing kept, and beside every brick's place written into an array. */
  readonly walked: Paired;
  readonly written: Paired;
}

/** Times that the work is done before it is timed: as in an editor that has been open for a while. */
const WARM = 200;

export async function opened(many: number, levels: Levels, rounds: number): Promise<Opened> {
  const spec = wallWithOpenings(many, levels);
  const ours = () => spent(() => tally(setOut(spec)));
  for (let i = 0; i < WARM; i++) ours();
  for (let i = 0; i < 5; i++) written(spec);
  return {
    counted: tally(setOut(spec)),
    walked: await paired(rounds, ours, () => spent(() => oneByOne(spec))),
    written: await paired(2 * rounds, ours, () => spent(() => written(spec))),
  };
}

/** Four times the openings beside a quarter of them: 4 where the work goes with the openings, 16 where with their square. */
export function fourTimes(levels: Levels, rounds: number): Promise<Paired> {
  const [many, few] = [wallWithOpenings(400, levels), wallWithOpenings(100, levels)];
  return paired(
    rounds,
    () => spent(() => tally(setOut(many))),
    () => spent(() => tally(setOut(few))),
  );
}
