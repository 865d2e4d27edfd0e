/** A wall of a million bricks with many openings, each in a row of windows or at a level of its own. */
import {
  type BondPattern,
  setOut,
  type Tally,
  tally,
  type WallSpec,
} from '../../server/engine/setting-out';
import { type Paired, paired, timed } from './stats';

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

export interface Opened {
  readonly counted: Tally;
  readonly pair: Paired;
}

export async function opened(many: number, levels: Levels, rounds: number): Promise<Opened> {
  const spec = wallWithOpenings(many, levels);
  const ours = () => timed(() => tally(setOut(spec)));
  for (let i = 0; i < 15; i++) await ours();
  const pair = await paired(rounds, ours, () => timed(() => oneByOne(spec)));
  return { counted: tally(setOut(spec)), pair };
}

/** Four times the openings beside a quarter of them: 4 where the work goes with the openings, 16 where with their square. */
export function fourTimes(levels: Levels, rounds: number): Promise<Paired> {
  const [many, few] = [wallWithOpenings(400, levels), wallWithOpenings(100, levels)];
  return paired(
    rounds,
    () => timed(() => tally(setOut(many))),
    () => timed(() => tally(setOut(few))),
  );
}
