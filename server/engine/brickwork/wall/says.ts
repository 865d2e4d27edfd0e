/** A wall in a householder’s words, for the quote. */

import { listed } from '../../../../grammar/read/numbers';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { type BlockFacts, type Env, factsNamed } from '../../resolve/env';
import { type Level, levelAt, mostCourses, type Thickness } from '../../setting-out';
import type { Masonry } from '../masonry';
import {
  dampSaid,
  footingSaid,
  highSaid,
  lengthSaid,
  planSaid,
  type Said,
  saidFrom,
  sizeSaid,
} from '../said';
import type { OpeningFacts } from './openings';
import type { PierFacts } from './piers/placed';
import type { WallPlan } from './spec';
import { highOf, pierHigh } from './tops/coping-height';

const THICK: Readonly<Record<Thickness, string>> = {
  1: later`half a brick`,
  2: later`one brick`,
  3: later`one and a half bricks`,
  4: later`two bricks`,
};

export function sayWall(masonry: Masonry, plan: WallPlan): Said[] {
  const { spec } = plan;
  const { env, facts } = masonry;
  const gauge = spec.unit.height + spec.joints.bed;
  const coping = highOf(masonry, plan);
  const high = highSaid(gauge * mostCourses(plan.ground, plan.top), coping, env);
  const lines = ['length', 'height', 'top', 'thick', 'brick'].map((key) => facts.line(key));
  const built = phrase`Build a wall ${lengthSaid(spec.length, env)} long and ${high}, ${spoken(THICK[spec.thickness])} thick, in ${masonry.brick.title}.`;
  return [
    ...saidFrom([built], ...lines),
    ...steppedSaid(facts, plan, env),
    ...plan.openings.map((opening) => openingSaid(opening, plan, gauge, env)),
    ...piersSaid(masonry, plan, gauge),
    ...dampSaid(facts),
    ...finishSaid(facts, '', env),
    ...footingSaid(facts, env),
  ];
}

/** How the top is covered, `of each` of several piers. Nothing without a coping. */
export function finishSaid(facts: BlockFacts, each: string, env: Env): Said[] {
  const line = facts.line('coping');
  const brick = line?.values.brick ? factsNamed(env, 'brick', line.word('brick'))?.title : '';
  const of = brick ? phrase` of ${brick}` : '';
  const said: Readonly<Record<string, string>> = {
    'brick-on-edge': phrase`bricks on edge${of}`,
    'brick-on-end': phrase`bricks on end${of}`,
    precast: phrase`a precast coping, jointed in mortar`,
    tiles: phrase`creasing tiles under bricks on edge${of}`,
  };
  const what = said[line?.word('kind') ?? ''];
  return saidFrom(what ? [phrase`Finish the top${each} with ${what}.`] : [], line);
}

/** Its ground and its top, where they step. */
function steppedSaid(facts: BlockFacts, { ground, top }: WallPlan, env: Env): Said[] {
  const said = (what: string, [, ...after]: readonly Level[]) =>
    after.length
      ? [
          phrase`${what} in whole courses, ${listed(
            after.map(({ from }) => sizeSaid(from, env)),
            'and',
          )} from its left end.`,
        ]
      : [];
  return [
    ...saidFrom(said(phrase`Step its foot with the ground`, ground), ...facts.lines('ground')),
    ...saidFrom(said(phrase`Step its top`, top), ...facts.lines('top')),
  ];
}

function openingSaid(
  { facts, spec }: OpeningFacts,
  { ground }: WallPlan,
  gauge: number,
  env: Env,
): Said {
  const { width, top } = spec;
  const sill = spec.sill - levelAt(ground, spec.from);
  const high = top === null ? '' : phrase` and ${sizeSaid((top - spec.sill) * gauge, env)} high`;
  const up = sill > 0 ? phrase`, ${sizeSaid(sill * gauge, env)} above the ground` : '';
  const text = phrase`Leave an opening ${sizeSaid(width, env)} wide${high}${up}${calledAfter(facts)}.`;
  return {
    text,
    from: [
      facts.origin,
      ...['width', 'height', 'sill'].flatMap((key) => facts.line(key)?.origin ?? []),
    ],
  };
}

/** Its title; without one, what the file calls it. */
function calledAfter(facts: BlockFacts): string {
  if (facts.title !== facts.name) return `: ${facts.title}`;
  return facts.name ? phrase` for the ${facts.name.replaceAll('-', ' ')}` : '';
}

/** Piers that are alike in one sentence, with their titles. */
function piersSaid(masonry: Masonry, plan: WallPlan, gauge: number): Said[] {
  const alike = new Map<string, BlockFacts[]>();
  for (const pier of plan.piers) {
    const said = pierSaid(pier, masonry, plan, gauge);
    alike.set(said, [...(alike.get(said) ?? []), pier.facts]);
  }
  return [...alike].map(([said, piers]) => {
    const titles = piers.map(({ title }) => title);
    const count = titles.length === 1 ? phrase`a pier` : phrase`${titles.length} piers`;
    const names = titles.filter(Boolean).map((title) => title.replaceAll('-', ' '));
    const text = phrase`Build ${count} in the wall, ${said}${names.length ? `: ${names.join(', ')}` : ''}.`;
    return { text, from: piers.map(({ origin }) => origin) };
  });
}

function pierSaid(
  { facts, spec, attached }: PierFacts,
  masonry: Masonry,
  plan: WallPlan,
  gauge: number,
): string {
  const { env } = masonry;
  const coping = pierHigh(facts, masonry, plan.spec.joints.bed);
  const bonded = attached ? phrase`, bonded into it,` : '';
  const size = `${planSaid(spec.width, spec.depth, env)}${bonded}`;
  return phrase`${size} and ${highSaid(gauge * spec.courses, coping, env)}${capSaid(facts, env)}`;
}

/** Many a job does not say how thick a cap is, so a height stops under it. */
export function capSaid(facts: BlockFacts, env: Env): string {
  const sides = facts.line('cap')?.sides('size');
  if (!facts.line('cap')) return '';
  return sides ? phrase` under a cap ${planSaid(sides[0]!, sides[1]!, env)}` : phrase` under a cap`;
}
