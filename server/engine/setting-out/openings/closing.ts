/** What closes a course against something that is let into it. */
import { EPS, gridOf } from '../lay/grid';
import type { FacePiece, PieceGroup, PieceRun, WallSpec } from '../types';
import { fewest, MOST_TAKEN } from './fewest';

/** Positions nearer than this are the same, mm. */
export const SAME = 1e-6;

/** What a course is closed beside. */
export interface Beside {
  /** Perpends of the courses above and below, mm from its stretch's left end. */
  readonly wary: readonly number[];
  /** What they are to be lapped by, mm. */
  readonly lap: number;
  /** Its end is upright, so that a piece beside it may keep its full height. */
  readonly upright: boolean;
  /** Half bricks deep. */
  readonly deep: 0 | 1 | 2;
}

/** Where the pieces to close a course may lie, mm from its stretch's left end: what stands begins at `at`, the last joint at `edge`. */
export interface Opening {
  readonly at: number;
  readonly edge: number;
  readonly joint: number;
}

/** What a cut costs beside mm of lap that are lacking. */
const A_CUT = 2;

interface Way {
  readonly groups: readonly PieceGroup[];
  readonly pieces: readonly PieceRun[];
  /** Perpends that are not the same in every way. */
  readonly perpends: readonly number[];
}

/** Takes the last piece off. */
function withoutLast(groups: readonly PieceGroup[]): { rest: PieceGroup[]; last?: PieceRun } {
  const end = groups.at(-1);
  if (!end) return { rest: [] };
  const rest = groups.slice(0, -1);
  const last = end.pieces.at(-1)!;
  if (end.times > 1) rest.push({ ...end, times: end.times - 1 });
  const pieces = [...end.pieces.slice(0, -1)];
  if (last.count > 1) pieces.push({ ...last, count: last.count - 1 });
  if (pieces.length) rest.push({ pieces, times: 1 });
  return { rest, last };
}

/** Pieces that a cut may be instead, with a joint beside it that is a little wider. */
function knownIn(spec: WallSpec, beside: Beside | undefined): { piece: FacePiece; long: number }[] {
  if (!beside?.upright || beside.deep === 0) return [];
  const { face } = gridOf(spec.unit, spec.joints, spec.thickness);
  const half: FacePiece = beside.deep === 2 ? 'header' : 'half';
  return [
    { piece: half, long: face[half] },
    { piece: 'three-quarter', long: face['three-quarter'] },
  ];
}

/** Where a perpend just laps one above or below. */
const justLapping = (beside?: Beside) =>
  (beside?.wary ?? []).flatMap((x) => [x - beside!.lap, x + beside!.lap]);

/** Tells the ways there are to close a course, the plainest first. */
function* waysOf(
  groups: readonly PieceGroup[],
  { at, edge, joint }: Opening,
  spec: WallSpec,
  beside: Beside | undefined,
): Generator<Way> {
  const { limits, unit } = spec;
  const known = knownIn(spec, beside);
  const room = edge - at;
  const cut = (length: number): PieceRun => ({ piece: 'cut', length, count: 1 });
  /** A piece that reaches as far as the edge, or leaves a joint there that anyone would accept. */
  const toEdge = (length: number): PieceRun => {
    const named = known.find(({ long }) => {
      const wider = length - long;
      return wider > -SAME && joint + wider <= limits.most + SAME;
    });
    return named ? { piece: named.piece, length: named.long, count: 1 } : cut(length);
  };
  const mostCut = unit.length - (limits.kerf ?? 0);
  // Nearer to a whole brick than the saw is wide nobody cuts one.
  const lays = (length: number) =>
    length >= limits.leastCut - SAME &&
    length > SAME &&
    (length <= mostCut + SAME || (length <= unit.length + SAME && toEdge(length).piece !== 'cut'));
  if (lays(room))
    yield { groups, pieces: [toEdge(room)], perpends: groups.length ? [at - joint / 2] : [] };
  const { rest, last } = withoutLast(groups);
  if (!last) return;
  const both = last.length + joint + room;
  const start = at - joint - last.length;
  if (lays(both)) yield { groups: rest, pieces: [toEdge(both)], perpends: [] };
  const firsts: PieceRun[] = [
    cut((both - joint) / 2),
    ...known.map(({ piece, long }): PieceRun => ({ piece, length: long, count: 1 })),
    ...known.map(({ long }) => cut(both - joint - long)),
    ...justLapping(beside).map((x) => cut(x - joint / 2 - start)),
  ];
  for (const first of firsts) {
    const second = both - joint - first.length;
    if (!lays(first.length) || !lays(second)) continue;
    yield {
      groups: rest,
      pieces: [first, toEdge(second)],
      perpends: [start + first.length + joint / 2],
    };
  }
}

