/**
 * The pattern of a longer stretch beside an end at which it is to be cut off. Everything is seen from
 * that end inward, in mm, so that both ends are one.
 */
import { bricksOf } from '../../place/face';
import type { FacePiece, Segment } from '../../types';

/** Bricks from the end within which perpends are looked at. */
export const REACH = 4;

/** A brick of the pattern: from its near side to its far one, from the end inward. */
export interface NearPiece {
  readonly piece: FacePiece;
  readonly from: number;
  readonly to: number;
}

export type Side = 'left' | 'right';

/** The bricks of one course that reach past an end at `at` inward, the nearest first, as far as `far` mm. */
export function piecesFrom(
  whole: Segment,
  course: number,
  at: number,
  side: Side,
  far: number,
): NearPiece[] {
  const [low, high] = side === 'left' ? [at, at + far] : [at - far, at];
  const pieces = [...bricksOf(whole, course, low, high)];
  if (side === 'left')
    return pieces.map(({ piece, from, to }) => ({ piece, from: from - at, to: to - at }));
  return pieces.reverse().map(({ piece, from, to }) => ({ piece, from: at - to, to: at - from }));
}
