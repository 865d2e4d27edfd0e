/** Corners between the walls of a job: which course each wall is begun with, and in which it gives way. */
import { type Env, factsOf } from '../../../resolve/env';
import {
  backInPlace,
  begunWith,
  bondIn,
  bondsAt,
  type CourseEnds,
  type GivingWay,
  layCorners,
  letIn,
  type Parity,
  type Placing,
  type RunsOn,
  type SettingOut,
  type Side,
  stretched,
  takesUp,
  wayAt,
} from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { type CorbelCorners, corbelCorners } from '../parts/corbel-corners';
import { type LaidAlone, wallAlone } from './alone';
import type { Arm } from './arms';
import { SIDES } from './ends';
import { begunOf, tiedIn } from './into-thick';
import { levelCourses } from './level';
import type { Chain, Neighbours } from './neighbours';
import { cornerWall, groundAt, isLifted, placingsOf } from './placings';
import { roomFor } from './room';
import { type Standing, standingOf } from './standing';
import { type Tee, teesOf } from './tees';
import { setOutOn } from './tied-in';
import { turnsOf } from './turns';

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
  /** Its face, with room for the walls that run in; the face itself where none do. */
  readonly met: SettingOut;
  /** Walls that stand against it. */
  readonly arms: readonly Arm[];
  readonly quoins: readonly Quoin[];
  /** Courses laid longer at corners, round a corbel. */
  readonly corbel: CorbelCorners;
  readonly tees: readonly Tee[];
  /** Courses to a block at the ends that are block-bonded into standing work. */
  readonly blocks: Readonly<Partial<Record<Side, number>>>;
}

/** A wall with its corners, and with the ends of others that are bonded into it; as it is alone where none is. */
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
  const begun = begunOf(block, neighbours, env);
  const at = { block, alone, standing, neighbours, env };
  const quoins = placing ? SIDES.flatMap((side) => quoinAt(side, at, placing, chain) ?? []) : [];
  const out = begunWith(standing.out, begun);
  const meeting = Object.fromEntries(quoins.flatMap((q) => (q.way ? [[q.side, q.way]] : [])));
  const runsOn = turnsOf(standing, begun, tiedIn(tees, standing, { begun, neighbours, env }));
  const back = (wall: SettingOut) =>
    Object.keys(standing.on).length ? backInPlace(wall, alone.out.spec, standing.on) : wall;
  const room = roomFor(block, neighbours, env);
  const facts = factsOf(block, env)!;
  const inside = (side: Side) => facts.line(side)?.word('faces') === 'inside';
  const corbel = corbelCorners(alone, quoins, inside, env);
  const whole = {
    own: back(layCorners(out, { ...meeting, ...runsOn })),
    face: back(layCorners(out, runsOn)),
  };
  const ways = { own: { ...meeting, ...runsOn }, face: runsOn };
  const { own, face } = withCorbel(whole, corbel, { alone, on: standing.on, begun, ways });
  const corners = quoins.map((q) => q.side);
  const gaps = room.gaps.map((gap) => ({ ...gap, corners }));
  const laid = bondIn(letIn(own, gaps), room.ties);
  return {
    face,
    laid,
    // Where there is no corner both are the same.
    met: quoins.length ? bondIn(letIn(face, gaps), room.ties) : laid,
    arms: room.arms,
    quoins,
    corbel,
    tees,
    blocks: standing.blocks,
  };
}

interface Laying {
  readonly alone: LaidAlone;
  readonly on: RunsOn;
  readonly begun: Parity;
  readonly ways: Readonly<Record<keyof Whole, Readonly<Partial<Record<Side, GivingWay>>>>>;
}

/** A wall as it lies on plan, and as its face shows. */
interface Whole {
  readonly own: SettingOut;
  readonly face: SettingOut;
}

/** With its courses as long as they are round a corbel: where joints do not take that up, set out as so long a wall. */
function withCorbel(wall: Whole, { ends }: CorbelCorners, how: Laying): Whole {
  if (!ends.length) return wall;
  const tight = new Set(ends.filter((e) => !takesUp(wall.own, e) || !takesUp(wall.face, e)));
  const again = (which: keyof Whole) => (e: CourseEnds) =>
    tight.has(e) ? setLonger(e, how, how.ways[which]) : undefined;
  return {
    own: stretched(wall.own, ends, again('own')),
    face: stretched(wall.face, ends, again('face')),
  };
}

function setLonger(
  { left, right }: CourseEnds,
  { alone, on, begun }: Laying,
  ways: Laying['ways']['own'],
): SettingOut {
  const { spec } = alone;
  const past = {
    left: on.left ?? { by: left, end: spec.left },
    right: on.right ?? { by: right, end: spec.right },
  };
  return backInPlace(
    layCorners(begunWith(setOutOn(alone, past), begun), ways),
    alone.out.spec,
    past,
  );
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
