/** Walls on plan, for tests: where each piece of a course lies on the ground, and whether pieces leave a gap or overlap. */
import { type PlacedPiece, placeCourse, type SettingOut } from '../../server/engine/setting-out';

/** Mm on the ground. */
export interface Box {
  x: number;
  y: number;
  right: number;
  top: number;
}

/** A wall's left end on the ground, and which way it runs: 0 east, 1 north, 2 west, 3 south. Its inside is on its left hand. */
export interface Standing {
  x: number;
  y: number;
  way: 0 | 1 | 2 | 3;
}

const ALONG = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

export function onGround(piece: PlacedPiece, { x, y, way }: Standing): Box {
  const [ax, ay] = ALONG[way];
  const [ix, iy] = ALONG[(way + 1) % 4]!;
  const corner = (along: number, in_: number) => [
    x + ax * along + ix * in_,
    y + ay * along + iy * in_,
  ];
  const [x1, y1] = corner(piece.x, piece.y) as [number, number];
  const [x2, y2] = corner(piece.x + piece.along, piece.y + piece.across) as [number, number];
  return {
    x: Math.min(x1, x2),
    y: Math.min(y1, y2),
    right: Math.max(x1, x2),
    top: Math.max(y1, y2),
  };
}

export interface Stood {
  out: SettingOut;
  at: Standing;
}

export const courseOnGround = (walls: readonly Stood[], course: number): Box[] =>
  walls.flatMap(({ out, at }) => placeCourse(out, course).map((piece) => onGround(piece, at)));

/** Four walls round a yard, over all, from the south-west corner round by the east: each one's right end meets the next one's left. */
export const ring = (outs: readonly SettingOut[]): Stood[] => {
  const [south, east] = outs.map((out) => out.spec.length) as [number, number];
  const at: Standing[] = [
    { x: 0, y: 0, way: 0 },
    { x: south, y: 0, way: 1 },
    { x: south, y: east, way: 2 },
    { x: 0, y: east, way: 3 },
  ];
  return outs.map((out, i) => ({ out, at: at[i]! }));
};

export const areaOf = ({ x, y, right, top }: Box) => (right - x) * (top - y);

function meet(a: Box, b: Box): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.x, b.x);
  const high = Math.min(a.top, b.top) - Math.max(a.y, b.y);
  return wide > 0 && high > 0 ? Math.min(wide, high) : 0;
}

/** How far the worst two pieces lie in one another, mm. */
export function worstOverlap(boxes: readonly Box[]): number {
  let worst = 0;
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1)) worst = Math.max(worst, meet(a, b));
  return worst;
}

/** Area of a box that lies farther than half a joint from every piece, mm²: 0 where the work is closed up to its joints. */
export function openArea(box: Box, boxes: readonly Box[], joint: number): number {
  const reach = joint / 2 + 1e-3;
  const wide = boxes.map((b) => ({
    x: b.x - reach,
    y: b.y - reach,
    right: b.right + reach,
    top: b.top + reach,
  }));
  const near = wide.filter((b) => meet(b, box) > 0);
  const edges = (low: number, high: number, at: number[]) =>
    [...new Set([low, ...at.filter((v) => v > low && v < high), high])].sort((a, b) => a - b);
  const xs = edges(
    box.x,
    box.right,
    near.flatMap((b) => [b.x, b.right]),
  );
  const ys = edges(
    box.y,
    box.top,
    near.flatMap((b) => [b.y, b.top]),
  );
  let open = 0;
  for (const [i, x] of xs.slice(0, -1).entries())
    for (const [k, y] of ys.slice(0, -1).entries()) {
      const [mx, my] = [(x + xs[i + 1]!) / 2, (y + ys[k + 1]!) / 2];
      const covered = near.some((b) => mx > b.x && mx < b.right && my > b.y && my < b.top);
      if (!covered) open += (xs[i + 1]! - x) * (ys[k + 1]! - y);
    }
  return open;
}
