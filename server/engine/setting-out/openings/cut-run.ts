/** A laid course cut off against something that is let into it. */
import type { LaidRun, PieceGroup, PieceRun, WallSpec } from '../types';

/** Positions nearer than this are the same, mm. */
export const SAME = 1e-6;

const widthOf = (pieces: readonly PieceRun[], joint: number) =>
  pieces.reduce((sum, { length, count }) => sum + count * (length + joint), 0);

/** The pieces of `groups` that end by `edge`, laid from `at`, and where the next would begin. Repeats are not walked. */
export function endingBy(groups: readonly PieceGroup[], joint: number, at: number, edge: number) {
  const kept: PieceGroup[] = [];
  const fits = (room: number, each: number, most: number) =>
    each > 0 ? Math.min(most, Math.max(0, Math.floor((room + joint + SAME) / each))) : most;
  for (const { pieces, times } of groups) {
    const whole = widthOf(pieces, joint);
    const turns = fits(edge - at, whole, times);
    if (turns > 0) kept.push({ pieces, times: turns });
    at += turns * whole;
    if (turns === times) continue;
    const part: PieceRun[] = [];
    for (const piece of pieces) {
      const count = fits(edge - at, piece.length + joint, piece.count);
      if (count > 0) part.push({ ...piece, count });
      at += count * (piece.length + joint);
      if (count < piece.count) break;
    }
    if (part.length) kept.push({ pieces: part, times: 1 });
    break;
  }
  return { kept, at };
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

const cutTo = (length: number, count: number): PieceGroup => ({
  pieces: [{ piece: 'cut', length, count }],
  times: 1,
});

/** Fills `room` mm, from where the next piece begins to the edge, with a cut; with one longer or two like ones where it would be too short. */
function closed(
  groups: readonly PieceGroup[],
  room: number,
  joint: number,
  { unit, limits }: WallSpec,
): PieceGroup[] {
  const endJoint = room + 2 * joint;
  if (endJoint <= limits.most + SAME) return [...groups];
  if (room >= limits.leastCut - SAME && room > SAME) return [...groups, cutTo(room, 1)];
  const { rest, last } = withoutLast(groups);
  if (!last) return room > SAME ? [cutTo(room, 1)] : [];
  const both = last.length + joint + room;
  if (both <= unit.length + SAME) return [...rest, cutTo(both, 1)];
  return [...rest, cutTo((both - joint) / 2, 2)];
}

/** A course as far as `keep` mm from its segment's left end, with a joint against what stands there. */
export function upTo(run: LaidRun, keep: number, spec: WallSpec): LaidRun {
  const { joint, from, endJoints } = run;
  const start = from + endJoints.left * joint;
  const { kept, at } = endingBy(run.groups, joint, start, keep - joint);
  const groups = closed(kept, keep - joint - at, joint, spec);
  // A joint against what stands there that is wider than the others is no part of their run, but of the wall.
  const laid = groups.reduce((sum, { pieces, times }) => sum + times * widthOf(pieces, joint), 0);
  const over = groups.length ? keep - start - laid : 0;
  const extra = Math.abs(over) > SAME ? over : 0;
  const cut: LaidRun = {
    from,
    length: keep - from - extra,
    joint,
    endJoints: { left: endJoints.left, right: 1 },
    groups,
  };
  return extra === 0 ? cut : { ...cut, extra };
}

/** The course seen from behind, so that its right end is its left. `width` is its segment's. */
export function mirrored(run: LaidRun, width: number): LaidRun {
  return {
    ...run,
    from: width - run.from - run.length,
    endJoints: { left: run.endJoints.right, right: run.endJoints.left },
    groups: [...run.groups]
      .reverse()
      .map(({ pieces, times }) => ({ pieces: [...pieces].reverse(), times })),
  };
}
