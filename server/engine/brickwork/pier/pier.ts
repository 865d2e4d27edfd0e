/** Piers that stand alone: one or several alike. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { showNumber } from '../../../../shared/show';
import { dpcOff } from '../../findings/dpc';
import { idleFits } from '../../findings/fit/fit-idle';
import { daysForHeight, higherThanALift } from '../../findings/lift';
import { pierSlender } from '../../findings/piers/pier-stands';
import { gapsIn, type Remark } from '../../findings/remark';
import { capOverhang } from '../../findings/tops/cap-overhang';
import { footingNarrow } from '../../findings/tops/footing-narrow';
import type { Gang } from '../../labour/gang';
import { taskHours } from '../../labour/output';
import { laidIn } from '../../mortar/lays';
import type { BlockFacts, Env } from '../../resolve/env';
import { type Bats, type PierPlan, sumTallies, type Tally, tallyPier } from '../../setting-out';
import { fact, type Gap, named, product, sum, type Term, withGaps } from '../../working/term';
import { type Apart, apartNeeds, dampApart, ownMix } from '../apart';
import { type Counted, countBricks, courseTerms, heightTerms, laidFrom, mortarOf } from '../count';
import { batsOf } from '../cuts/bats';
import { pierCuts } from '../cuts/pier';
import { brickOf } from '../goods';
import { lengthShown } from '../lengths';
import { jointsIn, type Masonry, masonryOf } from '../masonry';
import type { BrickNeed, MixNeed, Needs, TaskNeed, TopRun, Work } from '../needs';
import { dampSaid, footingSaid, highSaid, planSaid } from '../said';
import { besideRemarks, besideRun, besideStanding } from '../standing/beside';
import { capsOf, capTop } from '../tops/cap';
import { countCoping } from '../tops/coping';
import { copingApart } from '../tops/coping-apart';
import { type CopingBricks, copingBricks } from '../tops/coping-bricks';
import { footingOf } from '../tops/footing';
import { type Height, heightIn, heightRun } from '../wall/height';
import { higherAtMost } from '../wall/highest';
import { pierCoping } from '../wall/piers/pier-coping';
import { capSaid, finishSaid } from '../wall/says';
import { pierHigh } from '../wall/tops/coping-height';
import { asHigh, coreConcrete } from './core';
import { pierFigures } from './pier-figures';
import { planText } from './pier-text';
import { type Plan, placedOf, planOf } from './plan';
import { sideTerms } from './plan-terms';

export function workPier(facts: BlockFacts, env: Env, gang: Gang): Work {
  const remarks: Remark[] = [];
  const masonry = masonryOf(facts, env);
  const plan = planOf(facts, masonry, remarks);
  const height = heightIn(masonry, facts, remarks);
  if (plan && height) return laid(masonry, plan, height, gang, remarks);
  const gaps: Gap[] = [...masonry.gaps];
  if (!plan && masonry.brick.size)
    gaps.push({
      what: phrase`the size of the pier${facts.name && ` ${facts.name}`} is not known`,
      origin: facts.line('size')?.origin ?? facts.origin,
    });
  if (!height && masonry.brick.size)
    gaps.push({
      what: phrase`the height of the pier${facts.name && ` ${facts.name}`} is not known`,
      origin: facts.line('height')?.origin ?? facts.origin,
    });
  const bricks = withGaps(fact(phrase`Bricks`, 0, 'bricks', facts.origin), gaps);
  const needs: Needs = {
    bricks: [{ brick: masonry.brick.name, bricks, origin: facts.origin }],
    mixes: [],
    pieces: [],
    tasks: [],
  };
  return {
    ...base(facts),
    figures: [{ key: 'bricks', term: bricks }],
    needs,
    remarks,
    facts: { does: new Set(), says: [] },
  };
}

function base(facts: BlockFacts) {
  const notes = facts.lines('note').map((n) => n.word('text'));
  return { block: facts.block, kind: 'pier', name: facts.name, title: facts.title, notes };
}

function laid(masonry: Masonry, plan: Plan, height: Height, gang: Gang, remarks: Remark[]): Work {
  const { facts, env } = masonry;
  const alike =
    facts.line('number')?.term('number', phrase`alike`) ?? fact(phrase`alike`, 1, '', facts.origin);
  const spec = asHigh(plan, masonry.brick.size!, height.courses, height.bed);
  const counts = countPier(masonry, spec, plan, height, remarks);
  const gauge = masonry.brick.size!.height + height.bed;
  const settingOutHeight = height.courses * gauge;
  const more = higherAtMost(facts.line('height'), gauge);
  const over = settingOutHeight + pierHigh(facts, masonry, height.bed);
  const notes = [
    capOverhang(facts, plan.width, plan.depth, env),
    footingNarrow(facts, [plan.width, plan.depth], env),
    pierSlender(facts, { laid: over, more }, Math.min(spec.width, spec.depth), env),
    higherThanALift(facts, settingOutHeight, env),
  ];
  remarks.push(...notes.filter((r): r is Remark => r !== undefined));
  const leastDays = daysForHeight(settingOutHeight, env);
  const apart = [ownMix(facts.line('dpc'), masonry), counts.coping?.mix];
  const gaps = [...masonry.gaps, ...gapsIn(remarks), ...apart.flatMap((mix) => mix?.gaps ?? [])];
  const needs = { ...needsOf({ ...masonry, gaps }, counts, spec, alike, gang), leastDays };
  const damp = facts.line('dpc');
  if (damp)
    remarks.push(
      ...dpcOff(damp, brickOf(damp, env, damp.origin), masonry.brick.size!, height.courses),
    );
  const high = lengthShown(env, phrase`Height of the courses`, settingOutHeight, {
    args: courseTerms(height, masonry),
  });
  const figures = pierFigures(facts, height, high, needs);
  const unit = masonry.brick.size!;
  const joints = { bed: height.bed, perpend: jointsIn(masonry)!.perpend };
  const coping = pierHigh(facts, masonry, joints.bed);
  const tops = [...counts.tops, ...capTop(facts, 0, spec.width, spec.courses)];
  const says = sayPier(masonry, plan, settingOutHeight, coping, alike);
  const does = new Set(['free-standing', 'piers', ...(isCut(counts) ? ['cutting'] : [])]);
  return {
    ...base(facts),
    figures,
    needs,
    remarks,
    facts: {
      height: settingOutHeight + coping,
      tops,
      cuts: () => pierCuts(masonry, spec, counts, alike.value.toNumber()),
      pier: { plan: spec, unit, joints, ...placedOf(plan, height.courses) },
      does,
      says,
    },
  };
}

function isCut({ tallies, coping }: PierCounts): boolean {
  return (coping?.cuts ?? 0) > 0 || tallies.some((t) => t.halves + t.closers + t.cuts.length > 0);
}

interface PierCounts {
  /** The facts it was laid from. */
  readonly inputs: readonly Term[];
  readonly pier: Counted;
  readonly dpc: Counted | undefined;
  readonly coping: CopingBricks | undefined;
  readonly tops: readonly TopRun[];
  readonly tallies: readonly Tally[];
}

