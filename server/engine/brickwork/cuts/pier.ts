/** What is to be cut for a pier that stands alone. */
import { cutsInPier, type PierPlan } from '../../setting-out';
import type { Counted } from '../count';
import { brickOf } from '../goods';
import type { Masonry } from '../masonry';
import type { CopingBricks } from '../tops/coping-bricks';
import { type CutPart, cutPart } from './sheet';

interface Counts {
  readonly pier: Counted;
  readonly dpc: Counted | undefined;
  readonly coping: CopingBricks | undefined;
}

/** `alike` piers each take all of it. */
export function pierCuts(
  { facts, env, brick }: Masonry,
  spec: PierPlan,
  { pier, dpc, coping }: Counts,
  alike: number,
): readonly CutPart[] {
  const line = facts.line('dpc');
  const damp = dpc && line ? Math.floor(line.number('courses') ?? 0) : 0;
  const above = cutsInPier(spec, { from: damp, to: null });
  const below = cutsInPier(spec, { from: 0, to: damp });
  return [
    ...cutPart(brick.title, pier, above, alike),
    ...(dpc && line ? cutPart(brickOf(line, env, line.origin).title, dpc, below, alike) : []),
    ...(coping ? cutPart(coping.brick.title, coping.counted, [], alike) : []),
  ];
}
