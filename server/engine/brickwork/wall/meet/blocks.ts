/** Ends that run on into standing work block by block. */
import { defaultLine, type Env, factsOf, type LineFacts } from '../../../resolve/env';
import type { RunningOn, Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import type { LaidAlone } from './alone';
import { SIDES } from './ends';

/** Blocks of more courses than this are no blocks, and courses would repeat over far too many. */
const MOST_TO_A_BLOCK = 12;

/** Courses to a block, of a line that says `block-bonded`. */
function blockCourses(line: LineFacts | undefined, env: Env): number | undefined {
  if (line?.word('end') !== 'block-bonded') return undefined;
  const said = line.number('block') ?? defaultLine(env, 'block-courses')?.number('courses') ?? 1;
  return Math.min(MOST_TO_A_BLOCK, Math.max(1, Math.floor(said)));
}

type BySide<T> = Readonly<Partial<Record<Side, T>>>;

/** Courses to a block, and how the blocks run on, at the ends that are block-bonded. */
export function blockEnds(
  block: SourceBlock,
  { spec }: LaidAlone,
  env: Env,
): { readonly blocks: BySide<number>; readonly on: BySide<RunningOn> } {
  const blocks: Partial<Record<Side, number>> = {};
  const on: Partial<Record<Side, RunningOn>> = {};
  const half = (spec.unit.length + spec.joints.perpend) / 2;
  for (const side of SIDES) {
    const courses = blockCourses(factsOf(block, env)!.line(side), env);
    if (courses === undefined) continue;
    blocks[side] = courses;
    on[side] = { by: half, end: 'butted' };
  }
  return { blocks, on };
}
