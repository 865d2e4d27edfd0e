/** A plinth: the lowest courses thicker than the wall by so many rows of stretchers. */
import { plinthOff } from '../../../findings/tops/plinth';
import { taskHours } from '../../../labour/gang';
import type { LineFacts } from '../../../resolve/env';
import {
  type BondPattern,
  type SettingOut,
  setOut,
  sumTallies,
  type Tally,
} from '../../../setting-out';
import { countBricks } from '../../count';
import { type Brick, brickOf } from '../../goods';
import { jointsIn, type Masonry } from '../../masonry';
import type { FaceProjection } from '../../needs';
import { sizeSaid } from '../../said';
import { inputsOf } from '../counts';
import { areasIn } from '../piers/projecting';
import type { WallPlan } from '../spec';
import { tallyZones } from '../zones';
import type { PartOf } from './part';

/** A row half a brick thick is laid in no other bond. */
const STRETCHERS: BondPattern = {
  name: 'stretcher',
  courses: [{ units: ['stretcher'] }, { units: ['stretcher'], start: 0.5 }],
  lap: 0.5,
};

/** Rows it may be thicker by. */
const MOST_ROWS = 4;

/** Mm that a length may be off so many half bricks: what a joint takes up. */
const NEAR = 6;

export const plinth: PartOf = (masonry, plan, _counts, gang) => {
  const line = masonry.facts.line('plinth');
  if (!line) return undefined;
  const rows = rowsOf(line, masonry);
  if (rows === undefined) return { remarks: [plinthOff(line, masonry)] };
  const brick = line.values.brick ? brickOf(line, masonry.env, line.origin) : masonry.brick;
  const counted = countIn(line, brick, rows, masonry, plan);
  const hours = taskHours('facework', 'Laying the plinth', counted.bricks, masonry.env, gang);
  return {
    bricks: [{ brick, counted }],
    tasks: [{ task: 'facework', hours }],
    says: [said(line, brick, masonry)],
    does: counted.needed.cut > 0 ? ['cutting'] : [],
    facts: { plinth: shown(line, rows, plan) },
  };
};

/** How many rows of stretchers it is thicker by; nothing where what it projects is no such number. */
function rowsOf(line: LineFacts, masonry: Masonry): number | undefined {
  const joints = jointsIn(masonry)!;
  const { length } = masonry.brick.size!;
  const value = line.values.project;
  const out = (line.number('project') ?? 0) * (line.word('faces') === 'both' ? 2 : 1);
  const inBricks = value?.kind === 'quantity' && value.unit?.dimension === 'bricks';
  const half = inBricks ? 0.5 : (length + joints.perpend) / 2;
  const rows = Math.round(out / half);
  const off = Math.abs(out - rows * half);
  return rows >= 1 && rows <= MOST_ROWS && off <= (inBricks ? 1e-9 : NEAR) ? rows : undefined;
}

function countIn(line: LineFacts, brick: Brick, rows: number, masonry: Masonry, plan: WallPlan) {
  const own = brick.name === masonry.brick.name;
  const inputs = inputsOf(masonry, plan);
  const courses = line.term('courses', 'courses of the plinth');
  const project = line.term('project', 'the plinth stands out');
  return countBricks(
    'Bricks in the plinth',
    Array<Tally>(rows).fill(sumTallies(rowTallies(line, plan))),
    own || !brick.size ? masonry : { ...masonry, brick },
    [...inputs, courses, project],
    () => [`${rows} ${rows === 1 ? 'row' : 'rows'} of stretchers before the wall`],
  );
}

function rowTallies(line: LineFacts, plan: WallPlan): Tally[] {
  return tallyZones(rowOf(plan), zonesOf(line, plan), plan);
}

/** One row. It stops at openings and piers as the wall does. */
function rowOf({ spec }: WallPlan): SettingOut {
  return setOut({ ...spec, thickness: 1, bond: STRETCHERS, decided: [] });
}

/** Over each stretch of ground. */
function zonesOf(line: LineFacts, { ground }: WallPlan) {
  const courses = Math.floor(line.number('courses') ?? 0);
  return ground.map(({ from, to, level }) => {
    return { from, to, courses: { from: level, to: level + courses } };
  });
}

function shown(line: LineFacts, rows: number, plan: WallPlan): FaceProjection {
  const { unit, joints } = plan.spec;
  const laid = rowOf(plan);
  const both = line.word('faces') === 'both';
  const out = (rows * (unit.length + joints.perpend)) / (both ? 4 : 2);
  return { areas: areasIn(laid, zonesOf(line, plan)), out, each: false, both, laid, rows };
}

function said(line: LineFacts, brick: Brick, { env, brick: own }: Masonry): string {
  const courses = line.number('courses') ?? 0;
  const value = line.values.project;
  const inBricks = value?.kind === 'quantity' && value.unit?.dimension === 'bricks';
  const share = inBricks ? `${value.low.toFixed()} of a brick` : '';
  const out = share || sizeSaid(line.number('project') ?? 0, env);
  const where = line.word('faces') === 'both' ? 'both faces' : 'the front';
  const which = brick.name === own.name ? '' : `, in ${brick.title}`;
  return `Build a plinth ${courses === 1 ? 'one course' : `${courses} courses`} high, ${out} out from ${where}${which}.`;
}
