/** A plinth: the lowest courses thicker than the wall by so many rows of stretchers. */
import { plinthOff } from '../../../findings/tops/plinth';
import { taskHours } from '../../../labour/output';
import type { LineFacts } from '../../../resolve/env';
import type { Tally } from '../../../setting-out';
import { countBricks } from '../../count';
import { facedBy } from '../../faced';
import { type Brick, brickOf } from '../../goods';
import type { Masonry } from '../../masonry';
import type { FaceProjection } from '../../needs';
import { sizeSaid } from '../../said';
import { inputsOf } from '../counts';
import type { Quoin } from '../meet/quoins';
import { areasIn } from '../piers/projecting';
import type { WallPlan } from '../spec';
import type { PartOf } from './part';
import { plinthTallies } from './plinth-corners';
import { type PlinthRows, plainRow, plinthIn, plinthZones } from './plinth-rows';

export const plinth: PartOf = (masonry, plan, { quoins }, gang) => {
  const line = masonry.facts.line('plinth');
  if (!line) return undefined;
  const laid = plinthIn(masonry);
  if (!laid) return { remarks: [plinthOff(line, masonry)] };
  const brick = line.values.brick ? brickOf(line, masonry.env, line.origin) : masonry.brick;
  const counted = countIn(line, brick, laid, masonry, plan, quoins);
  const { bricks } = counted;
  // It is laid as skins of half a brick.
  const skins = () => facedBy(bricks, 1, masonry);
  const hours = taskHours('facework', 'Laying the plinth', bricks, masonry.env, gang, skins);
  return {
    bricks: [{ brick, counted }],
    tasks: [{ task: 'facework', hours }],
    says: [said(line, brick, masonry)],
    does: isCut(counted.tally) ? ['cutting'] : [],
    facts: { plinth: shown(line, laid, plan) },
  };
};

function isCut({ halves, threeQuarters, closers, cuts }: Tally): boolean {
  return halves + threeQuarters + closers + cuts.length > 0;
}

function countIn(
  line: LineFacts,
  brick: Brick,
  laid: PlinthRows,
  masonry: Masonry,
  plan: WallPlan,
  quoins: readonly Quoin[],
) {
  const own = brick.name === masonry.brick.name;
  const inputs = inputsOf(masonry, plan);
  const courses = line.term('courses', 'courses of the plinth');
  const project = line.term('project', 'the plinth stands out');
  const { rows } = laid;
  const corners =
    quoins.length && laid.sides
      ? ['at corners its rows are laid with those of the other wall, course by course']
      : [];
  return countBricks(
    'Bricks in the plinth',
    plinthTallies(laid, masonry, plan, quoins),
    own || !brick.size ? masonry : { ...masonry, brick },
    [...inputs, courses, project],
    () => [`${rows} ${rows === 1 ? 'row' : 'rows'} of stretchers before the wall`, ...corners],
  );
}

function shown(line: LineFacts, { rows, courses }: PlinthRows, plan: WallPlan): FaceProjection {
  const { unit, joints } = plan.spec;
  const laid = plainRow(plan);
  const both = line.word('faces') === 'both';
  const out = (rows * (unit.length + joints.perpend)) / (both ? 4 : 2);
  return { areas: areasIn(laid, plinthZones(courses, plan)), out, each: false, both, laid, rows };
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
