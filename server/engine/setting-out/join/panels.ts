/** A movement joint on plan, mm from the wall's left end. */
export interface MovementGap {
  readonly from: number;
  readonly width: number;
}

/** What a wall is parted into lengths by. */
export interface PanelQuestion {
  /** The whole wall, mm. */
  readonly length: number;
  /** The longest that a length of it may be, mm. */
  readonly most: number;
  /** Of a movement joint, mm. */
  readonly width: number;
  /** A brick with its joint, and the joint, mm. */
  readonly module: number;
  readonly joint: number;
  /** Joints that the wall has at its left end: 1 where it is butted or toothed. */
  readonly endJoint: 0 | 1;
  /** So many bricks are the shortest length that is parted off. */
  readonly least: number;
}

/** More movement joints than any wall has. */
export const MOST_GAPS = 1000;

/**
 * Movement joints that part a wall into as few lengths as `most` lets it, each a number of whole bricks and all as
 * nearly alike as that allows; the last takes what is left. Null when `most` is too short for any, or there would be
 * more than {@link MOST_GAPS}. None for a wall that is short enough.
 */
export function panelsOf(q: PanelQuestion): MovementGap[] | null {
  const { length, most, width, module, joint, endJoint } = q;
  if (length <= most) return [];
  const bricks = Math.floor((most + joint * (1 - endJoint)) / module);
  if (!(bricks >= Math.max(1, q.least))) return null; // not true of NaN either
  for (let count = Math.ceil((length + width) / (most + width)); count <= MOST_GAPS; count++) {
    const all = Math.round((length - width * (count - 1) + joint * count) / module);
    const gaps = parted(q, count, all);
    if (longestOf(gaps, length) <= most) return gaps;
  }
  return null;
}

/** The longer lengths come first, so that one of them or the last is the longest. */
function longestOf(gaps: readonly MovementGap[], length: number): number {
  const last = gaps.at(-1)!;
  return Math.max(gaps[0]!.from, length - last.from - last.width);
}

/** `all` bricks in `count` lengths as nearly alike as may be, the longer ones first. */
function parted({ width, module, joint, endJoint }: PanelQuestion, count: number, all: number) {
  const gaps: MovementGap[] = [];
  let at = endJoint * joint;
  for (let i = 0; i < count - 1; i++) {
    const bricks = Math.floor(all / count) + (i < all % count ? 1 : 0);
    const from = at + bricks * module - joint;
    gaps.push({ from, width });
    at = from + width;
  }
  return gaps;
}
