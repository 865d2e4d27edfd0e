/** Laying bricks as runs, beside an object made for every brick. */
import { setOut, tally, type WallSpec } from '../../server/engine/setting-out';
import { type Paired, paired, timed } from './stats';

/** A half-brick wall in stretcher bond of about so many bricks in 200 courses. */
function wall(bricks: number): WallSpec {
  const perCourse = Math.round(bricks / 200);
  return {
    unit: { length: 215, width: 102.5, height: 65 },
    joints: { bed: 10, perpend: 10 },
    bond: {
      name: 'stretcher',
      lap: 0.5,
      courses: [{ units: ['stretcher'] }, { units: ['stretcher'], start: 0.5 }],
    },
    thickness: 1,
    length: perCourse * 225 - 10,
    courses: 200,
    left: 'stopped',
    right: 'stopped',
    openings: [],
    piers: [],
    limits: { least: 8, best: 10, most: 13, leastCut: 50 },
  };
}

function oneByOne(spec: WallSpec): number {
  const bricks: { course: number; at: number; length: number }[] = [];
  for (let course = 0; course < spec.courses; course++)
    for (let at = (course % 2) * 112.5; at + 215 <= spec.length; at += 225)
      bricks.push({ course, at, length: 215 });
  return bricks.length;
}

export interface Laying {
  readonly bricks: number;
  readonly counted: number;
  readonly pair: Paired;
}

export async function laying(bricks: number, rounds: number): Promise<Laying> {
  const spec = wall(bricks);
  const ours = () => timed(() => tally(setOut(spec)));
  for (let i = 0; i < 200; i++) await ours();
  const t = tally(setOut(spec));
  const pair = await paired(rounds, ours, () => timed(() => oneByOne(spec)));
  return { bricks, counted: t.wholes + t.halves, pair };
}
