/** For walls that make corners end to end: the course each is begun with, and those in which it gives way. */
import { type Env, factsOf } from '../../../resolve/env';
import {
  bondsAt,
  type CornerWall,
  chooseChain,
  type Parity,
  type Placing,
  type SettingOut,
} from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { wallAlone } from './alone';
import { otherSide } from './ends';
import type { Chain, Neighbours, WallEnd } from './neighbours';
import { standingOf } from './standing';

export function cornerWall(
  { block, side }: WallEnd,
  out: SettingOut,
  begun: Parity,
  gives: Parity,
  env: Env,
): CornerWall {
  const inside = factsOf(block, env)!.line(side)?.word('faces') === 'inside';
  return { out, side, begun, gives, inside, ground: groundAt({ block, side }, env) };
}

/** Which course of a wall stands on the ground at its end. */
export function groundAt({ block, side }: WallEnd, env: Env): number {
  const ground = wallAlone(block, env).laid?.plan.ground;
  return ground?.at(side === 'left' ? 0 : -1)?.level ?? 0;
}

/** At a corner, whether one wall’s even courses lie level with the other’s odd ones. */
export function isLifted(own: WallEnd, other: WallEnd, env: Env): boolean {
  return (groundAt(own, env) - groundAt(other, env)) % 2 !== 0;
}

interface Solved {
  readonly chain: Chain;
  /** The walls as they stood; nothing for one that cannot be laid. */
  readonly outs: readonly (SettingOut | undefined)[];
  readonly placings: ReadonlyMap<SourceBlock, Placing>;
}

/** By the wall that a chain is told from: every wall of it asks for the same. */
const solved = new WeakMap<SourceBlock, Solved>();

export function placingsOf(
  chain: Chain,
  neighbours: Neighbours,
  env: Env,
): ReadonlyMap<SourceBlock, Placing> {
  const quick = byChain.get(chain);
  if (quick?.env === env) return quick.placings;
  const placings = keptPlacings(chain, neighbours, env);
  byChain.set(chain, { env, placings });
  return placings;
}

/** A chain is one object for all its walls while nothing changes. */
const byChain = new WeakMap<Chain, { readonly env: Env; readonly placings: Solved['placings'] }>();

function keptPlacings(chain: Chain, neighbours: Neighbours, env: Env): Solved['placings'] {
  const first = chain.walls[0]!.block;
  const known = solved.get(first);
  const outs = chain.walls.map(({ block }) => {
    const { laid } = wallAlone(block, env);
    return laid && standingOf(block, laid, neighbours, env).out;
  });
  if (known && sameChain(known.chain, chain) && known.outs.every((out, i) => out === outs[i]))
    return known.placings;
  const placings = newPlacings(outs, chain, env);
  solved.set(first, { chain, outs, placings });
  return placings;
}

function sameChain(a: Chain, b: Chain): boolean {
  if (a === b) return true;
  if (a.closed !== b.closed || a.walls.length !== b.walls.length) return false;
  return a.walls.every((w, i) => w.block === b.walls[i]!.block && w.side === b.walls[i]!.side);
}

function newPlacings(
  outs: Solved['outs'],
  { walls, closed }: Chain,
  env: Env,
): ReadonlyMap<SourceBlock, Placing> {
  const bonds = (wall: number, own: Placing, next: Placing) => {
    const after = (wall + 1) % walls.length;
    const [a, b] = [outs[wall], outs[after]];
    if (!a || !b) return true;
    const { block, side } = walls[wall]!;
    const out = { block, side: otherSide(side) };
    return bondsAt(
      cornerWall(out, a, own.begun, own.out, env),
      cornerWall(walls[after]!, b, next.begun, next.in, env),
    );
  };
  // The plans of a pier that stands out of its wall go with the courses of the wall as they are.
  const held = (wall: number) => {
    const { laid } = wallAlone(walls[wall]!.block, env);
    return laid?.plan.piers.some((p) => p.facts.line('projects')) ?? false;
  };
  const lifted = (wall: number) => {
    const { block, side } = walls[wall]!;
    return isLifted({ block, side: otherSide(side) }, walls[(wall + 1) % walls.length]!, env);
  };
  const placings = chooseChain({ walls: walls.length, closed, bonds, held, lifted });
  return new Map(walls.map((wall, i) => [wall.block, placings[i]!]));
}
