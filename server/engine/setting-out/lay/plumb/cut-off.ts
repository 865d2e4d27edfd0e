/**
 * A stretch laid in the perpends of a longer one that runs past it, as if that went on through the openings, and
 * cut at the reveals. So its perpends stay plumb with those above and below, whatever its length.
 */
import type { LaidRun, PieceGroup } from '../../types';
import type { Clear } from '../bands';
import { together } from './both-ends';
import { type Closing, type CutOff, ownEnds, SAME } from './cutting';
import type { Fill } from './fills';
import type { Side } from './near-end';
import { endsChosen } from './one-end';
import { sliced } from './slice';

/** Up to this many bricks both ends of a course are chosen together. */
const SHORT = 4;

export interface Cropped {
  readonly runs: readonly LaidRun[];
  /** Whether anything had to be cut or put in at either end. */
  readonly cut: { readonly left: boolean; readonly right: boolean };
}

/** Null where the stretch ends toothed within the longer one, or nothing decent closes a course. */
export function cutOff(what: CutOff): Cropped | null {
  const { clear, whole, craft } = what;
  const own = ownEnds(clear, whole);
  if ((!own.left && clear.left === 'toothed') || (!own.right && clear.right === 'toothed'))
    return null;
  const short = clear.to - clear.from < SHORT * craft.grid.module && !own.left && !own.right;
  const closings = short ? together(what) : apart(what, own);
  if (!closings) return null;
  const runs = closings.map((closing, i) => runOf(what, closing, whole.runs[i]!));
  if (runs.some((run) => run === null)) return null;
  const cut = (side: Side) => closings.some((closing) => (closing[side]?.pieces.length ?? 0) > 0);
  return { runs: runs as LaidRun[], cut: { left: cut('left'), right: cut('right') } };
}

/** The two ends each by itself. */
function apart(what: CutOff, own: { left: boolean; right: boolean }): Closing[] | null {
  const left = own.left ? null : endsChosen(what, 'left');
  const right = own.right ? null : endsChosen(what, 'right');
  if ((!own.left && !left) || (!own.right && !right)) return null;
  return what.whole.runs.map((_, i) => ({ left: left?.[i] ?? null, right: right?.[i] ?? null }));
}

function runOf(
  { clear, whole, limits }: CutOff,
  { left, right }: Closing,
  run: LaidRun,
): LaidRun | null {
  const by = clear.from - whole.from;
  const length = clear.to - clear.from;
  const low = left ? by + left.resume : Number.NEGATIVE_INFINITY;
  const high = right ? by + length - right.resume : Number.POSITIVE_INFINITY;
  const kept = high > low + SAME ? sliced(run, low, high) : [];
  const put = (pieces: Fill['pieces']): PieceGroup[] =>
    pieces.length ? [{ pieces, times: 1 }] : [];
  const groups = [
    ...put(left?.pieces ?? []),
    ...kept,
    ...put([...(right?.pieces ?? [])].reverse()),
  ];
  const from = left ? 0 : run.from;
  const to = right ? length : run.from + run.length - by;
  const endJoints = {
    left: left ? jointAt(clear.left) : run.endJoints.left,
    right: right ? jointAt(clear.right) : run.endJoints.right,
  };
  const off = (left?.off ?? 0) + (right?.off ?? 0);
  const laid = { from, length: to - from, joint: run.joint, endJoints, groups };
  const joint = off === 0 ? run.joint : jointFor(laid);
  const within = joint >= limits.least - SAME && joint <= limits.most + SAME;
  return groups.length > 0 && (off === 0 || within) ? { ...laid, joint } : null;
}

/** The joint that makes what is laid fill its length, mm. */
function jointFor({ length, endJoints, groups }: LaidRun): number {
  const sum = { joints: endJoints.left + endJoints.right - 1, length: 0 };
  for (const { pieces, times } of groups)
    for (const piece of pieces) {
      sum.joints += times * piece.count;
      sum.length += times * piece.count * piece.length;
    }
  return sum.joints > 0 ? (length - sum.length) / sum.joints : Number.NaN;
}

const jointAt = (end: Clear['left']) => (end === 'stopped' ? 0 : 1);
