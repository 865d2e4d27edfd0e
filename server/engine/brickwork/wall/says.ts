/** A wall in a householder’s words, for the quote. */
import type { BlockFacts, Env } from '../../resolve/env';
import type { Masonry } from '../masonry';
import { dampSaid, footingSaid, highSaid, lengthSaid, planSaid, sizeSaid } from '../said';
import type { OpeningFacts, PierFacts, WallPlan } from './spec';

/** @param coped whether any bricks on edge are laid, on the wall or on its piers */
export function sayWall(masonry: Masonry, plan: WallPlan, coped: boolean): string[] {
  const { spec } = plan;
  const { env, facts } = masonry;
  const thick = spec.thickness === 1 ? 'half a brick' : 'one brick';
  const onWall = coped && hasCoping(facts);
  const gauge = spec.unit.height + spec.joints.bed;
  const coping = onWall ? copingHeight(plan) : 0;
  const high = highSaid(gauge * spec.courses, coping, env);
  return [
    `Build a wall ${lengthSaid(spec.length, env)} long and ${high}, ${thick} thick, in ${masonry.brick.title}.`,
    ...plan.openings.map((opening) => openingSaid(opening, gauge, env)),
    ...piersSaid(plan, gauge, env),
    ...dampSaid(facts),
    ...(onWall ? ['Finish the top with bricks on edge.'] : []),
    ...footingSaid(facts, env),
  ];
}

export function hasCoping(facts: BlockFacts): boolean {
  return facts.line('coping')?.word('kind') === 'brick-on-edge';
}

/** A brick on edge is as high as it is wide, on its bed. */
function copingHeight({ spec }: WallPlan): number {
  return spec.unit.width + spec.joints.bed;
}

function openingSaid({ facts, spec }: OpeningFacts, gauge: number, env: Env): string {
  const { width, sill, top } = spec;
  const high = top === null ? '' : ` and ${sizeSaid((top - sill) * gauge, env)} high`;
  const up = sill > 0 ? `, ${sizeSaid(sill * gauge, env)} above the ground` : '';
  return `Leave an opening ${sizeSaid(width, env)} wide${high}${up}${calledAfter(facts)}.`;
}

/** Its title; without one, what the file calls it. */
function calledAfter(facts: BlockFacts): string {
  if (facts.title !== facts.name) return `: ${facts.title}`;
  return facts.name ? ` for the ${facts.name.replaceAll('-', ' ')}` : '';
}

/** Piers that are alike in one sentence, with their titles. */
function piersSaid(plan: WallPlan, gauge: number, env: Env): string[] {
  const alike = new Map<string, string[]>();
  for (const pier of plan.piers) {
    const said = pierSaid(pier, plan, gauge, env);
    alike.set(said, [...(alike.get(said) ?? []), pier.facts.title]);
  }
  return [...alike].map(([said, titles]) => {
    const count = titles.length === 1 ? 'a pier' : `${titles.length} piers`;
    const names = titles.filter(Boolean).map((title) => title.replaceAll('-', ' '));
    return `Build ${count} in the wall, ${said}${names.length ? `: ${names.join(', ')}` : ''}.`;
  });
}

function pierSaid({ facts, spec }: PierFacts, plan: WallPlan, gauge: number, env: Env): string {
  const coping = hasCoping(facts) ? copingHeight(plan) : 0;
  const size = planSaid(spec.width, spec.depth, env);
  return `${size} and ${highSaid(gauge * spec.courses, coping, env)}${capSaid(facts, env)}`;
}

/** How thick a cap is no line says, so a height stops under it. */
export function capSaid(facts: BlockFacts, env: Env): string {
  const sides = facts.line('cap')?.sides('size');
  if (!facts.line('cap')) return '';
  return sides ? ` under a cap ${planSaid(sides[0]!, sides[1]!, env)}` : ' under a cap';
}
