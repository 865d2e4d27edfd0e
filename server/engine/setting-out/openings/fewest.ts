/**
 * What closes a course beside an upright end, as a bricklayer would choose it: pieces that lap the courses above and
 * below; none shorter than a quarter brick; as few as may be sawn; and of those the one whose least is the biggest.
 */
import { EPS } from '../lay/grid';
import type { PieceRun, WallSpec } from '../types';
import { type Beside, type Opening, SAME } from './closing';

/** Bricks of the course that may give way. */
export const MOST_TAKEN = 2;

/** What there is to close, from a piece that stands to the edge, and what may close it. */
export interface Room {
  readonly spec: WallSpec;
  readonly beside: Beside;
  /** What the course has there as it was laid, in order: it may be laid again, or give way. */
  readonly taken: readonly PieceRun[];
  /** Bats, that may leave a joint at the edge a little wider. */
  readonly bats: readonly PieceRun[];
  /** `at` is where the first of `taken` begins. */
  readonly opening: Opening;
}

interface Filling {
  readonly pieces: readonly PieceRun[];
  /** Worst first: mm of lap that are lacking, pieces too short, pieces sawn (a bat is half a one), and less than nothing by the least that is no bat. */
  readonly cost: readonly [number, number, number, number];
}

const sawn = ({ piece }: PieceRun) =>
  piece === 'cut' ? 1 : piece === 'half' || piece === 'three-quarter' ? 0.5 : 0;

export interface Closing {
  readonly pieces: readonly PieceRun[];
  /** All of it laps, and none is shorter than a quarter brick. */
  readonly good: boolean;
}

/** The best there is; nothing where nothing goes in. */
export function fewest(room: Room): Closing | undefined {
  let best: Filling | undefined;
  const widest = room.taken.length + 1;
  for (let pieces = 1; pieces <= widest; pieces++)
    for (const filling of fillings(room, pieces))
      if (!best || isLess(filling.cost, best.cost)) best = filling;
  return best && { pieces: best.pieces, good: best.cost[0] < EPS && best.cost[1] === 0 };
}

function isLess(a: Filling['cost'], b: Filling['cost']): boolean {
  const i = a.findIndex((x, at) => Math.abs(x - b[at]!) > EPS);
  return i >= 0 && a[i]! < b[i]!;
}

function* fillings(room: Room, count: number): Generator<Filling> {
  for (const pieces of rows(room, room.opening.at, count))
    yield { pieces, cost: costOf(room, pieces) };
}

/** Rows of so many pieces from a place to the edge, each that is worth trying. */
function* rows(room: Room, from: number, count: number): Generator<PieceRun[]> {
  const { edge, joint } = room.opening;
  if (count === 1) {
    const last = lastOf(room, edge - from);
    if (last) yield [last];
    return;
  }
  for (const first of firstsOf(room, from, count))
    for (const rest of rows(room, from + first.length + joint, count - 1)) yield [first, ...rest];
}

const cut = (length: number): PieceRun => ({ piece: 'cut', length, count: 1 });

/** What reaches as far as the edge, or leaves a joint there that anyone would accept. */
function lastOf(room: Room, length: number): PieceRun | undefined {
  const { spec, opening } = room;
  const named = namedIn(room).find((each) => {
    const wider = length - each.length;
    return wider > -SAME && opening.joint + wider <= spec.limits.most + SAME;
  });
  return named ?? (isCut(room, length) ? cut(length) : undefined);
}

/** What there is without another cut: bats, and the bricks that were there. */
function namedIn({ bats, taken }: Room): PieceRun[] {
  const whole = taken.filter(({ piece }) => piece === 'stretcher' || piece === 'header');
  return [...whole.map((each) => ({ ...each, count: 1 })), ...bats];
}

/** Nearer to a whole brick than the saw is wide nobody cuts one. */
function isCut({ spec }: Room, length: number): boolean {
  const { limits, unit } = spec;
  const most = unit.length - (limits.kerf ?? 0);
  return length > SAME && length >= limits.leastCut - SAME && length <= most + SAME;
}

const quarterOf = ({ spec }: Room) => Math.max(spec.limits.leastCut, spec.unit.length / 4);

/** What is worth trying for the first of some pieces: bats, a cut that just laps, the shortest and longest, all alike. */
function firstsOf(room: Room, from: number, count: number): PieceRun[] {
  const { edge, joint } = room.opening;
  const all = edge - from - (count - 1) * joint;
  const named = namedIn(room);
  const { unit, limits } = room.spec;
  const most = unit.length - (limits.kerf ?? 0);
  const each = [quarterOf(room), limits.leastCut, most, ...named.map(({ length }) => length)];
  const { wary, lap } = room.beside;
  const lapping = wary.flatMap((x) => [x - lap, x + lap]).map((x) => x - joint / 2 - from);
  // So that what follows may be any of them, too, or just lap in its turn.
  const before = each.flatMap((length) => [
    all - length,
    ...lapping.map((x) => x - joint - length),
  ]);
  const lengths = [...each, ...lapping, ...before, all / count];
  const cuts = distinct(lengths.filter((length) => isCut(room, length) && length < all));
  const bare = cuts.filter((length) => !named.some((n) => Math.abs(n.length - length) < SAME));
  return [...named.filter(({ length }) => length < all), ...bare.map(cut)];
}

function distinct(lengths: readonly number[]): number[] {
  const sorted = [...lengths].sort((a, b) => a - b);
  return sorted.filter((length, i) => i === 0 || length - sorted[i - 1]! > SAME);
}

function costOf(room: Room, pieces: readonly PieceRun[]): Filling['cost'] {
  const { beside, opening } = room;
  let at = opening.at - opening.joint / 2;
  let short = 0;
  for (const { length } of pieces.slice(0, -1)) {
    at += length + opening.joint;
    short += beside.wary.reduce((most, x) => Math.max(most, beside.lap - Math.abs(x - at)), 0);
  }
  const cuts = pieces.filter((piece) => sawn(piece) > 0);
  const tooShort = cuts.filter(({ length }) => length < quarterOf(room) - SAME).length;
  const sum = cuts.reduce((all, piece) => all + sawn(piece), 0);
  const lengths = cuts.filter(({ piece }) => piece === 'cut').map(({ length }) => length);
  return [short, tooShort, sum, -Math.min(...lengths, room.spec.unit.length)];
}
