/** A laid course cut off against something that is let into it. */
import type { LaidRun, PieceGroup, PieceRun, WallSpec } from '../types';
import { type Beside, closed, SAME } from './closing';

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

const nothing = (run: LaidRun, from: number): LaidRun => ({
  ...run,
  from,
  length: 0,
  endJoints: { left: 0, right: 0 },
  groups: [],
});

/** A course as far as `keep` mm from its segment's left end, with a joint against what stands there. */
export function upTo(run: LaidRun, keep: number, spec: WallSpec, beside?: Beside): LaidRun {
  const { joint, from, endJoints } = run;
  // A course may be told in parts, where another wall runs in: those that do not reach so far stay as they are.
  const last = keep - (1 - endJoints.right) * joint;
  if (run.groups.length === 0 || from + run.length <= last + SAME) return run;
  if (from >= keep - SAME) return nothing(run, keep);
  const start = from + endJoints.left * joint;
  const { kept, at } = endingBy(run.groups, joint, start, keep - joint);
  const groups = closed(kept, { at, edge: keep - joint, joint }, spec, beside);
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
