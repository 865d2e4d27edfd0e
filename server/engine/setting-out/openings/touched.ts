/** Bricks of a wall that an arch cuts. */
import { bricksOf, type RowPiece } from '../place/face';
import type { SettingOut } from '../types';
import type { ArchCourse, Standing } from './gaps';

/** Bricks touched by less than this are not cut, mm. */
const TOUCH = 1;

/** Bricks in the face that are cut to the skewbacks and to the extrados. */
export interface Touched {
  skewback: number;
  extrados: number;
}

function countIn(
  out: SettingOut,
  course: number,
  [low, high]: readonly [number, number],
  cuts: (piece: RowPiece) => boolean,
): number {
  let count = 0;
  for (const { from, to, segments } of out.bands)
    if (course >= from && course < to)
      for (const segment of segments)
        if (segment.from < high && segment.to > low)
          for (const piece of bricksOf(segment, course, low, high)) if (cuts(piece)) count++;
  return count;
}

/** Counts in the face of the wall as it is carved, on both sides: what stands against the arch cut, and what its curve runs through. */
export function touchedBy(
  out: SettingOut,
  courses: readonly ArchCourse[],
  { middle }: Standing,
): Touched {
  const touched = { skewback: 0, extrados: 0 };
  const { perpend: joint } = out.spec.joints;
  for (const { course, most, skewback } of courses) {
    const reach = most + joint - TOUCH;
    const within = [middle - most - joint - TOUCH, middle + most + joint + TOUCH] as const;
    const run = (piece: RowPiece) => piece.to > middle - reach && piece.from < middle + reach;
    const cuts = (piece: RowPiece) => piece.piece === 'cut' || run(piece);
    touched[skewback ? 'skewback' : 'extrados'] += countIn(out, course, within, cuts);
  }
  return touched;
}
