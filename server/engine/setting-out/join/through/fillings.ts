/** Ways to make up a length of a half-brick course from whole bricks, three-quarter and half bats, and one odd cut where no others do. */
import type { PieceRun, WallSpec } from '../../types';
import { cutbackOf } from '../corner';

/** What cutting a piece costs: a half is one blow, a three-quarter bat wastes the rest, an odd cut is measured as well. */
const COST: Readonly<Record<string, number>> = { half: 1, 'three-quarter': 2, closer: 3, cut: 3 };
/** A cut under half a brick shows: common practice. */
const SMALL = 2;
/** Nearer than this a cut goes by the name of what it is, mm: joints of a course may not be those that it is named by. */
const NAMED = 1;
const SAME = 1e-6;
/** Quarter bricks that pieces take, the least cutting first. */
const QUARTERS = [4, 3, 2];
/** More than any room has that is looked at; protects the tool. */
const MOST_WAYS = 4000;
const MOST_PIECES = 32;

export interface Filling {
  readonly pieces: readonly Pick<PieceRun, 'piece' | 'length'>[];
  readonly cost: number;
}

export interface Room {
  readonly spec: WallSpec;
  /** As the course has it, mm. */
  readonly joint: number;
  /** Of the pieces with a joint each, mm. */
  readonly room: number;
  readonly mostCuts: number;
}

const brickOf = ({ unit, joints }: WallSpec) => unit.length + joints.perpend;

/** What laying a piece costs against another, in no unit: cutting, and small pieces most. */
export function costOf(piece: string, length: number, spec: WallSpec): number {
  const small = piece === 'cut' && length < brickOf(spec) / 2 - spec.joints.perpend - NAMED;
  return (COST[piece] ?? 0) + (small ? SMALL : 0);
}

/** As pieces are called by what they measure. */
export function named(length: number, spec: WallSpec): PieceRun['piece'] {
  if (Math.abs(length - spec.unit.length) < SAME) return 'stretcher';
  const { known } = cutbackOf({ spec }, 0);
  return known.find((k) => Math.abs(k.length - length) < NAMED)?.piece ?? 'cut';
}

/** Whether anybody would lay a piece of that length. */
export function isLaid(length: number, { unit, limits }: WallSpec): boolean {
  if (Math.abs(length - unit.length) < SAME) return true;
  return length >= limits.leastCut - SAME && length <= unit.length - (limits.kerf ?? 0) + SAME;
}

const known = new Map<string, readonly Filling[]>();
const MOST_KNOWN = 200;

/** The cheapest first. */
export function fillings(room: Room): readonly Filling[] {
  const { unit, joints, limits } = room.spec;
  const sizes = [unit.length, joints.perpend, limits.leastCut, limits.kerf];
  const key = [room.room.toFixed(6), room.joint, room.mostCuts, ...sizes].join(' ');
  let found = known.get(key);
  if (found) return found;
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, (found = newFillings(room)));
  return found;
}

function newFillings(room: Room): Filling[] {
  const found: number[][] = [];
  const odd = isOdd(room);
  collect({ ...room, mostCuts: room.mostCuts - (odd ? 1 : 0) }, odd, [], 0, found);
  return found
    .flatMap((lengths) => fillingOf(lengths, room.spec) ?? [])
    .sort((a, b) => a.cost - b.cost);
}

/** Whether the room is in no quarter bricks of the course, so that one piece of it has to be odd. */
function isOdd({ spec, room, joint }: Room): boolean {
  const quarter = (spec.unit.length + joint) / 4;
  return Math.abs(room - Math.round(room / quarter) * quarter) >= NAMED;
}

/** Mm of a piece so many quarter bricks long. */
const lengthOf = (quarters: number, spec: WallSpec) =>
  quarters === 4 ? spec.unit.length : (quarters / 4) * brickOf(spec) - spec.joints.perpend;

/** `odd`: one piece is still to be as long as is left; it stands as 0 until all others are known. */
function collect(room: Room, odd: boolean, lengths: number[], cuts: number, found: number[][]) {
  const { spec, joint } = room;
  if (found.length >= MOST_WAYS || lengths.length > MOST_PIECES || cuts > room.mostCuts) return;
  const left = lengths.reduce((sum, l) => sum - (l ? l + joint : 0), room.room);
  const open = lengths.indexOf(0);
  if (open >= 0 && isLaid(left - joint, spec))
    found.push(lengths.map((l) => (l ? l : left - joint)));
  if (!odd && Math.abs(left) < (cuts + 1) * NAMED) {
    const evened = evenedOut(lengths, left, spec);
    if (evened) found.push(evened);
    return;
  }
  if (left < joint + spec.limits.leastCut - NAMED) return;
  for (const quarters of QUARTERS) {
    const length = lengthOf(quarters, spec);
    if (length > 0) collect(room, odd, [...lengths, length], cuts + (quarters < 4 ? 1 : 0), found);
  }
  if (odd && open < 0) collect(room, odd, [...lengths, 0], cuts, found);
}

/** What is lost in the joints is made up by the cuts. */
function evenedOut(lengths: readonly number[], left: number, spec: WallSpec): number[] | undefined {
  if (Math.abs(left) < SAME) return [...lengths];
  const isCut = (l: number) => l < spec.unit.length - SAME;
  const cuts = lengths.filter(isCut).length;
  return cuts ? lengths.map((l) => (isCut(l) ? l + left / cuts : l)) : undefined;
}

function fillingOf(lengths: readonly number[], spec: WallSpec): Filling | undefined {
  if (!lengths.every((l) => isLaid(l, spec))) return undefined;
  const pieces = lengths.map((length) => ({ piece: named(length, spec), length }));
  return { pieces, cost: pieces.reduce((sum, p) => sum + costOf(p.piece, p.length, spec), 0) };
}