function countPier(
  masonry: Masonry,
  spec: PierPlan,
  plan: Plan,
  height: Height,
  remarks: Remark[],
): PierCounts {
  const unit = masonry.brick.size!;
  const joints = { bed: height.bed, perpend: jointsIn(masonry)!.perpend };
  const inputs = [...heightTerms(height, masonry), ...sideTerms(masonry.facts)];
  const count = (
    label: string,
    tally: Tally,
    how?: () => string[],
    cutOnEdge = 0,
    bats?: readonly Bats[],
  ) => countBricks(label, [tally], masonry, inputs, how, cutOnEdge, bats && (() => bats));
  const damp = Math.min(
    spec.courses,
    Math.floor(masonry.facts.line('dpc')?.number('courses') ?? 0),
  );
  const pier = count(
    phrase`Bricks in one pier`,
    tallyPier(spec, unit, joints, { from: damp, to: null }),
    () => planText(spec, plan),
    0,
    batsOf(masonry, masonry.facts.line('number')?.number('number')),
  );
  const dpc = damp
    ? count(phrase`Bricks in the damp course`, tallyPier(spec, unit, joints, { from: 0, to: damp }))
    : undefined;
  const runs = pierCoping(
    masonry.facts,
    { spec: { ...spec, from: 0 }, halves: plan.halves },
    masonry,
  ).map((r) => ({ run: r, ...countCoping(r, masonry, remarks) }));
  const tops = runs.map((r) => ({ name: r.run.text.name, open: !r.works }));
  const beside = besideStanding(masonry, height.term);
  remarks.push(...besideRemarks(beside, masonry));
  remarks.push(...idleFits(masonry.facts, [...tops, heightRun(height), ...besideRun(beside)]));
  const [coping] = copingBricks(runs, masonry, inputs);
  const tallies = [pier, dpc, coping?.counted]
    .filter((c): c is Counted => c !== undefined)
    .map((c) => c.tally);
  return { inputs, pier, dpc, coping, tops: runs.map((r) => r.top), tallies };
}

