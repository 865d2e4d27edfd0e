import { isPatched } from '../count/patch';
import { through } from '../count/through';
import type { PlacedPiece, SettingOut, WallRow } from '../types';
import { bricksOf, type RowPiece } from './face';

/** What lies behind one piece of a row's face, itself included, on plan. `y` is the row's own front. */
function placed(piece: RowPiece, y: number, deep: 1 | 2, out: SettingOut): PlacedPiece[] {
  const { unit } = out.spec;
  const { from: x, to } = piece;
  const { count, piece: cutAs } = through(piece.piece, to - x, deep);
  const back = unit.length - unit.width;
  const across = deep === 2 && count === 1 ? unit.length : unit.width;
  return Array.from({ length: count }, (_, leaf) => {
    return { piece: cutAs, x, y: y + leaf * back, along: to - x, across };
  });
}

function depthIn({ depths }: WallRow, course: number): 0 | 1 | 2 {
  return depths[course % depths.length]!;
}

function reachesInto(low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY) {
  return ({ x, along }: PlacedPiece) => x < high && x + along > low;
}

/**
 * Every piece of one course of a wall on plan that reaches into `low` to `high`, mm along it: front,
 * core and back. Its piers are not in it. Single pieces exist only here and in drawings.
 */
export function placeCourse(
  out: SettingOut,
  course: number,
  low?: number,
  high?: number,
): PlacedPiece[] {
  const { unit, joints } = out.spec;
  const half = (unit.length + joints.perpend) / 2;
  const pieces: PlacedPiece[] = [];
  let y = 0;
  for (const row of out.rows) {
    const deep = depthIn(row, course);
    if (deep === 0) continue;
    for (const band of row.bands) {
      if (course < band.from || course >= band.to) continue;
      for (const segment of band.segments)
        for (const piece of bricksOf(segment, course, low, high))
          pieces.push(...placed(piece, y, deep, out));
    }
    y += deep * half;
  }
  return [...pieces, ...placePatches(out, course).filter(reachesInto(low, high))];
}

/** Of one course, what is laid beside its rows where another wall is bonded in. */
export function placePatches(out: SettingOut, course: number): PlacedPiece[] {
  return (out.patches ?? []).flatMap((patch) => (isPatched(patch, course) ? patch.pieces : []));
}
