/** One piece of work worked out, by its kind, by whoever does it. */

import { workPier } from '../brickwork/pier/pier';
import { workRepair } from '../brickwork/repair';
import { type ToldOf, toldOfWall, workWall } from '../brickwork/wall';
import type { Neighbours } from '../brickwork/wall/meet/neighbours';
import type { Work } from '../brickwork/work';
import { freeStanding } from '../findings/piers/free-standing';
import { type Gang, gangBy } from '../labour/gang';
import { type Env, factsOf } from '../resolve/env';
import { type Partner, partnerLost, partnerOf } from '../resolve/partners';
import { type Gap, withGaps } from '../working/term';
import type { SourceBlock } from './source';

/** What it is worked out in, and the firm’s own gang. */
export interface In {
  readonly env: Env;
  readonly gang: Gang;
}

/** What else a piece of work is worked out from. */
export interface Others {
  /** The wall a repair is in, the walls that a wall meets. */
  readonly beside: readonly SourceBlock[];
  /** All walls of the job. */
  readonly neighbours: Neighbours;
}

/** Nothing for a block that says nothing. */
export function workedOut(block: SourceBlock, others: Others, at: In): Work | undefined {
  const { env } = at;
  if (!factsOf(block, env)) return undefined;
  const partner = partnerOf(block, env.book);
  const work = laidBy(gangFor(partner, at), block, others, env);
  return partner ? doneBy(partner, work) : lacking(work, partnerLost(block, env.book));
}

/** What there is to tell of a block when a way out is tried in it; a wall costs less so. */
export function toldOf(block: SourceBlock, others: Others, at: In, code: string) {
  const { env } = at;
  if (block.kind !== 'wall' || !factsOf(block, env)) return workedOut(block, others, at);
  const gang = gangFor(partnerOf(block, env.book), at);
  return looked(toldOfWall(block, env, gang, others.neighbours, code), env);
}

function gangFor(partner: Partner | undefined, { env, gang }: In): Gang {
  return partner ? gangBy(partner, env) : gang;
}

function laidBy(gang: Gang, block: SourceBlock, { beside, neighbours }: Others, env: Env): Work {
  const facts = factsOf(block, env)!;
  if (block.kind === 'wall') return looked(workWall(block, env, gang, neighbours), env);
  if (block.kind === 'pier') return workPier(facts, env, gang);
  return workRepair(facts, env, gang, beside[0]);
}

/** A wall with what there is to say of its height. */
function looked<W extends ToldOf>(wall: W, env: Env): W {
  const remarks = freeStanding(wall, env);
  return remarks.length ? { ...wall, remarks: [...wall.remarks, ...remarks] } : wall;
}

/** Hours that are not known, as nobody knows who works them. */
function lacking(work: Work, gaps: readonly Gap[]): Work {
  if (!gaps.length) return work;
  const tasks = work.needs.tasks.map((t) => ({ ...t, hours: withGaps(t.hours, gaps) }));
  return { ...work, needs: { ...work.needs, tasks } };
}

/** Neither its hours are the firm’s own, nor the days that its height takes. */
function doneBy(by: Partner, work: Work): Work {
  const tasks = work.needs.tasks.map((task) => ({ ...task, by }));
  return { ...work, needs: { ...work.needs, tasks, leastDays: undefined } };
}