function needsOf(
  masonry: Masonry,
  counts: PierCounts,
  spec: PierPlan,
  alike: Term,
  gang: Gang,
): Needs {
  const { facts, env, brick, mix } = masonry;
  const times = (label: string, of: Term) =>
    facts.line('number') ? product(label, of.unit, [alike, of]) : named(label, of);
  const isOwn = counts.coping?.brick.name === brick.name;
  const onTop = isOwn ? counts.coping?.counted : undefined;
  const own = [counts.pier, onTop]
    .filter((c): c is Counted => c !== undefined)
    .map((c) => withGaps(c.bricks, masonry.gaps));
  const main: BrickNeed = {
    brick: brick.name,
    block: brick.facts?.block,
    bricks: times(phrase`Bricks`, sum(phrase`bricks of one`, 'bricks', own)),
    origin: brick.origin,
  };
  const bricks = [main];
  const inMix = counts.coping?.mix ? undefined : onTop;
  const mine = sumTallies([counts.pier, inMix].flatMap((c) => (c ? [c.tally] : [])));
  const laid = [{ tally: mine, brick }];
  const damp = facts.line('dpc');
  if (counts.dpc && damp) {
    const other = brickOf(damp, env, damp.origin);
    if (!ownMix(damp, masonry)) laid.push({ tally: counts.dpc.tally, brick: other });
    bricks.push({
      brick: other.name,
      block: other.facts?.block,
      bricks: times(phrase`Damp course`, withGaps(counts.dpc.bricks, other.gaps)),
      origin: damp.at('brick'),
    });
  }
  if (counts.coping && !isOwn) {
    const { brick: other, counted, mix: apart } = counts.coping;
    if (!apart) laid.push({ tally: counted.tally, brick: other });
    bricks.push({
      brick: other.name,
      block: other.facts?.block,
      bricks: times(phrase`Coping`, withGaps(counted.bricks, other.gaps)),
      origin: other.origin,
    });
  }
  const several = facts.line('number') && alike;
  const from = laidFrom(masonry, counts.inputs);
  const litres = times(phrase`Mortar`, mortarOf(phrase`mortar of one`, laid, env, from));
  const footing = footingOf(facts, env, undefined, several);
  const mortar = {
    mix: mix.name,
    block: mix.facts?.block,
    litres: withGaps(litres, mix.gaps),
    origin: mix.origin,
  };
  const pieces = capsOf(facts, several);
  const core = coreOf(coreConcrete(facts, env, spec, from), times);
  const tasks = tasksOf(
    counts,
    times,
    footing?.litres,
    core?.litres,
    pieces.map((p) => p.count),
    env,
    gang,
  );
  const laying = bricks.map((b) => b.bricks);
  const apart = apartNeeds(apartIn(masonry, counts, tasks, times), masonry, from, times);
  const lays = laidIn(litres, laying, tasks, masonry, apart);
  const mixes = [{ ...mortar, lays }, footing, core, ...apart].filter((m) => m !== undefined);
  return { bricks, mixes, pieces, tasks };
}

/** In mixes of their own: the damp course and the coping, of all piers alike. */
function apartIn(
  masonry: Masonry,
  { pier, dpc, coping }: PierCounts,
  tasks: readonly TaskNeed[],
  times: (label: string, of: Term) => Term,
): Apart[] {
  const damp = masonry.facts.line('dpc');
  const mix = dpc && ownMix(damp, masonry);
  const low = (): Apart[] => {
    if (!mix || !dpc) return [];
    const brick = brickOf(damp, masonry.env, damp!.origin);
    const [all, own] = [pier.bricks, dpc.bricks].map((of) => times('bricks', of));
    return [dampApart(mix, { tally: dpc.tally, brick }, own!, [all!, own!], tasks)];
  };
  const top = coping ? copingApart([coping], undefined, tasks, masonry) : [];
  const many = top.map((t) => ({ ...t, bricks: t.bricks.map((b) => times('bricks', b)) }));
  return [...low(), ...many];
}

/** Of all piers alike. */
function coreOf(
  one: MixNeed | undefined,
  times: (label: string, of: Term) => Term,
): MixNeed | undefined {
  return one && { ...one, litres: times(phrase`Concrete in the core`, one.litres) };
}

function tasksOf(
  counts: PierCounts,
  times: (label: string, of: Term) => Term,
  footing: Term | undefined,
  core: Term | undefined,
  caps: readonly Term[],
  env: Env,
  gang: Gang,
): TaskNeed[] {
  const laying = counts.dpc
    ? sum(phrase`bricks of one`, 'bricks', [counts.pier.bricks, counts.dpc.bricks])
    : counts.pier.bricks;
  const all: [string, string, Term | undefined][] = [
    ['pier-work', phrase`Laying the piers`, times(phrase`bricks laid in piers`, laying)],
    [
      'coping',
      phrase`Laying the coping`,
      counts.coping && times(phrase`bricks of the coping`, counts.coping.counted.bricks),
    ],
    ['core', phrase`Filling the core`, core],
    ['footing', phrase`Digging and concreting`, footing],
    ['cap', phrase`Bedding caps`, caps[0]],
  ];
  return all.flatMap(([task, label, amount]) =>
    amount ? [{ task, hours: taskHours(task, label, amount, env, gang) }] : [],
  );
}

function sayPier(
  masonry: Masonry,
  plan: Plan,
  height: number,
  coping: number,
  alike: Term,
): string[] {
  const { facts, env } = masonry;
  const many = alike.value.gt(1);
  const count = many ? phrase`${showNumber(exact(alike.value), 0)} piers` : phrase`a pier`;
  const each = many ? phrase` of each` : '';
  const size = planSaid(plan.width, plan.depth, env);
  const high = `${highSaid(height, coping, env)}${capSaid(facts, env)}`;
  return [
    phrase`Build ${count}, ${many ? phrase`each ` : ''}${size} and ${high}, in ${masonry.brick.title}.`,
    ...dampSaid(facts, each),
    ...finishSaid(facts, each, env),
    ...footingSaid(facts, env, each),
  ];
}
