/** Where the coping of a wall ends at its corners with other walls. */
import type { Env } from '../../resolve/env';
import { type CornerEnd, type CornerTop, copingAtCorner, type Side } from '../../setting-out';
import { depthOf } from '../coping-made';
import type { Masonry } from '../masonry';
import { madeFor } from './copings';
import { wallAlone } from './meet/alone';
import type { Quoin } from './meet/quoins';
import type { WallPlan } from './spec';

export type CopingCorners = Readonly<Partial<Record<Side, CornerEnd>>>;

export function copingCorners(
  masonry: Masonry,
  plan: WallPlan,
  quoins: readonly Quoin[],
): CopingCorners {
  const ends = quoins.flatMap((quoin) => {
    const other = otherTop(quoin, masonry.env);
    return [[quoin.side, copingAtCorner(topAt(quoin.side, masonry, plan), other, quoin.comesIn)]];
  });
  return Object.fromEntries(ends);
}

function otherTop({ other, otherSide, with: { plan } }: Quoin, env: Env): CornerTop {
  return topAt(otherSide, wallAlone(other, env).masonry, plan);
}

function topAt(side: Side, masonry: Masonry, plan: WallPlan): CornerTop {
  const { spec, ground, top } = plan;
  const last = side === 'left' ? 0 : -1;
  const courses = top.at(last)!.level - ground.at(last)!.level;
  const line = masonry.facts.line('coping');
  const made = line && madeFor(line, masonry, plan);
  const { unit, joints, thickness } = spec;
  const half = (unit.length + joints.perpend) / 2;
  return {
    length: spec.length,
    high: courses * (unit.height + joints.bed),
    thick: thickness * half - joints.perpend,
    deep: made ? depthOf(made, joints.perpend) : 0,
  };
}
