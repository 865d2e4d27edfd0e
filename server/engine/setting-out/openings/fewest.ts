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

/** With what every row that is tried asks for, found once. */
interface Ready extends Room {
  /** What there is without another cut: bats, and the bricks that were there. */
  readonly named: readonly PieceRun[];
  /** Nothing is to be shorter, mm. */
  readonly quarter: number;
  /** Nearer to a whole brick than the saw is wide nobody cuts one, mm. */
  readonly mostCut: number;
}

function readied(room: Room): Ready {
  const { spec, taken, bats } = room;
  const { limits, unit } = spec;
  const whole = taken.filter(({ piece }) => piece === 'stretcher' || piece === 'header');
  return {
    ...room,
    named: [...whole.map((each) => ({ ...each, count: 1 })), ...bats],
    quarter: Math.max(limits.leastCut, unit.length / 4),
    mostCut: unit.length - (limits.kerf ?? 0),
  };
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
export function fewest(asked: Room): Closing | undefined {
  const room = readied(asked);
  let best: Filling | undefined;
  const judge = (pieces: readonly PieceRun[]) => {
    const cost = costOf(room, pieces);
    if (!best || isLess(cost, best.cost)) best = { pieces, cost };
  };
  const widest = room.taken.length + 1;
  for (let count = 1; count <= widest; count++) eachRow(room, room.opening.at, count, [], judge);
  return best && { pieces: best.pieces, good: best.cost[0] < EPS && best.cost[1] === 0 };
}

function isLess(a: Filling['cost'], b: Filling['cost']): boolean {
  for (let i = 0; i < a.length; i++) if (Math.abs(a[i]! - b[i]!) > EPS) return a[i]! < b[i]!;
  return false;
}

/** Rows of so many pieces from a place to the edge, after those before it: each that is worth trying. */
function eachRow(
  room: Ready,
  from: number,
  count: number,
  before: readonly PieceRun[],
  judge: (pieces: readonly PieceRun[]) => void,
): void {
  const { edge, joint } = room.opening;
  if (count === 1) {
    const last = lastOf(room, edge - from);
    if (last) judge([...before, last]);
    return;
  }
  for (const first of firstsOf(room, from, count))
    eachRow(room, from + first.length + joint, count - 1, [...before, first], judge);
}

const cut = (length: number): PieceRun => ({ piece: 'cut', length, count: 1 });

/** What reaches as far as the edge, or leaves a joint there that anyone would accept. */
function lastOf(room: Ready, length: number): PieceRun | undefined {
  const { spec, opening } = room;
  const named = room.named.find((each) => {
    const wider = length - each.length;
    return wider > -SAME && opening.joint + wider <= spec.limits.most + SAME;
  });
  return named ?? (isCut(room, length) ? cut(length) : undefined);
}

function isCut({ spec, mostCut }: Ready, length: number): boolean {
  return length > SAME && length >= spec.limits.leastCut - SAME && length <= mostCut + SAME;
}

/** What is worth trying for the first of some pieces: bats, a cut that just laps, the shortest and longest, all alike. */
function firstsOf(room: Ready, from: number, count: number): PieceRun[] {
  const { edge, joint } = room.opening;
  const all = edge - from - (count - 1) * joint;
  const { named, quarter, mostCut } = room;
  const { leastCut } = room.spec.limits;
  const each = [quarter, leastCut, mostCut, ...named.map(({ length }) => length)];
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

function costOf(room: Ready, pieces: readonly PieceRun[]): Filling['cost'] {
  const { beside, opening } = room;
  let at = opening.at - opening.joint / 2;
  let short = 0;
  for (const { length } of pieces.slice(0, -1)) {
    at += length + opening.joint;
    short += beside.wary.reduce((most, x) => Math.max(most, beside.lap - Math.abs(x - at)), 0);
  }
  const cuts = pieces.filter((piece) => sawn(piece) > 0);
  const tooShort = cuts.filter(({ length }) => length < room.quarter - SAME).length;
  const sum = cuts.reduce((all, piece) => all + sawn(piece), 0);
  const lengths = cuts.filter(({ piece }) => piece === 'cut').map(({ length }) => length);
  return [short, tooShort, sum, -Math.min(...lengths, room.spec.unit.length)];
}
