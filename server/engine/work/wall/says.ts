/** A wall in a householder’s words, for the quote. */

import { exact } from '../../../../shared/exact';
import { showNumber } from '../../../../shared/show';
import type { Masonry } from '../masonry';
import type { WallPlan } from './spec';

export function sayWall(masonry: Masonry, plan: WallPlan, coped: boolean): string[] {
  const { spec } = plan;
  const { env } = masonry;
  const high = (spec.unit.height + spec.joints.bed) * spec.courses;
  const thick = spec.thickness === 1 ? 'half a brick' : 'one brick';
  const says = [
    `Build a wall ${metres(spec.length, env)} long and ${metres(high, env)} high, ${thick} thick, in ${masonry.brick.title}.`,
  ];
  for (const { facts } of plan.openings)
    says.push(
      `Leave an opening${facts.title === facts.name ? ` for the ${facts.name}` : `: ${facts.title}`}.`,
    );
  if (plan.piers.length)
    says.push(
      plan.piers.length === 1
        ? 'Build one pier in the wall.'
        : `Build ${plan.piers.length} piers in the wall.`,
    );
  const dpc = masonry.facts.line('dpc');
  if (dpc) says.push('Lay the lowest courses in damp-proof bricks.');
  if (coped) says.push('Finish the top with bricks on edge.');
  if (masonry.facts.line('footing')) says.push('Dig and concrete the footing.');
  return says;
}

export function metres(mm: number, env: Masonry['env']): string {
  const unit = env.imperial ? 'ft' : 'm';
  const value = exact(mm.toFixed(3)).div(env.imperial ? '304.8' : '1000');
  return `${showNumber(value, 2, env.style)} ${unit}`;
}
