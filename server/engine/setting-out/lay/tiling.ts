import type { BondPattern, CoursePattern, FacePiece, FaceUnit } from '../types';
import { BRICK, EPS, type Grid, mod } from './grid';

/** A piece on the grid; `width` in steps, its joint included. */
export interface Cell {
  piece: FacePiece;
  width: number;
  /** Set on the one cut of a course that is given whatever length is left over. */
  takesRest?: true;
}

/** `cells` in order, `times` over. */
export interface CellGroup {
  cells: readonly Cell[];
  times: number;
}

/** One course's pattern without ends: `cells` from `origin`, repeated both ways for ever. */
export interface Tiling {
  cells: readonly Cell[];
  /** Where each cell begins after `origin`. */
  offsets: readonly number[];
  period: number;
  origin: number;
}

/** A joint of a tiling: `cell` is the index of the cell that begins there. */
export interface Boundary {
  at: number;
  cell: number;
}

function cellOf(unit: FaceUnit, grid: Grid): Cell {
  if (unit === 'stretcher') return { piece: 'stretcher', width: BRICK };
  return { piece: grid.thickness === 1 ? 'half' : 'header', width: grid.header };
}

function tile(cells: readonly Cell[], origin: number): Tiling {
  let period = 0;
  const offsets = cells.map((cell) => {
    const at = period;
    period += cell.width;
    return at;
  });
  return { cells, offsets, period, origin };
}

function courseTiling(course: CoursePattern, grid: Grid): Tiling {
  const units = course.units.length > 0 ? course.units : (['stretcher'] as const);
  return tile(
    units.map((unit) => cellOf(unit, grid)),
    (course.start ?? 0) * BRICK,
  );
}

/** The tiling of each course of a bond, as it runs from a free end at step 0. */
export function tilingsOf(bond: BondPattern, grid: Grid): Tiling[] {
  return bond.courses.map((course) => courseTiling(course, grid));
}

/** The same tiling `by` grid steps further right. */
export function shift(tiling: Tiling, by: number): Tiling {
  return { ...tiling, origin: tiling.origin + by };
}

/** The same tiling seen from the other side, for a free end at step `end`. */
export function mirror(tiling: Tiling, end: number): Tiling {
  return tile(reversed(tiling.cells), end - tiling.origin);
}

const turned = new WeakMap<readonly Cell[], readonly Cell[]>();

/** The same list each time, so that like patterns are known by it. */
function reversed(cells: readonly Cell[]): readonly Cell[] {
  if (cells.length < 2) return cells;
  const known = turned.get(cells) ?? [...cells].reverse();
  turned.set(cells, known).set(known, cells);
  return known;
}

/** First boundary at or after `x`. */
export function atOrAfter(tiling: Tiling, x: number): Boundary {
  const inside = mod(x - EPS - tiling.origin, tiling.period);
  const base = x - EPS - inside;
  const cell = tiling.offsets.findIndex((offset) => offset >= inside);
  if (cell < 0) return { at: base + tiling.period, cell: 0 };
  return { at: base + tiling.offsets[cell]!, cell };
}

/** Last boundary at or before `x`. */
export function atOrBefore(tiling: Tiling, x: number): Boundary {
  const inside = mod(x + EPS - tiling.origin, tiling.period);
  const base = x + EPS - inside;
  const cell = tiling.offsets.findLastIndex((offset) => offset <= inside);
  return { at: base + tiling.offsets[cell]!, cell };
}

/** The boundary at the right of the cell that begins here. */
export function next(tiling: Tiling, { at, cell }: Boundary): Boundary {
  return { at: at + tiling.cells[cell]!.width, cell: (cell + 1) % tiling.cells.length };
}

/** The boundary at the left of the cell that ends here. */
export function previous(tiling: Tiling, { at, cell }: Boundary): Boundary {
  const before = (cell + tiling.cells.length - 1) % tiling.cells.length;
  return { at: at - tiling.cells[before]!.width, cell: before };
}

/** The cells from one boundary to another, whole turns of the pattern kept as one group. */
export function between(tiling: Tiling, from: Boundary, to: Boundary): CellGroup[] {
  const { cells, period } = tiling;
  const times = Math.floor((to.at - from.at + EPS) / period);
  const rest = mod(to.cell - from.cell, cells.length);
  const groups: CellGroup[] = [];
  if (times > 0) groups.push({ cells: cellsFrom(cells, from.cell, cells.length), times });
  if (rest > 0) groups.push({ cells: cellsFrom(cells, from.cell, rest), times: 1 });
  return groups;
}

const parts = new WeakMap<readonly Cell[], (readonly Cell[])[]>();

/** So many cells of a pattern from one on, round and round: the same list each time, since long courses take it often. */
function cellsFrom(cells: readonly Cell[], first: number, count: number): readonly Cell[] {
  let known = parts.get(cells);
  if (!known) {
    known = [];
    parts.set(cells, known);
  }
  const key = first * (cells.length + 1) + count;
  known[key] ??= [...cells.slice(first), ...cells.slice(0, first)].slice(0, count);
  return known[key];
}

/** True when both put their joints in the same places, `b` moved `by` steps along. */
export function sameTiling(a: Tiling, b: Tiling, by = 0): boolean {
  if (a.cells === b.cells && mod(b.origin + by - a.origin + EPS * 10, a.period) < EPS * 20)
    return true;
  return sameJoints(a, by === 0 ? b : shift(b, by));
}

function sameJoints(a: Tiling, b: Tiling): boolean {
  if (Math.abs(a.period - b.period) > EPS || a.cells.length !== b.cells.length) return false;
  const from = { ...atOrAfter(a, 0) };
  const at = atOrAfter(b, from.at);
  if (Math.abs(at.at - from.at) > EPS * 10) return false;
  return a.cells.every((_, i) => {
    const mine = a.cells[(from.cell + i) % a.cells.length]!;
    const other = b.cells[(at.cell + i) % b.cells.length]!;
    return mine.width === other.width;
  });
}
