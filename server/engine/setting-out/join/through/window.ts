/** Of one course of a stretch: the whole bricks beside a wall that runs through, which may be laid otherwise for its sake. */
import { bricksOf } from '../../place/face';
import type { Segment, SettingOut } from '../../types';
import type { Laid } from './types';

/** Whole bricks on either side that may be laid otherwise, and where there is no other way. */
const NEAR = 2;
const MOST = 3;
/** So far on either side a course is looked at, in bricks. */
const REACH = 5;
const SAME = 1e-3;

export interface Window {
  /** What lies in it, left to right. */
  readonly pieces: readonly Laid[];
  /** Middles of the joints round about that stay, mm along the wall. */
  readonly round: readonly number[];
}

export interface Place {
  readonly from: number;
  readonly to: number;
}

/** How far on either side of a place courses may be laid otherwise, mm along the wall. */
export const reachOf = ({ spec }: SettingOut, { from, to }: Place): Place => {
  const reach = REACH * (spec.unit.length + spec.joints.perpend);
  return { from: from - reach, to: to + reach };
};

/** What else may be laid otherwise. */
export interface More {
  /** Pieces next to those that the other wall comes against, whatever they are: they may have been cut for it already. */
  readonly next: number;
  /** Bricks at the ends of a stretch, where there is no other way. */
  readonly ends: boolean;
  /** Ends of the wall at which they stay all the same. */
  readonly corners?: readonly ('left' | 'right')[];
}

/**
 * Nothing where the stretch has no brick there. The ends of a stretch stay as they are, unless the other wall comes against them
 * or `more` says otherwise.
 */
export function windowOf(
  segment: Segment,
  turn: number,
  out: SettingOut,
  at: Place,
  { next, ends, corners = [] }: More,
): Window | undefined {
  const { from: low, to: high } = reachOf(out, at);
  const joint = out.spec.joints.perpend;
  const pieces: Laid[] = [...bricksOf(segment, turn, low, high)];
  const near = (p: Laid) => p.to > at.from - joint - SAME && p.from < at.to + joint + SAME;
  const found = pieces.findIndex(near);
  if (found < 0) return undefined;
  let first = Math.max(0, found - next);
  let last = Math.min(pieces.length - 1, pieces.findLastIndex(near) + next);
  const isWhole = (i: number) =>
    i > 0 && i < pieces.length - 1 && isBrick(pieces[i]!, out.spec.unit.length);
  const most = ends ? MOST : NEAR;
  const start = first;
  const stop = last;
  while (start - first < most && isWhole(first - 1)) first--;
  while (last - stop < most && isWhole(last + 1)) last++;
  if (ends && first === 1 && start - first < MOST && !isCorner('left', segment, out, corners))
    first--;
  const isNext = last === pieces.length - 2 && last - stop < MOST;
  if (ends && isNext && !isCorner('right', segment, out, corners)) last++;
  const middles = (part: readonly Laid[]) =>
    part.slice(1).map((p, i) => (part[i]!.to + p.from) / 2);
  return {
    pieces: pieces.slice(first, last + 1),
    round: [...middles(pieces.slice(0, first + 1)), ...middles(pieces.slice(last))],
  };
}

const isBrick = ({ from, to }: Laid, length: number) => Math.abs(to - from - length) < SAME;

/** Ends nearer than this are the same end, mm. */
const SAME_END = 0.5;

function isCorner(
  side: 'left' | 'right',
  { from, to }: Segment,
  { spec }: SettingOut,
  corners: NonNullable<More['corners']>,
): boolean {
  const atEnd = side === 'left' ? from < SAME_END : to > spec.length - SAME_END;
  return atEnd && corners.includes(side);
}
