import type { FacePiece, LaidRun, PieceGroup, Segment } from '../types';

/** One piece of a row: mm along the wall. */
export interface RowPiece {
  piece: FacePiece;
  from: number;
  to: number;
}

function widthOf(group: PieceGroup, joint: number): number {
  return group.pieces.reduce((sum, p) => sum + p.count * (p.length + joint), 0);
}

/** How many pieces a run has. */
export function piecesIn(run: LaidRun): number {
  return run.groups.reduce(
    (sum, { pieces, times }) => sum + times * pieces.reduce((n, p) => n + p.count, 0),
    0,
  );
}

/** Adds the pieces of one turn of a group that reach into `low` to `high`. */
function addTurn(
  group: PieceGroup,
  start: number,
  joint: number,
  [low, high]: readonly [number, number],
  into: RowPiece[],
): void {
  let at = start;
  for (const { piece, length, count } of group.pieces) {
    const pitch = length + joint;
    const first = Math.min(count, Math.max(0, Math.floor((low - at) / pitch)));
    for (let i = first; i < count && at + i * pitch < high; i++) {
      const from = at + i * pitch;
      if (from + length > low) into.push({ piece, from, to: from + length });
    }
    at += count * pitch;
  }
}

/**
 * The pieces of one course of a segment that reach into `low` to `high`, mm along the wall. Repeats
 * outside it are stepped over, not walked.
 */
export function bricksOf(
  segment: Segment,
  course: number,
  low = Number.NEGATIVE_INFINITY,
  high = Number.POSITIVE_INFINITY,
): RowPiece[] {
  const found: RowPiece[] = [];
  const run = segment.runs[course % segment.runs.length]!;
  let at = segment.from + run.from + run.endJoints.left * run.joint;
  for (const group of run.groups) {
    const width = widthOf(group, run.joint);
    const first = Math.min(group.times, Math.max(0, Math.floor((low - at) / width)));
    for (let i = first; i < group.times && at + i * width < high; i++)
      addTurn(group, at + i * width, run.joint, [low, high], found);
    at += group.times * width;
  }
  return found;
}
