import type { FacePiece, JointLimits, LaidRun, PieceGroup, PieceRun } from '../types';

/** What a course is cut back to, and by what pieces it may be told apart. All mm. */
export interface Cutback {
  /** How far from the end of the wall the work in the way reaches. */
  readonly by: number;
  readonly limits: JointLimits;
  /** A whole brick: no cut is longer. */
  readonly longest: number;
  /** Face lengths that are no odd cut, by what they are called. */
  readonly known: readonly { readonly piece: FacePiece; readonly length: number }[];
}

/** A course that starts behind other work. */
export interface Trimmed {
  readonly run: LaidRun;
  /** A joint of the course stands where the other work ends: no piece had to be cut. */
  readonly clean: boolean;
  /** What the piece across the line is cut to. */
  readonly cut?: FacePiece;
}

/** Lengths nearer than this are one length, mm. */
const SAME = 1e-6;

const widthOf = (pieces: readonly PieceRun[], joint: number) =>
  pieces.reduce((sum, { length, count }) => sum + count * (length + joint), 0);

/** How many of `most` steps of `pitch` go into `room`. */
function stepsIn(room: number, pitch: number, most: number): number {
  if (pitch <= SAME) return most;
  return Math.min(most, Math.max(0, Math.floor((room + SAME) / pitch)));
}

interface Dropped {
  readonly rest: PieceGroup[];
  /** Width of what was dropped, joints with it, mm. */
  readonly width: number;
}

/** Pieces of one turn of a group dropped from the left, as many as go into `room`. */
function dropPieces(pieces: readonly PieceRun[], joint: number, room: number) {
  let width = 0;
  for (const [i, piece] of pieces.entries()) {
    const pitch = piece.length + joint;
    const count = stepsIn(room - width, pitch, piece.count);
    width += count * pitch;
    if (count === piece.count) continue;
    const left = { ...piece, count: piece.count - count };
    return { rest: [left, ...pieces.slice(i + 1)], width };
  }
  return { rest: [], width };
}

/** Pieces dropped from the left, as many as go into `room` with the joint after each. Whole turns are stepped over. */
export function drop(groups: readonly PieceGroup[], joint: number, room: number): Dropped {
  let width = 0;
  for (const [i, { pieces, times }] of groups.entries()) {
    const turn = widthOf(pieces, joint);
    const turns = stepsIn(room - width, turn, times);
    width += turns * turn;
    if (turns === times) continue;
    const part = dropPieces(pieces, joint, room - width);
    const rest: PieceGroup[] = [];
    if (part.rest.length > 0) rest.push({ pieces: part.rest, times: 1 });
    if (times - turns > 1) rest.push({ pieces, times: times - turns - 1 });
    return { rest: [...rest, ...groups.slice(i + 1)], width: width + part.width };
  }
  return { rest: [], width };
}

/** The first piece apart from what follows it. */
function first(groups: readonly PieceGroup[]): { piece: PieceRun; rest: PieceGroup[] } | null {
  const [group, ...others] = groups;
  const [piece, ...after] = group?.pieces ?? [];
  if (!group || !piece) return null;
  const turn = piece.count > 1 ? [{ ...piece, count: piece.count - 1 }, ...after] : after;
  const rest: PieceGroup[] = turn.length > 0 ? [{ pieces: turn, times: 1 }] : [];
  if (group.times > 1) rest.push({ pieces: group.pieces, times: group.times - 1 });
  return { piece: { ...piece, count: 1 }, rest: [...rest, ...others] };
}

/** What is left of a piece, by the name its length has, near enough. */
function leftOver(length: number, known: Cutback['known']): PieceRun {
  const named = known.find((k) => Math.abs(k.length - length) < 0.5);
  return { piece: named?.piece ?? 'cut', length, count: 1 };
}

/**
 * Takes off a course, at its left end, what stands in the way of other work that reaches `by` mm in.
 * Where a joint of the course falls beside that work within the limits, whole pieces are left out and
 * the rest stays where it is; else the piece across the line is cut, with the next where that leaves too little.
 */
export function trimLeft(run: LaidRun, cutback: Cutback): Trimmed {
  const { by, limits } = cutback;
  const start = run.from + run.endJoints.left * run.joint;
  const dropped = drop(run.groups, run.joint, by + limits.most - start);
  const at = start + dropped.width;
  const end = run.from + run.length;
  if (at >= by + limits.least - SAME) {
    const from = at - run.joint;
    return { run: startingAt(run, from, end, dropped.rest), clean: true };
  }
  const across = first(dropped.rest);
  if (!across) return { run: startingAt(run, Math.min(by, end), end, []), clean: false };
  const left = at + across.piece.length - (by + run.joint);
  const { pieces, rest } = cutTo(left, across.rest, run.joint, cutback);
  const groups = pieces.length > 0 ? [{ pieces, times: 1 }, ...rest] : rest;
  return { run: startingAt(run, by, end, groups), clean: false, cut: pieces[0]?.piece };
}

/** What is left of the piece across the line, mm; where that is too little to cut, of that piece and the next together. */
function cutTo(
  left: number,
  rest: PieceGroup[],
  joint: number,
  { known, limits, longest }: Cutback,
): { pieces: PieceRun[]; rest: PieceGroup[] } {
  const next = left < limits.leastCut - SAME ? first(rest) : null;
  if (!next) return { pieces: left > SAME ? [leftOver(left, known)] : [], rest };
  const both = left + joint + next.piece.length;
  if (both <= longest + SAME) return { pieces: [leftOver(both, known)], rest: next.rest };
  return { pieces: [{ ...leftOver((both - joint) / 2, known), count: 2 }], rest: next.rest };
}

function startingAt(run: LaidRun, from: number, end: number, groups: PieceGroup[]): LaidRun {
  const endJoints = { ...run.endJoints, left: 1 as const };
  return { ...run, from, length: Math.max(0, end - from), endJoints, groups };
}

/** A course seen from the other side of the wall; `length` is its stretch's, mm. */
export function mirrorRun(run: LaidRun, length: number): LaidRun {
  const groups = [...run.groups].reverse().map(({ pieces, times }) => ({
    pieces: [...pieces].reverse(),
    times,
  }));
  const { left, right } = run.endJoints;
  return {
    ...run,
    from: length - run.from - run.length || 0,
    endJoints: { left: right, right: left },
    groups,
  };
}

/** {@link trimLeft} at the other end of a stretch `length` mm long. */
export function trimRight(run: LaidRun, length: number, cutback: Cutback): Trimmed {
  const trimmed = trimLeft(mirrorRun(run, length), cutback);
  return { ...trimmed, run: mirrorRun(trimmed.run, length) };
}
