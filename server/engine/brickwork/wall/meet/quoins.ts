/** Corners between the walls of a job: which course each wall is begun with, and in which it gives way. */
import type { Env } from '../../../resolve/env';
import {
  backInPlace,
  begunWith,
  bondsAt,
  type GivingWay,
  givesWay,
  type LetIn,
  layCorners,
  letIn,
  type Parity,
  type Placing,
  type SettingOut,
  type Side,
  wayAt,
} from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { type LaidAlone, wallAlone } from './alone';
import { SIDES } from './ends';
import { levelCourses } from './level';
import type { Chain, Neighbours } from './neighbours';
import { cornerWall, groundAt, isLifted, placingsOf } from './placings';
import { type Standing, standingOf } from './standing';
import { type Tee, teesOf } from './tees';

/** A corner of a wall, as it is laid. */
export interface Quoin {
  readonly side: Side;
  readonly other: SourceBlock;
  readonly otherSide: Side;
  /** The course of this wall, and that of the other, that stands on the ground there. */
  readonly ground: number;
  readonly otherGround: number;
  /** The chain of walls comes into this wall here: each corner has one such end, and is told of there. */
  readonly comesIn: boolean;
  /** The other wall, as it would be laid alone. */
  readonly with: LaidAlone;
  /** Whether courses lap round it with no piece cut for it. */
  readonly bonded: boolean;
  /** Nothing where the two walls cannot be laid course by course. */
  readonly way?: GivingWay;
}

/** A wall where it meets others. */
export interface Cornered {
  /** Its face: at a quoin it looks like a stopped end. */
  readonly face: SettingOut;
  /** As it lies on plan, without what is the other wall’s. */
  readonly laid: SettingOut;
  readonly quoins: readonly Quoin[];
  readonly tees: readonly Tee[];
  /** Courses to a block at the ends that are block-bonded into standing work. */
  readonly blocks: Readonly<Partial<Record<Side, number>>>;
}

export function cornered(
  block: SourceBlock,
  alone: LaidAlone,
  neighbours: Neighbours,
  env: Env,
): Cornered {
  const tees = teesOf(block, alone, neighbours, env);
  const standing = standingOf(block, alone, neighbours, env);
  const chain = neighbours.chainOf(block);
  const placing = chain && placingsOf(chain, neighbours, env).get(block);
  const begun = placing?.begun ?? 0;
  const at = { block, alone, standing, neighbours, env };
  const quoins = placing ? SIDES.flatMap((side) => quoinAt(side, at, placing, chain) ?? []) : [];
  const out = begunWith(standing.out, begun);
  const meeting = Object.fromEntries(quoins.flatMap((q) => (q.way ? [[q.side, q.way]] : [])));
  const runsOn = turnsOf(standing, begun);
  const back = (wall: SettingOut) =>
    Object.keys(standing.on).length ? backInPlace(wall, alone.out.spec, standing.on) : wall;
  return {
    face: back(layCorners(out, runsOn)),
    laid: letIn(back(layCorners(out, { ...meeting, ...runsOn })), roomFor(block, neighbours, env)),
    quoins,
    tees,
    blocks: standing.blocks,
  };
}

/** Room in a wall for those that run into it. */
function roomFor(block: SourceBlock, neighbours: Neighbours, env: Env): LetIn[] {
  return neighbours.into(block).flatMap((wall) => {
    const { laid } = wallAlone(wall, env);
    if (!laid) return [];
    const standing = standingOf(wall, laid, neighbours, env);
    const chain = neighbours.chainOf(wall);
    const begun = (chain && placingsOf(chain, neighbours, env).get(wall)?.begun) ?? 0;
    const ways = turnsOf(standing, begun);
    return teesOf(wall, laid, neighbours, env).flatMap((tee) => {
      if (tee.other !== block || !tee.bonded) return [];
      const parity = ways[tee.side]!.parity === 0 ? 1 : 0;
      const { distance: from } = tee;
      const courses = { from: 0, to: laid.out.spec.courses };
      return [{ from, to: from + laid.out.thickness, parity, courses }];
    });
  });
}

/** Where courses, or blocks of them, run on past an end in turn: those between stop at it. */
function turnsOf({ out, on, blocks }: Standing, begun: Parity): Partial<Record<Side, GivingWay>> {
  const ways: Partial<Record<Side, GivingWay>> = {};
  const courses = [{ from: 0, to: out.spec.courses }];
  for (const side of SIDES) {
    const past = on[side];
    if (!past) continue;
    const block = blocks[side];
    const parity = block ? 1 : teeParity(out, side, past.by, begun);
    ways[side] = { parity, by: past.by, courses, ...(block ? { block } : {}) };
  }
  return ways;
}

/** The courses that stop at the face of the other wall: those that end there with a joint of their own. */
function teeParity(out: SettingOut, side: Side, by: number, begun: Parity): Parity {
  const [even, odd] = givesWay(out, side, by, begun);
  return even && !odd ? 0 : 1;
}

interface Meeting {
  readonly block: SourceBlock;
  readonly alone: LaidAlone;
  readonly standing: Standing;
  readonly neighbours: Neighbours;
  readonly env: Env;
}

function quoinAt(
  side: Side,
  { block, alone, standing, neighbours, env }: Meeting,
  placing: Placing,
  chain: Chain,
): Quoin | undefined {
  const answer = neighbours.answering({ block, side });
  const other = answer && wallAlone(answer.block, env).laid;
  if (!answer || !other) return undefined;
  const into = chain.walls.find((w) => w.block === block)!.side;
  const parity = side === into ? placing.in : placing.out;
  const ends = {
    side,
    other: answer.block,
    otherSide: answer.side,
    ground: groundAt({ block, side }, env),
    otherGround: groundAt(answer, env),
  };
  const quoin = { ...ends, with: other, comesIn: side === into };
  if (!levelCourses(alone.out, other.out)) return { ...quoin, bonded: false };
  const theirs = standingOf(answer.block, other, neighbours, env).out;
  const { begun } = placingsOf(chain, neighbours, env).get(answer.block)!;
  const own = cornerWall({ block, side }, standing.out, placing.begun, parity, env);
  const alike = isLifted({ block, side }, answer, env);
  const gives = alike ? parity : parity === 0 ? 1 : 0;
  const across = cornerWall(answer, theirs, begun, gives, env);
  return { ...quoin, bonded: bondsAt(own, across), way: wayAt(own, across) };
}
