import { EPS } from './grid';
import type { Cell, CellGroup } from './tiling';

/** One course on the grid: groups left to right from `start`, in steps. */
export interface GridCourse {
  start: number;
  groups: readonly CellGroup[];
}

function widthOfCells(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cell.width, 0);
}

/** Where a course ends, in grid steps from the same place as its start. */
export function endOf({ start, groups }: GridCourse): number {
  return groups.reduce((at, { cells, times }) => at + widthOfCells(cells) * times, start);
}

/** Perpends strictly between `low` and `high`, in order; costs by what it returns, not by the course. */
function perpendsIn(course: GridCourse, low: number, high: number): number[] {
  const found: number[] = [];
  let at = course.start;
  for (const { cells, times } of course.groups) {
    const width = widthOfCells(cells);
    const skip = Math.min(times, Math.max(0, Math.floor((low - at) / width)));
    const stop = Math.min(times, Math.max(skip, Math.ceil((high - at) / width)));
    collect(found, cells, at + skip * width, stop - skip, low, high);
    at += width * times;
  }
  return found;
}

function collect(
  found: number[],
  cells: readonly Cell[],
  from: number,
  times: number,
  low: number,
  high: number,
): void {
  let at = from;
  for (let turn = 0; turn < times; turn++)
    for (const cell of cells) {
      at += cell.width;
      if (at > low + EPS && at < high - EPS) found.push(at);
    }
}

/** Least distance between a perpend of `a` and one of `b`, both in order; Infinity when either is empty. */
export function leastLap(a: readonly number[], b: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const apart = a[i]! - b[j]!;
    least = Math.min(least, Math.abs(apart));
    if (apart < 0) i++;
    else j++;
  }
  return least;
}

/** Least lap between neighbouring courses of a cycle, inside the window. A cycle of one lies on itself. */
export function cycleLap(courses: readonly GridCourse[], low: number, high: number): number {
  const joints = courses.map((course) => perpendsIn(course, low, high));
  return joints.reduce(
    (least, mine, i) => Math.min(least, leastLap(mine, joints[(i + 1) % joints.length]!)),
    Number.POSITIVE_INFINITY,
  );
}
