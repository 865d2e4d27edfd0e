/** What covers a wall and its piers: bricks on edge or on end, precast lengths, tiles under bricks on edge. */

import { phrase } from '../../../../../shared/phrase';
import type { Remark } from '../../../findings/remark';
import { type CopingSeat, copingOverhang } from '../../../findings/tops/coping-overhang';
import type { Gang } from '../../../labour/gang';
import { taskHours } from '../../../labour/output';
import type { Term } from '../../../working/term';
import { ownMix } from '../../apart';
import type { TopRun } from '../../faces';
import { type Masonry, thicknessOf } from '../../masonry';
import type { PieceNeed, TaskNeed } from '../../needs';
import { type CopingLaid, type CopingRun, countCoping } from '../../tops/coping';
import { copingApart } from '../../tops/coping-apart';
import { copingBricks, copingTasks } from '../../tops/coping-bricks';
import { type CreasingCount, countCreasing } from '../../tops/creasing-count';
import { countPrecast, type Precast } from '../../tops/precast';
import { inputsOf } from '../counts';
import { pierRuns } from '../piers/pier-coping';
import { decisionRemarks } from '../remarks';
import type { WallPlan } from '../spec';
import { copingCorners } from '../tops/coping-corners';
import { highOf } from '../tops/coping-height';
import { creasingIn, madeFor, wallRuns } from '../tops/copings';
import { overAll, topFaces } from '../tops/top-faces';
import type { Part, PartOf } from './part';

export const coping: PartOf = (masonry, plan, counts, gang) => {
  const remarks: Remark[] = [];
  const over = wallRuns(masonry, plan, copingCorners(masonry, plan, counts));
  const own = counted(over, masonry, remarks);
  const onPiers = counted(pierRuns(masonry, plan), masonry, remarks);
  const laid = [...own, ...onPiers];
  remarks.push(...decisionRemarks(laid, masonry, plan, counts), ...overhang(masonry, plan));
  const inputs = inputsOf(masonry, plan);
  const bricks = copingBricks(laid, masonry, inputs);
  const precast = countPrecast(
    own.filter(({ run }) => run.made.kind === 'precast'),
    masonry,
    inputs,
  );
  const tiles = tilesUnder(over, masonry, plan, inputs);
  const tasks = [
    ...copingTasks(bricks, masonry, masonry.env, gang),
    ...tasksOf(precast, tiles, masonry, gang),
  ];
  const beside = [...(precast?.mortar ?? []), ...(tiles ? [tiles.mortar] : [])];
  const mix = ownMix(masonry.facts.line('coping'), masonry);
  const cut = bricks.some((b) => b.cuts + b.counted.tally.halves > 0);
  return {
    bricks,
    mortar: mix ? [] : beside,
    apart: copingApart(bricks, mix && { mix, mortar: beside }, tasks, masonry),
    pieces: [precast?.need, tiles?.need].filter((need): need is PieceNeed => need !== undefined),
    tasks,
    remarks,
    tops: [
      ...onFaces([...(tiles?.tops ?? []), ...own.map((each) => each.top)], masonry, plan),
      ...onPiers.map((each) => each.top),
    ],
    does: cut ? ['cutting'] : [],
    high: highOf(masonry, plan),
  } satisfies Part;
};

function counted(runs: readonly CopingRun[], masonry: Masonry, remarks: Remark[]): CopingLaid[] {
  return runs.map((run) => ({ run, ...countCoping(run, masonry, remarks) }));
}

function overhang(masonry: Masonry, plan: WallPlan): Remark[] {
  const line = masonry.facts.line('coping');
  const made = line && madeFor(line, masonry, plan);
  const found = made && copingOverhang(line, made, seatOf(masonry, plan), masonry);
  return found ? [found] : [];
}

function seatOf(masonry: Masonry, plan: WallPlan): CopingSeat {
  const { unit, joints, thickness } = plan.spec;
  const wall = overAll(masonry, plan);
  const more = wall > thicknessOf(thickness, unit, joints.perpend);
  return { wall, more, joint: joints.perpend };
}

/** Over a skin behind the face, and over courses that stand out before it. */
function onFaces(tops: readonly TopRun[], masonry: Masonry, plan: WallPlan): TopRun[] {
  const faces = topFaces(masonry, plan);
  return tops.map((top) => ({ ...top, faces }));
}

function tilesUnder(
  runs: readonly CopingRun[],
  masonry: Masonry,
  plan: WallPlan,
  inputs: readonly Term[],
): CreasingCount | undefined {
  const creasing = creasingIn(masonry, plan);
  return creasing && countCreasing(creasing, runs, masonry, inputs);
}

function tasksOf(
  precast: Precast | undefined,
  tiles: CreasingCount | undefined,
  { env }: Masonry,
  gang: Gang,
): TaskNeed[] {
  const hours = (task: string, label: string, need: PieceNeed | undefined): TaskNeed[] =>
    need ? [{ task, hours: taskHours(task, label, need.count, env, gang) }] : [];
  return [
    ...hours('precast', phrase`Bedding precast coping`, precast?.need),
    ...hours('tiles', phrase`Laying creasing tiles`, tiles?.need),
  ];
}
