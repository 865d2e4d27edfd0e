/** A plinth: the lowest courses thicker than the wall by so many rows of stretchers. */
import { phrase } from '../../../../../shared/phrase';
import { plinthOff } from '../../../findings/tops/plinth';
import { taskHours } from '../../../labour/output';
import type { LineFacts } from '../../../resolve/env';
import type { Tally } from '../../../setting-out';
import { countBricks } from '../../count';
import { facedBy } from '../../faced';
import type { FaceProjection } from '../../faces';
import { type Brick, brickOf } from '../../goods';
import type { Masonry } from '../../masonry';
import { saidFrom, sizeSaid } from '../../said';
import { inputsOf } from '../counts';
import { areasIn } from '../piers/projecting';
import type { WallPlan } from '../spec';
import type { PartOf } from './part';
import { plinthTallies, type TurnedRow, turnedRows } from './plinth-corners';
import { plinthCuts } from './plinth-cuts';
import { type PlinthRows, plainRow, plinthIn, plinthZones } from './plinth-rows';

export const plinth: PartOf = (masonry, plan, counts, gang) => {
  const line = masonry.facts.line('plinth');
  if (!line) return undefined;
  const laid = plinthIn(masonry);
  if (!laid) return { remarks: [plinthOff(line, masonry)] };
  const brick = line.values.brick ? brickOf(line, masonry.env, line.origin) : masonry.brick;
  const turned = turnedRows(laid, masonry, plan, counts);
  const corners = counts.quoins.length ? [atCorners(laid)] : [];
  const counted = countIn(line, brick, { laid, turned, corners }, masonry, plan);
  const { bricks } = counted;
  // It is laid as skins of half a brick.
  const skins = () => facedBy(bricks, 1, masonry);
  const hours = taskHours('facework', phrase`Laying the plinth`, bricks, masonry.env, gang, skins);
  return {
    bricks: [{ brick, counted, places: () => plinthCuts(laid, plan, turned) }],
    tasks: [{ task: 'facework', hours }],
    says: saidFrom([said(line, brick, masonry)], line),
    does: isCut(counted.tally) ? ['cutting'] : [],
    facts: { plinth: shown(line, laid, plan, turned) },
  };
};

function isCut({ halves, threeQuarters, closers, cuts }: Tally): boolean {
  return halves + threeQuarters + closers + cuts.length > 0;
}

function countIn(
  line: LineFacts,
  brick: Brick,
  { laid, turned, corners }: { laid: PlinthRows; turned: TurnedRow[]; corners: string[] },
  masonry: Masonry,
  plan: WallPlan,
) {
  const own = brick.name === masonry.brick.name;
  const inputs = inputsOf(masonry, plan);
  const courses = line.term('courses', phrase`courses of the plinth`);
  const project = line.term('project', phrase`the plinth stands out`);
  const { rows } = laid;
  return countBricks(
    phrase`Bricks in the plinth`,
    plinthTallies(laid, plan, turned),
    own || !brick.size ? masonry : { ...masonry, brick },
    [...inputs, courses, project],
    () => [
      phrase`${rows} ${rows === 1 ? phrase`row` : phrase`rows`} of stretchers before the wall`,
      ...corners,
    ],
  );
}

function atCorners({ sides }: PlinthRows): string {
  return sides
    ? phrase`at corners its rows are laid with those of the other wall, course by course`
    : phrase`at corners its half bricks within the wall are counted to the end of the wall, and not laid with those of the other`;
}

function shown(
  line: LineFacts,
  { rows, courses }: PlinthRows,
  plan: WallPlan,
  turned: readonly TurnedRow[],
): FaceProjection {
  const { unit, joints } = plan.spec;
  const laid = plainRow(plan);
  const both = line.word('faces') === 'both';
  const out = (rows * (unit.length + joints.perpend)) / (both ? 4 : 2);
  const areas = areasIn(laid, plinthZones(courses, plan));
  const corners = turned.length ? { turned } : {};
  return { areas, out, each: false, both, laid, rows, ...corners };
}

function said(line: LineFacts, brick: Brick, { env, brick: own }: Masonry): string {
  const courses = line.number('courses') ?? 0;
  const value = line.values.project;
  const inBricks = value?.kind === 'quantity' && value.unit?.dimension === 'bricks';
  const share = inBricks ? phrase`${value.low.toFixed()} of a brick` : '';
  const out = share || sizeSaid(line.number('project') ?? 0, env);
  const where = line.word('faces') === 'both' ? phrase`both faces` : phrase`the front`;
  const which = brick.name === own.name ? '' : phrase`, in ${brick.title}`;
  return phrase`Build a plinth ${courses === 1 ? phrase`one course` : phrase`${courses} courses`} high, ${out} out from ${where}${which}.`;
}
