/** Piers that stand alone: one or several alike. */
import { phrase } from '../../../../shared/phrase';
import { dpcOff } from '../../findings/dpc';
import { daysForHeight, higherThanALift } from '../../findings/lift';
import { pierSlender } from '../../findings/piers/pier-stands';
import { gapsIn, type Remark } from '../../findings/remark';
import { capOverhang } from '../../findings/tops/cap-overhang';
import { footingNarrow } from '../../findings/tops/footing-narrow';
import type { Gang } from '../../labour/gang';
import type { BlockFacts, Env } from '../../resolve/env';
import { fact, type Gap, withGaps } from '../../working/term';
import { ownMix } from '../apart';
import { courseTerms } from '../count';
import { pierCuts } from '../cuts/pier';
import { brickOf } from '../goods';
import { lengthShown } from '../lengths';
import { jointsIn, type Masonry, masonryOf } from '../masonry';
import type { Needs } from '../needs';
import { capTop } from '../tops/cap';
import { type Height, heightIn } from '../wall/height';
import { higherAtMost } from '../wall/highest';
import { pierHigh } from '../wall/tops/coping-height';
import type { Work } from '../work';
import { asHigh } from './core';
import { countPier, type PierCounts } from './counts';
import { needsOf } from './needs';
import { pierFigures } from './pier-figures';
import { type Plan, placedOf, planOf } from './plan';
import { sayPier } from './says';

/** A pier that stands alone; what is not known of it is a gap of its bricks, and of all that hangs on them. */
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
  const said = sayPier(masonry, plan, settingOutHeight, coping, alike);
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
      said,
      says: said.map(({ text }) => text),
    },
  };
}

function isCut({ tallies, coping }: PierCounts): boolean {
  return (coping?.cuts ?? 0) > 0 || tallies.some((t) => t.halves + t.closers + t.cuts.length > 0);
}
