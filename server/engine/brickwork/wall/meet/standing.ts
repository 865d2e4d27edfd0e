/** A wall as it stands among others: with the courses that run on past its ends, before any gives way. */
import { defaultLine, type Env, factsOf, type LineFacts } from '../../../resolve/env';
import { type RunsOn, runOn, type SettingOut, type Side, setOut } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import type { LaidAlone } from './alone';
import { SIDES } from './ends';
import type { Neighbours } from './neighbours';
import { teesOf } from './tees';

export interface Standing {
  /** As long as its longest courses: see `runOn`. */
  readonly out: SettingOut;
  readonly on: RunsOn;
  /** Courses to a block at the ends that are block-bonded. */
  readonly blocks: Readonly<Partial<Record<Side, number>>>;
}

/** Blocks of more courses than this are no blocks, and courses would repeat over far too many. */
export const MOST_TO_A_BLOCK = 12;

const kept = new WeakMap<LaidAlone, { readonly key: string; readonly standing: Standing }>();

export function standingOf(
  block: SourceBlock,
  alone: LaidAlone,
  neighbours: Neighbours,
  env: Env,
): Standing {
  const { spec } = alone;
  const blocks: Partial<Record<Side, number>> = {};
  const on: Partial<Record<Side, RunsOn['left']>> = {};
  const half = (spec.unit.length + spec.joints.perpend) / 2;
  for (const side of SIDES) {
    const courses = blockCourses(factsOf(block, env)!.line(side), env);
    if (courses === undefined) continue;
    blocks[side] = courses;
    on[side] = { by: half, end: 'butted' };
  }
  for (const tee of teesOf(block, alone, neighbours, env))
    if (tee.bonded) on[tee.side] = { by: tee.with.out.thickness, end: 'stopped' };
  if (!on.left && !on.right) return { out: alone.out, on, blocks };
  const key = JSON.stringify([on, blocks]);
  const known = kept.get(alone);
  if (known?.key === key) return known.standing;
  const standing = { out: setOut(runOn(spec, on)), on, blocks };
  kept.set(alone, { key, standing });
  return standing;
}

/** Courses to a block, of a line that says `block-bonded`. */
export function blockCourses(line: LineFacts | undefined, env: Env): number | undefined {
  if (line?.word('end') !== 'block-bonded') return undefined;
  const said = line.number('block') ?? defaultLine(env, 'block-courses')?.number('courses') ?? 1;
  return Math.min(MOST_TO_A_BLOCK, Math.max(1, Math.floor(said)));
}
