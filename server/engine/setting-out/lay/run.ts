import type { LaidRun, PieceGroup, PieceRun } from '../types';
import type { Ends } from './craft';
import { EPS, type Grid } from './grid';
import { endOf, type GridCourse } from './laps';
import type { Cell, CellGroup } from './tiling';

/** Face length of a cell on the grid, mm; a cut that takes the rest is given `rest`. */
function lengthOf(cell: Cell, grid: Grid, rest: number): number {
  if (cell.piece !== 'cut') return grid.face[cell.piece];
  return cell.takesRest ? rest : cell.width * grid.step - grid.joint;
}

interface Sum {
  pieces: number;
  length: number;
  rests: number;
}

function sumOf(groups: readonly CellGroup[], grid: Grid): Sum {
  const sum = { pieces: 0, length: 0, rests: 0 };
  for (const { cells, times } of groups)
    for (const cell of cells) {
      sum.pieces += times;
      sum.length += times * lengthOf(cell, grid, 0);
      if (cell.takesRest) sum.rests += times;
    }
  return sum;
}

/** What cells without a cut were made into, by the grid they stand on. */
const made = new WeakMap<Grid, WeakMap<readonly Cell[], PieceGroup>>();

/** A long course takes the same few lists of cells over and over. */
function groupOf({ cells, times }: CellGroup, grid: Grid, rest: number): PieceGroup {
  if (times > 1 || cells.some((cell) => cell.takesRest)) return piecesOf(cells, times, grid, rest);
  let known = made.get(grid);
  if (!known) {
    known = new WeakMap();
    made.set(grid, known);
  }
  let group = known.get(cells);
  if (!group) {
    group = piecesOf(cells, 1, grid, 0);
    known.set(cells, group);
  }
  return group;
}

function piecesOf(cells: readonly Cell[], times: number, grid: Grid, rest: number): PieceGroup {
  const pieces: PieceRun[] = [];
  for (const cell of cells) {
    const length = lengthOf(cell, grid, rest);
    const last = pieces.at(-1);
    if (last && last.piece === cell.piece && last.length === length) last.count++;
    else pieces.push({ piece: cell.piece, length, count: 1 });
  }
  const only = pieces.length === 1 ? pieces[0]! : null;
  return only ? { pieces: [{ ...only, count: only.count * times }], times: 1 } : { pieces, times };
}

/** Cuts as long as the grid has them: joints alone then make up what the length is off it. */
function settled(groups: readonly CellGroup[]): CellGroup[] {
  return groups.map(({ cells, times }) => {
    const rest = cells.some((cell) => cell.takesRest);
    return {
      times,
      cells: rest ? cells.map((cell) => ({ piece: cell.piece, width: cell.width })) : cells,
    };
  });
}

/**
 * Turns a course on the grid into millimetres. `length` is the stretch's, `width` its steps. The
 * joint is what the pieces leave, or, where a cut takes the rest, the joint of the grid; `fits` says that
 * joints alone make up the length, so that no cut has to.
 */
export function toRun(
  course: GridCourse,
  length: number,
  width: number,
  ends: Ends,
  grid: Grid,
  fits = false,
): LaidRun {
  const laidIn = fits ? settled(course.groups) : course.groups;
  const from = snap(course.start) * grid.step || 0; // never -0
  const whole = length - from + snap(endOf(course) - width) * grid.step;
  const left = ends.left === 'stopped' ? 0 : 1;
  const right = ends.right === 'stopped' ? 0 : 1;
  const sum = sumOf(laidIn, grid);
  const joints = sum.pieces - 1 + left + right;
  const laid = sum.rests === 0 && joints > 0 ? (whole - sum.length) / joints : grid.joint;
  const rest = sum.rests > 0 ? (whole - sum.length - joints * grid.joint) / sum.rests : 0;
  const groups = laidIn.map((group) => groupOf(group, grid, rest));
  return { from, length: whole, joint: laid, endJoints: { left, right }, groups };
}

function snap(steps: number): number {
  const whole = Math.round(steps);
  return Math.abs(steps - whole) < EPS * 100 ? whole : steps;
}
