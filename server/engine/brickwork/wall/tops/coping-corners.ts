/** Where the coping of a wall ends at its corners with other walls, and at those that it runs into. */
import type { Env } from '../../../resolve/env';
import {
  type CornerEnd,
  type CornerTop,
  copingAtCorner,
  copingAtTee,
  levelAt,
  type Side,
} from '../../../setting-out';
import type { Masonry } from '../../masonry';
import { depthOf } from '../../tops/coping-made';
import { wallAlone } from '../meet/alone';
import type { Cornered, Quoin } from '../meet/quoins';
import type { Tee } from '../meet/tees';
import { deepBehind } from '../parts/backing/lay';
import type { WallPlan } from '../spec';
import { madeFor } from './copings';

export type CopingCorners = Readonly<Partial<Record<Side, CornerEnd>>>;

export function copingCorners(
  masonry: Masonry,
  plan: WallPlan,
  { quoins, tees }: Pick<Cornered, 'quoins' | 'tees'>,
): CopingCorners {
  const corners = quoins.map((quoin) => {
    const other = otherTop(quoin, masonry.env);
    return [quoin.side, copingAtCorner(endTop(quoin.side, masonry, plan), other, quoin.comesIn)];
  });
  const into = tees
    .filter((tee) => !tee.off)
    .map((tee) => [
      tee.side,
      copingAtTee(endTop(tee.side, masonry, plan), faceTop(tee, masonry.env)),
    ]);
  return Object.fromEntries([...corners, ...into]);
}

function otherTop({ other, otherSide, with: { plan } }: Quoin, env: Env): CornerTop {
  return endTop(otherSide, wallAlone(other, env).masonry, plan);
}

/** Of a wall where another runs into its face. */
function faceTop({ other, distance, with: { plan } }: Tee, env: Env): CornerTop {
  return topAt(distance, wallAlone(other, env).masonry, plan);
}

function endTop(side: Side, masonry: Masonry, plan: WallPlan): CornerTop {
  const top = topAt(side === 'left' ? 0 : plan.spec.length, masonry, plan);
  // A skin behind a front on the inner side of the corner is outside it.
  const outside = masonry.facts.line(side)?.word('faces') === 'inside';
  return outside ? { ...top, thick: top.thick - behind(masonry, plan) } : top;
}

function behind(masonry: Masonry, { spec }: WallPlan): number {
  return deepBehind(masonry, spec.joints.perpend);
}

function topAt(x: number, masonry: Masonry, plan: WallPlan): CornerTop {
  const { spec, ground, top } = plan;
  const courses = levelAt(top, x) - levelAt(ground, x);
  const line = masonry.facts.line('coping');
  const made = line && madeFor(line, masonry, plan);
  const { unit, joints, thickness } = spec;
  const half = (unit.length + joints.perpend) / 2;
  return {
    length: spec.length,
    high: courses * (unit.height + joints.bed),
    thick: thickness * half - joints.perpend + behind(masonry, plan),
    deep: made ? depthOf(made, joints.perpend) : 0,
  };
}
