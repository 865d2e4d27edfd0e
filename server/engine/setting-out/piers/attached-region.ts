/** What each course of an attached pier has to fill: its own plan, and as much of the wall as the wall leaves open there. */
import { type Perpend, perpendAt } from './joints';
import type { Region } from './region';

/** Where the wall stops beside a pier in one course, quarter bricks from the pier’s left side; no wall: the pier has a face there. */
export interface Edges {
  readonly left: number | undefined;
  readonly right: number | undefined;
  /** Joints of the wall itself near the pier, the two edges among them. */
  readonly joints?: readonly number[];
}

/** Half bricks: along the wall, through the wall, and how far the pier stands out before it and behind it. */
export interface AttachedShape {
  readonly width: number;
  readonly wall: number;
  readonly front: number;
  readonly back: number;
}

/** Quarter bricks of room on either side, for pieces that reach into the wall. */
export const ROOM = 4;

/** Rows of the wall itself, front to back. */
export function wallRows({ front, wall }: AttachedShape): readonly [number, number] {
  return [2 * front, 2 * (front + wall)];
}

/** The plan of a pier in its wall by quarter bricks, with some of the wall on either side to bond with. */
export function attachedRegion(shape: AttachedShape, edges: Edges): Region {
  const across = 2 * shape.width;
  const depth = 2 * (shape.front + shape.wall + shape.back);
  const [near, far] = wallRows(shape);
  const from = edges.left ?? 0;
  const to = edges.right ?? across;
  return {
    width: across + 2 * ROOM,
    depth,
    at: (column, y) => {
      const x = column - ROOM;
      if (y < 0 || y >= depth) return 'air';
      if (y < near || y >= far) return x >= 0 && x < across ? 'fill' : 'air';
      if (x >= from && x < to) return 'fill';
      const joined = x < from ? edges.left : edges.right;
      return joined === undefined ? 'air' : 'wall';
    },
  };
}

/** Joints of the wall itself that show beside the pier: its courses have to lap them too. */
export function wallJoints(shape: AttachedShape, { joints = [] }: Edges): Perpend[] {
  const [near, far] = wallRows(shape);
  const across = 2 * shape.width;
  const shown = joints.filter((x) => x >= -ROOM && x <= across + ROOM);
  const beside = shown.filter((x) => x <= 0 || x >= across);
  const on = (side: 'front' | 'back', line: number, out: number) =>
    (out ? beside : shown).map((x) => perpendAt(side, line, x + ROOM));
  return [...on('front', near, shape.front), ...on('back', far, shape.back)];
}
