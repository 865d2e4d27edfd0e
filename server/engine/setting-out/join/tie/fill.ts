/** What is laid in the room made for courses that run in, found by search on a grid of quarter bricks. */
import { quarterOf } from '../../piers/place';
import type { Ground, Region } from '../../piers/region';
import { fillingsAndMore } from '../../piers/search';
import type { GridPiece } from '../../piers/types';
import type { Area, PlacedPiece, SettingOut } from '../../types';
import type { Room } from './open';
import { canPart } from './part';

/** Further from a quarter brick than this no piece is, in quarters: what is lost in the joints. */
const OFF = 0.2;
/** Mm: as near as sums of fractions are. */
const EXACT = 1e-3;

const BOUNDS = { enough: 160, tries: 4_000 };

interface Grid {
  readonly region: Region;
  /** Quarters from the left of the region to the wall that runs in. */
  readonly left: number;
  /** Mm that the room is longer than its quarters on the left and on the right. */
  readonly off: readonly [number, number];
  readonly quarter: number;
  /** Quarters that the wall that runs in takes. */
  readonly wide: number;
}

/** Further than this from where it was no piece of the front may come to lie, mm. */
export const SAME = 3;

export interface Filled {
  readonly pieces: readonly PlacedPiece[];
  readonly cost: number;
}

export interface Fills {
  readonly ways: readonly Filled[];
  /** There may be dearer ways. */
  readonly more: boolean;
}

const NONE: Fills = { ways: [], more: false };

/**
 * Ways to fill the room for no more than `cost`, the best first, its front as it was; none where its bricks do not lie on
 * quarter bricks from the wall that runs in. What cannot be laid so is not searched for: at most places along a wall nothing can.
 * @param mayPart whether a joint could stand in the back of the wall there, mm along it
 */
export function fills(
  out: SettingOut,
  room: Room,
  box: Area,
  cost: number,
  mayPart: (x: number) => boolean,
): Fills {
  const grid = gridOf(out, room, box);
  const front = grid && frontOf(room, grid, out, box);
  if (!front) return NONE;
  const half = out.spec.joints.perpend / 2;
  const barred = (piece: GridPiece) => {
    if (piece.y === 0 && front.get(piece.x) !== piece.w) return true;
    if (!jointFits(piece, grid, out)) return true;
    const inBack = piece.y + piece.d >= grid.region.depth;
    return inBack && !mayPart(placed(piece, grid, out, box).x - half);
  };
  if (!canPart(grid.region, barred)) return NONE;
  const { plans, more } = fillingsAndMore(grid.region, { ...BOUNDS, cost, barred });
  const inPlace = (piece: GridPiece) => placed(piece, grid, out, box);
  return { more, ways: plans.map((p) => ({ cost: p.cost, pieces: p.pieces.map(inPlace) })) };
}

/** How wide each piece of the front is, by its column; nothing where one would not lie where it did. */
function frontOf(
  { freed }: Room,
  grid: Grid,
  out: SettingOut,
  box: Area,
): ReadonlyMap<number, number> | undefined {
  const { perpend } = out.spec.joints;
  const front = new Map<number, number>();
  for (const { piece, x, along, y } of freed) {
    if (y >= SAME) continue;
    const from = Math.round((x - box.x) / grid.quarter) + grid.left;
    const w = Math.round((along + perpend) / grid.quarter);
    const now = placed({ piece, x: from, y: 0, w, d: 2 }, grid, out, box);
    if (Math.abs(now.x - x) >= SAME || Math.abs(now.along - along) >= SAME) return undefined;
    front.set(from, w);
  }
  return front;
}

/** Whether the joint that a piece shares its part of the room's odd mm with lies between the least and the most. */
function jointFits(piece: GridPiece, { left, off, region, wide }: Grid, out: SettingOut): boolean {
  const { limits, joints } = out.spec;
  const column = piece.x - left;
  const right = region.width - left;
  let joint = joints.perpend;
  if (column < 0) joint -= (off[0] * (Math.min(0, column + piece.w) - column)) / left;
  else if (column >= wide && right > wide) joint += (off[1] * piece.w) / (right - wide);
  const least = Math.min(limits.least, joints.perpend) - EXACT;
  return joint >= least && joint <= Math.max(limits.most, joints.perpend) + EXACT;
}

/** Nothing where it is too far from whole quarters. */
function whole(mm: number, quarter: number): number | undefined {
  const near = Math.round(mm / quarter);
  return Math.abs(mm / quarter - near) > OFF ? undefined : near + 0;
}

function gridOf(out: SettingOut, { freed }: Room, box: Area): Grid | undefined {
  const { unit, joints } = out.spec;
  const quarter = quarterOf(unit, joints.perpend);
  const from = Math.min(...freed.map((p) => p.x)) - box.x;
  const to = Math.max(...freed.map((p) => p.x + p.along)) + joints.perpend - box.x;
  const open = new Set<string>();
  for (const piece of freed) {
    const cells = cellsOf(piece, box.x, quarter, joints.perpend);
    if (!cells) return undefined;
    for (const cell of cells) open.add(cell);
  }
  const low = whole(from, quarter);
  const high = whole(to, quarter);
  if (low === undefined || high === undefined) return undefined;
  const off = [from - low * quarter, to - high * quarter] as const;
  const wide = Math.round((box.width + joints.perpend) / quarter);
  const region = regionOf(out, box, { quarter, wide, low, high, open });
  return { region, left: -low, off, quarter, wide };
}

function cellsOf(
  { x, y, along, across }: PlacedPiece,
  start: number,
  quarter: number,
  joint: number,
): string[] | undefined {
  const [a, b] = [whole(x - start, quarter), whole(x + along + joint - start, quarter)];
  if (a === undefined || b === undefined) return undefined;
  const [c, d] = [Math.round(y / quarter), Math.round((y + across + joint) / quarter)];
  const cells: string[] = [];
  for (let i = a; i < b; i++) for (let k = c; k < d; k++) cells.push(`${i} ${k}`);
  return cells;
}

interface Span {
  readonly quarter: number;
  readonly wide: number;
  readonly low: number;
  readonly high: number;
  readonly open: ReadonlySet<string>;
}

function regionOf(out: SettingOut, box: Area, { quarter, wide, low, high, open }: Span): Region {
  const joint = out.spec.joints.perpend;
  const depth = Math.round((out.thickness + joint) / quarter);
  const begins = Math.round(box.y / quarter);
  const at = (column: number, y: number): Ground => {
    const x = column + low;
    const across = x >= 0 && x < wide;
    if (y < 0) return 'air';
    if (y >= depth) return across ? 'wall' : 'air';
    if (across && y >= begins) return 'wall';
    return open.has(`${x} ${y}`) ? 'fill' : 'wall';
  };
  return { width: high - low, depth, at };
}

/** Pieces beside the wall that runs in share what the room is longer or shorter by among their joints. */
function placed(
  piece: GridPiece,
  { left, off, quarter, region, wide }: Grid,
  out: SettingOut,
  box: Area,
): PlacedPiece {
  const joint = out.spec.joints.perpend;
  const column = piece.x - left;
  const right = region.width - left;
  const beyond = column + piece.w - wide;
  const share =
    column < 0
      ? off[0] * (column / -left)
      : column >= wide && right > wide
        ? off[1] * (beyond / (right - wide))
        : 0;
  return {
    piece: piece.piece,
    x: box.x + column * quarter + share,
    y: piece.y * quarter,
    along: piece.w * quarter - joint,
    across: piece.d * quarter - joint,
  };
}
