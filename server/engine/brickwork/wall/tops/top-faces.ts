/** What a coping has to cover: from the front of the topmost course to the back of the skin behind it. */
import { type Masonry, thicknessOf } from '../../masonry';
import { deepBehind } from '../parts/backing/lay';
import type { WallPlan } from '../spec';

/** Mm from the front of the wall: a front before it is negative. */
export interface TopFaces {
  readonly front: number;
  readonly back: number;
}

export function topFaces(masonry: Masonry, { spec }: WallPlan): TopFaces {
  const { unit, joints, thickness, courses } = spec;
  const line = masonry.facts.line('corbel');
  const corbelled = Math.min(courses, Math.floor(line?.number('courses') ?? 0));
  const out = Math.max(0, corbelled) * (line?.number('project') ?? 0);
  const wall = thicknessOf(thickness, unit, joints.perpend);
  return { front: 0 - Math.max(0, out), back: wall + deepBehind(masonry, joints.perpend) };
}

/** Mm through all of it. */
export function overAll(masonry: Masonry, plan: WallPlan): number {
  const { front, back } = topFaces(masonry, plan);
  return back - front;
}
