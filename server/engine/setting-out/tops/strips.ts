/** A strip of concrete under a wall, mm, the wall on its middle line. */
export interface Strip {
  width: number;
  depth: number;
  /** Through the wall that stands on it. */
  wall: number;
}

/** Depths nearer than this are one depth, mm. */
const SAME = 0.5;

/**
 * Mm from the outer corner of two walls to where the strip of one is measured to; negative where it goes on past.
 * Of strips alike in depth each ends on the middle line of the other: the whole corner, once (mean girth, as walls
 * round a building are measured; common practice). Else the deeper one goes through and the other stops at its side.
 */
export function stripAtCorner(own: Strip, other: Strip): number {
  if (Math.abs(own.depth - other.depth) < SAME) return other.wall / 2;
  const side = own.depth < other.depth ? 1 : -1;
  return (other.wall + side * other.width) / 2;
}

/** Mm of a strip that lie in the strip of the wall whose face it runs into, as far as that one is as deep. */
export function stripInFace(own: Strip, other: Strip): number {
  const out = Math.max(0, (other.width - other.wall) / 2);
  return own.depth > 0 ? out * Math.min(1, Math.max(0, other.depth) / own.depth) : 0;
}
