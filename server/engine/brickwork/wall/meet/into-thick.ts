/** Walls bonded into thick ones, among the others of a job. */
import type { Env } from '../../../resolve/env';
import type { Parity, RunningOn, Side, Tie } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { wallAlone } from './alone';
import { blockEnds } from './blocks';
import { claimsOf } from './ends';
import type { Neighbours } from './neighbours';
import { placingsOf } from './placings';
import type { Standing } from './standing';
import { type Tee, teesOf } from './tees';
import { type Bonding, bondingOf, tieAt } from './tied-in';
import type { Among } from './unbonded';

const EITHER: readonly Parity[] = [0, 1];

/** A wall of a chain may be begun with the second course of its bond, as the chain’s corners ask for it. */
const beginsOf = (block: SourceBlock, neighbours: Neighbours): readonly Parity[] =>
  neighbours.chainOf(block) ? EITHER : [0];

/** A wall by itself is begun as its tees ask for it, unless the plans of piers that stand out of it go with its courses. */
function ownBegins({ block, alone, neighbours }: Among): readonly (readonly Parity[])[] {
  if (neighbours.chainOf(block)) return [EITHER];
  const held = alone.plan.piers.some((p) => p.facts.line('projects'));
  return held ? [[0]] : [[0], [1]];
}

export function bondingInto(thick: readonly Tee[], all: readonly Tee[], at: Among): Bonding {
  const { block, alone, neighbours, env } = at;
  const on: Partial<Record<Side, RunningOn>> = { ...blockEnds(block, alone, env).on };
  for (const tee of all)
    if (tee.bonded && !thick.includes(tee))
      on[tee.side] = { by: tee.with.out.thickness, end: 'stopped' };
  const tees = thick.map((tee) => ({ ...tee, begins: beginsOf(tee.other, neighbours) }));
  return bondingOf(tees, { alone, on, begins: ownBegins(at) });
}

/** Ends bonded into thick walls that are looked at when a wall is worked out: its own, and of those that run into it. */
export function searchesFor(block: SourceBlock, neighbours: Neighbours, env: Env): number {
  const isThick = (wall: SourceBlock | undefined) =>
    wall !== undefined && (wallAlone(wall, env).laid?.plan.spec.thickness ?? 0) > 1;
  const own = claimsOf(block).filter((c) => c.bonded && isThick(neighbours.named(c.wall)));
  if (!isThick(block)) return own.length;
  const into = neighbours.into(block).filter((wall) => claimsOf(wall).some((c) => c.bonded));
  return own.length + into.length;
}

/** How a wall is bonded in at its ends, and its own courses that stop at the other. */
export type TiedIn = Readonly<Partial<Record<Side, { readonly tie: Tie; readonly stops: Parity }>>>;

/** The course of its bond that a wall is begun with, where it meets others. */
export function begunOf(block: SourceBlock, neighbours: Neighbours, env: Env): Parity {
  const chain = neighbours.chainOf(block);
  if (chain) return placingsOf(chain, neighbours, env).get(block)?.begun ?? 0;
  const { laid } = wallAlone(block, env);
  const tees = laid && teesOf(block, laid, neighbours, env);
  return tees?.find((t) => t.begun !== undefined)?.begun ?? 0;
}

export function tiedIn(
  tees: readonly Tee[],
  { out }: Standing,
  { begun, neighbours, env }: { begun: Parity; neighbours: Neighbours; env: Env },
): TiedIn {
  const found: Partial<Record<Side, { tie: Tie; stops: Parity }>> = {};
  for (const tee of tees) {
    if (!tee.entry) continue;
    const other = begunOf(tee.other, neighbours, env);
    const tie = tieAt({ ...tee, begins: [other] }, tee.entry, out, begun, other);
    // Of its own courses those of the other parity stop at the face of the other.
    if (tie) found[tee.side] = { tie, stops: ((tie.parity + tee.levels.lift + 1) & 1) as Parity };
  }
  return found;
}
