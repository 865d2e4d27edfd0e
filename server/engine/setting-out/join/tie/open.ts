/** One course of the wall that goes on, opened for courses that run in: which of its bricks make room. */
import { placeCourse } from '../../place/course';
import { bricksOf } from '../../place/face';
import type { Area, PlacedPiece, SettingOut } from '../../types';
import { brickOf } from './cross';
import type { Window } from './types';

/** So far on either side of the other wall a course is looked at, in bricks. */
const REACH = 3;
/** Nearer than this is at the same place, mm. */
const SAME = 1;

export interface Room {
  readonly windows: readonly (Window | undefined)[];
  /** Taken out, to be laid otherwise. */
  readonly freed: readonly PlacedPiece[];
  /** In the windows, but laid again just as they were. */
  readonly kept: readonly PlacedPiece[];
  /** Round about, left where they are. */
  readonly round: readonly PlacedPiece[];
}

interface RowAt {
  readonly y: number;
  readonly back: number;
}

function rowsIn(out: SettingOut, course: number): (RowAt | undefined)[] {
  const half = brickOf(out) / 2;
  let y = 0;
  return out.rows.map(({ depths }) => {
    const deep = depths[course % depths.length]!;
    if (deep === 0) return undefined;
    const row = { y, back: y + deep * half - out.spec.joints.perpend };
    y += deep * half;
    return row;
  });
}

/** Pieces in the way of `box`, those beside it on the left and on the right with them; nothing where the stretch ends too near. */
function windowIn(
  out: SettingOut,
  row: number,
  course: number,
  box: Area,
  wider: readonly [number, number],
): Window | undefined {
  const { perpend } = out.spec.joints;
  const reach = REACH * brickOf(out);
  const [low, high] = [box.x - reach, box.x + box.width + reach];
  const band = out.rows[row]!.bands.find((b) => course >= b.from && course < b.to);
  const segment = band?.segments.find((s) => s.from < box.x && s.to > box.x + box.width);
  if (!segment) return undefined;
  const pieces = [...bricksOf(segment, course, low, high)];
  const blocks = ({ from, to }: { from: number; to: number }) =>
    to > box.x - perpend + SAME && from < box.x + box.width + perpend - SAME;
  const first = pieces.findIndex(blocks) - wider[0];
  const last = pieces.findLastIndex(blocks) + wider[1];
  // One piece more on either side stays, so that the room has bricks of the wall to both hands.
  if (first < 1 || last > pieces.length - 2) return undefined;
  return { from: pieces[first]!.from, to: pieces[last]!.to };
}

/** Makes room for `box` (of the courses that run in, joints apart), `wider` so many pieces on the left and right of it. */
export function roomIn(
  out: SettingOut,
  course: number,
  box: Area,
  wider: readonly [number, number],
): Room | undefined {
  const { perpend } = out.spec.joints;
  const rows = rowsIn(out, course);
  const touched = (at: RowAt | undefined) => at && at.back > box.y - perpend + SAME;
  const windows = rows.map((at, row) =>
    touched(at) ? windowIn(out, row, course, box, wider) : undefined,
  );
  if (rows.some((at, row) => touched(at) && !windows[row])) return undefined;
  const reach = REACH * brickOf(out);
  const near = placeCourse(out, course, box.x - reach, box.x + box.width + reach);
  const [freed, kept, round]: [PlacedPiece[], PlacedPiece[], PlacedPiece[]] = [[], [], []];
  for (const piece of near) {
    const row = rows.findIndex((at) => at && piece.y >= at.y - SAME && piece.y < at.back);
    const window = windows[row];
    const inside =
      window && piece.x >= window.from - SAME && piece.x + piece.along <= window.to + SAME;
    if (!inside) round.push(piece);
    else if (piece.y + piece.across > box.y - perpend + SAME) freed.push(piece);
    else kept.push(piece);
  }
  return { windows, freed, kept, round };
}
