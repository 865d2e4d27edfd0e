/** A wall as it stands among others: with the courses that run on past its ends, before any gives way. */
import type { Env } from '../../../resolve/env';
import type { RunsOn, SettingOut, Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import type { LaidAlone } from './alone';
import { blockEnds } from './blocks';
import type { Neighbours } from './neighbours';
import { teesOf } from './tees';
import { setOutOn } from './tied-in';

export interface Standing {
  /** As long as its longest courses: see `runOn`. */
  readonly out: SettingOut;
  readonly on: RunsOn;
  /** Courses to a block at the ends that are block-bonded. */
  readonly blocks: Readonly<Partial<Record<Side, number>>>;
}

const kept = new WeakMap<LaidAlone, { readonly key: string; readonly standing: Standing }>();

export function standingOf(
  block: SourceBlock,
  alone: LaidAlone,
  neighbours: Neighbours,
  env: Env,
): Standing {
  const { blocks, ...ends } = blockEnds(block, alone, env);
  const on: Partial<Record<Side, RunsOn['left']>> = { ...ends.on };
  for (const tee of teesOf(block, alone, neighbours, env))
    if (tee.bonded) on[tee.side] = tee.entry ?? { by: tee.with.out.thickness, end: 'stopped' };
  if (!on.left && !on.right) return { out: alone.out, on, blocks };
  const key = JSON.stringify([on, blocks]);
  const known = kept.get(alone);
  if (known?.key === key) return known.standing;
  const standing = { out: setOutOn(alone, on), on, blocks };
  kept.set(alone, { key, standing });
  return standing;
}
