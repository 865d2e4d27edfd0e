/** What is laid in the room made for courses that run in, found by search on a grid of quarter bricks. */
import { quarterOf } from '../../piers/place';
import type { Ground, Region } from '../../piers/region';
import { fillings } from '../../piers/search';
import type { GridPiece } from '../../piers/types';
import type { Area, PlacedPiece, SettingOut } from '../../types';
import type { Room } from './open';

/** Further from a quarter brick than this no piece is, in quarters: what is lost in the joints. */
const OFF = 0.2;

const BOUNDS = { enough: 160, tries: 12_000 };

interface Grid {
  readonly region: Region;
  /** Quarters from the left of the region to the wall that runs in. */
  readonly left: number;
  /** Mm that the room is longer than its quarters on the left and on the right. */
  readonly off: readonly [number, number];
  readonly quarter: number;
}

export interface Filled {
  readonly pieces: readonly PlacedPiece[];
  readonly cost: number;
}

/** Ways to fill the room for no more than `cost`, the best first; none where its bricks do not lie on quarter bricks from the wall that runs in. */
export function fills(out: SettingOut, room: Room, box: Area, cost: number): Filled[] {
  const grid = gridOf(out, room, box);
  if (!grid) return [];
  return fillings(grid.region, { ...BOUNDS, cost }).map((filling) => {
    const pieces = filling.pieces.map((piece) => placed(piece, grid, out, box));
    return { pieces, cost: filling.cost };
  });
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
  return { region: regionOf(out, box, quarter, low, high, open), left: -low, off, quarter };
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

function regionOf(
  out: SettingOut,
  box: Area,
  quarter: number,
  low: number,
  high: number,
  open: ReadonlySet<string>,
): Region {
  const joint = out.spec.joints.perpend;
  const depth = Math.round((out.thickness + joint) / quarter);
  const wide = Math.round((box.width + joint) / quarter);
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
  { left, off, quarter, region }: Grid,
  out: SettingOut,
  box: Area,
): PlacedPiece {
  const joint = out.spec.joints.perpend;
  const column = piece.x - left;
  const right = region.width - left;
  const wide = Math.round((box.width + joint) / quarter);
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
