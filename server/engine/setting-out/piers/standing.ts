/** Piers that stand alone: bonded as their counts say, or whole bricks round a core. */
import type { Area, CountedPiece, PieceCount } from '../types';
import { candidate, chooseCycle } from './choose';
import { coursePlan, quarterOf, voidOf } from './place';
import { type Region, rectangle } from './region';
import { halvesIn, ring, solid } from './ring';
import { fillings } from './search';
import {
  type CoreFill,
  type CoursePlan,
  type GridPiece,
  MOST_HALVES,
  type PierLaid,
  type PierQuestion,
} from './types';

/**
 * The courses of a pier, each piece in its place. Nothing for a size that is no number of half bricks or more than
 * {@link MOST_HALVES}, nor where the counts told cannot be laid with every face lapped.
 */
export function pierPlans(question: PierQuestion): PierLaid | undefined {
  const laid = laidBy.get(question.counts ?? NONE) ?? new Map<string, PierLaid | undefined>();
  laidBy.set(question.counts ?? NONE, laid);
  const { width, depth, unit, joint, core } = question;
  const key = `${width} ${depth} ${unit.length} ${unit.width} ${joint} ${core}`;
  if (!laid.has(key)) {
    if (laid.size >= MOST_KEPT) laid.clear();
    laid.set(key, layPier(question));
  }
  return laid.get(key);
}

/** Piers laid already, by the list of what their courses take: a job asks for the same few at every keystroke. */
const laidBy = new WeakMap<object, Map<string, PierLaid | undefined>>();
const NONE = {};

function layPier(question: PierQuestion): PierLaid | undefined {
  const { width, depth, unit, joint } = question;
  if (![width, depth].every(isHalves) || !(joint >= 0 && unit.length > joint)) return undefined;
  const pieces = piecesOf(question);
  if (!pieces) return undefined;
  const quarter = quarterOf(unit, joint);
  const region = rectangle(2 * width, 2 * depth);
  const core = coreOf(question, quarter);
  const courses = pieces.map((p) => coursePlan(p, region, quarter, joint, core));
  return {
    width: 2 * width * quarter - joint,
    depth: 2 * depth * quarter - joint,
    courses,
    coreHalves: Math.min(...courses.map((course) => coreHalves(course, question))),
  };
}

function isHalves(n: number): boolean {
  return Number.isInteger(n) && n >= 1 && n <= MOST_HALVES;
}

/** True where whole bricks round the outside leave something inside. */
export function hasCore(width: number, depth: number): boolean {
  return width > 2 && depth > 2;
}

const TURNS = [0, 1];

function piecesOf({ width, depth, core, counts }: PierQuestion): GridPiece[][] | undefined {
  const plain = TURNS.map((turn) => solid(width, depth, turn));
  if (core && hasCore(width, depth)) return TURNS.map((turn) => filled(width, depth, core, turn));
  if (!counts?.length || agree(plain, counts)) return plain;
  if (counts.length > MOST_COURSES) return undefined;
  const key = JSON.stringify([width, depth, counts]);
  const known = shelf.get(key);
  if (known) return known.pieces;
  const pieces = counted(width, depth, counts);
  if (shelf.size >= MOST_KEPT) shelf.clear();
  shelf.set(key, { pieces });
  return pieces;
}

/** Plans by their counts: every pier of a job and every keystroke asks for the same few. */
const shelf = new Map<string, { readonly pieces: GridPiece[][] | undefined }>();
const MOST_KEPT = 200;
/** No pier takes longer to come round again. */
const MOST_COURSES = 8;

function filled(width: number, depth: number, core: CoreFill, turn: number): GridPiece[] {
  if (core === 'bricks') return solid(width, depth, turn);
  const skin = ring(width, depth, turn);
  const bats = core === 'halves' || core === 'bats';
  return bats ? [...skin, ...halvesIn(width, depth)] : skin;
}

function coreOf({ width, depth, core, joint }: PierQuestion, quarter: number): Area[] {
  const open = core === 'concrete' || core === 'hollow';
  if (!open || !hasCore(width, depth)) return [];
  const grid = { x: 2, y: 2, w: 2 * width - 4, d: 2 * depth - 4 };
  return [voidOf(grid, quarter, joint)];
}

/** Two halves lie where a whole does; smaller pieces take none. */
function coreHalves({ hidden }: CoursePlan, { width, depth, core }: PierQuestion): number {
  if (core && hasCore(width, depth)) return (width - 2) * (depth - 2);
  const of = { whole: 2, half: 1, 'three-quarter': 0, closer: 0, cut: 0 };
  return hidden.reduce((sum, { piece }) => sum + of[piece], 0);
}

type Counts = Partial<Record<CountedPiece, number>>;

function countsOf(pieces: readonly { piece: CountedPiece; count?: number }[]): Counts {
  const counts: Counts = {};
  for (const { piece, count = 1 } of pieces) counts[piece] = (counts[piece] ?? 0) + count;
  return counts;
}

function agree(plain: readonly GridPiece[][], told: readonly (readonly PieceCount[])[]): boolean {
  return plain.every((pieces, turn) => {
    const [mine, other] = [countsOf(pieces), countsOf(told[turn % told.length]!)];
    const names = new Set([...Object.keys(mine), ...Object.keys(other)]) as Set<CountedPiece>;
    return [...names].every((name) => (mine[name] ?? 0) === (other[name] ?? 0));
  });
}

const QUARTERS: Readonly<Record<CountedPiece, number>> = {
  whole: 8,
  half: 4,
  'three-quarter': 6,
  closer: 4,
  cut: Number.NaN,
};

/** So many plans of one course are looked at; sizes up to two and a half bricks have fewer good ones. */
const ENOUGH = 120;
const TRIES = 40_000;
/** Four closers in their places and a half inside, as in English bond: such plans are looked for first. */
const FEW_CUTS = 10;
/** Far above what any plan worth laying costs. */
const MOST_COST = 40;

/** The plans that take just the pieces told, the best lapped of them. */
function counted(
  width: number,
  depth: number,
  told: readonly (readonly PieceCount[])[],
): GridPiece[][] | undefined {
  const region = rectangle(2 * width, 2 * depth);
  const courses = told.length === 1 ? [told[0]!, told[0]!] : told;
  const area = (pieces: readonly PieceCount[]) =>
    pieces.reduce((sum, { piece, count }) => sum + QUARTERS[piece] * count, 0);
  if (courses.some((pieces) => area(pieces) !== 4 * width * depth)) return undefined;
  return (
    lapped(region, courses, FEW_CUTS, 'turned') ??
    lapped(region, courses, MOST_COST, 'turned') ??
    lapped(region, courses, MOST_COST)
  );
}

/** Plans that look the same from behind are looked at first: they are few. */
function lapped(
  region: Region,
  courses: readonly (readonly PieceCount[])[],
  cost: number,
  alike?: 'turned',
): GridPiece[][] | undefined {
  const layers = courses.map((pieces) => {
    const counts = countsOf(pieces);
    const bounds = { counts, cost, enough: ENOUGH, tries: TRIES, alike };
    return fillings(region, bounds).map((filling) => candidate(filling, region));
  });
  return chooseCycle(layers)?.map(({ pieces }) => [...pieces]);
}