function costOf({ pieces, perpends }: Way, beside: Beside | undefined): number {
  const cuts = pieces.reduce((sum, { piece }) => sum + (piece === 'cut' ? A_CUT : 0), 0);
  if (!beside) return cuts;
  const short = perpends.map((at) =>
    beside.wary.reduce((most, x) => Math.max(most, beside.lap - Math.abs(x - at)), 0),
  );
  return cuts + short.reduce((sum, each) => sum + each, 0);
}

/**
 * Fills what is left of a course from where its next piece begins to the edge: with a cut; or, where that would be too
 * short or stand over a perpend, with the piece before it cut too. Where neither goes in, with mortar alone.
 */
export function closed(
  groups: readonly PieceGroup[],
  opening: Opening,
  spec: WallSpec,
  beside?: Beside,
): PieceGroup[] {
  const { at, edge, joint } = opening;
  if (edge - at + 2 * joint <= spec.limits.most + SAME) return [...groups];
  const few =
    beside?.upright && beside.deep > 0 ? besideUpright(groups, opening, spec, beside) : undefined;
  if (few) return few;
  let best: { way: Way; cost: number } | undefined;
  for (const way of waysOf(groups, opening, spec, beside)) {
    const cost = costOf(way, beside) + (best ? A_CUT / 4 : 0);
    if (!best || cost < best.cost - EPS) best = { way, cost };
    if (!beside) break;
  }
  if (!best) return withMore(groups, opening, spec, beside);
  const { way } = best;
  return [...way.groups, { pieces: merged(way.pieces), times: 1 }];
}

/** With one brick of the course laid again, or with two where one will not do; nothing where that closes it in no decent way. */
function besideUpright(
  groups: readonly PieceGroup[],
  { at, edge, joint }: Opening,
  spec: WallSpec,
  beside: Beside,
): PieceGroup[] | undefined {
  const bats = knownIn(spec, beside).map(({ piece, long }) => ({ piece, length: long, count: 1 }));
  const taken: PieceRun[] = [];
  let found: PieceGroup[] | undefined;
  let rest: readonly PieceGroup[] = groups;
  for (let start = at; taken.length < MOST_TAKEN; ) {
    const { rest: without, last } = withoutLast(rest);
    if (last) {
      taken.unshift({ ...last, count: 1 });
      start -= last.length + joint;
      rest = without;
    }
    const closing = fewest({ spec, beside, taken, bats, opening: { at: start, edge, joint } });
    if (closing) found = [...rest, ...runsOf(closing.pieces)];
    if (closing?.good || !last) break;
  }
  return found;
}

/** Like ones side by side as one entry. */
function runsOf(pieces: readonly PieceRun[]): PieceGroup[] {
  const runs: PieceRun[] = [];
  for (const piece of pieces) {
    const before = runs.at(-1);
    const like = before?.piece === piece.piece && Math.abs(before.length - piece.length) < SAME;
    if (before && like) runs[runs.length - 1] = { ...before, count: before.count + 1 };
    else runs.push(piece);
  }
  return [{ pieces: runs, times: 1 }];
}

/** The last piece is too short to be cut with what is left: the one before it is cut too. */
function withMore(
  groups: readonly PieceGroup[],
  { at, edge, joint }: Opening,
  spec: WallSpec,
  beside?: Beside,
): PieceGroup[] {
  const { rest, last } = withoutLast(groups);
  if (!last) return [];
  return closed(rest, { at: at - joint - last.length, edge, joint }, spec, beside);
}

/** Two like ones as one entry. */
function merged([first, second]: readonly PieceRun[]): PieceRun[] {
  if (!second) return [first!];
  const like = first!.piece === second.piece && Math.abs(first!.length - second.length) < SAME;
  return like ? [{ ...first!, count: 2 }] : [first!, second];
}
