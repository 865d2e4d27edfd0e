import { cutWays } from './cuts';
import {
  canBeFilled,
  fittingHalves,
  jointFor,
  jointsIn,
  nearestHalves,
  type Row,
  SAME,
  sizeOf,
  withinLimits,
} from './halves';

export type Where = 'left' | 'right' | 'middle';

/** A run between two fixed points, and what may be done about it. */
export interface FitQuestion extends Row {
  /** Between the fixed points, mm. */
  length: number;
  /** Where a cut is least seen; the middle when left out. */
  cutAt?: Where;
  /** Brick on edge over a pier: a cap would do instead. */
  cap?: boolean;
  /** Kinds of way, most welcome first; a kind left out comes behind, as they are listed in {@link Way}. */
  prefer?: readonly WayKind[];
}

/** Whole pieces and at most one half. */
export interface Pieces {
  wholes: number;
  half: 0 | 1;
}

/** Pieces alone, every joint the same. `half-bond` has an odd half: broken or reverse bond. */
export interface JointWay extends Pieces {
  kind: 'joints' | 'half-bond';
  joint: number;
  acceptable: boolean;
}

/** Another length, at the best joint. */
export interface LengthWay extends Pieces {
  kind: 'length';
  length: number;
  /** Mm longer than asked; negative is shorter. */
  change: number;
}

/** `wholes` and `cuts` pieces of `cut` mm. */
export interface CutWay {
  kind: 'cut';
  wholes: number;
  cut: number;
  cuts: 1 | 2;
  joint: number;
  where: Where;
  /** Shorter than the least cut: there is no longer one. */
  short?: boolean;
}

export interface CapWay {
  kind: 'cap';
}

export type Way = JointWay | LengthWay | CutWay | CapWay;
export type WayKind = Way['kind'];

/** What a sentence about the run needs, all at whole pieces. */
export interface FitNumbers {
  /** Most whole pieces that go in at the best joint. */
  goIn: number;
  /** Mm left beside them, the joint to the next piece taken off; negative when not even that is left. */
  gap: number;
  /** Mm left beside them, that joint not taken off. */
  left: number;
  /** Joint when they are spread over the whole length; null when there is no joint to spread. */
  spread: number | null;
  /** Joint if one more were squeezed in; negative when it does not go in at all. */
  squeezed: number | null;
  /** Mm by which one more, at the best joint, is too long. */
  over: number;
  /** The nearest number, where that has an odd half, and the mm by which it is too long (negative: too short) at the best joint. */
  nearest?: Pieces & { readonly over: number };
}

export interface Fit {
  length: number;
  /** With the best joint, with another within the limits, or not at all. */
  works: 'exactly' | 'joints' | 'no';
  /** The pieces it works in, or the nearest. An odd half means broken or reverse bond. */
  pieces: Pieces;
  /** Their joint; null when no joint makes them fill the length. */
  joint: number | null;
  /** Every way, best first. When it works the first is what it works in. */
  ways: Way[];
  numbers: FitNumbers;
}

function toPieces(halves: number): Pieces {
  return { wholes: Math.floor(halves / 2), half: (halves % 2) as 0 | 1 };
}

/** Most half pieces of one parity that go in with at least the least joint; null when not even the first does. */
function mostWithin(row: Row, length: number, parity: 0 | 1): number | null {
  const first = parity === 1 ? 1 : 2;
  const { piece, endJoints, limits } = row;
  const guess = (2 * (length + limits.least * (1 - endJoints))) / (piece + limits.least);
  let halves = first + 2 * Math.max(0, Math.ceil((guess - first) / 2) + 1);
  while (halves >= first) {
    const joint = jointFor(row, halves, length);
    if (joint !== null && joint >= limits.least - SAME) return halves;
    halves -= 2;
  }
  return null;
}

/** Of the joint that is meant: a tighter one takes no mortar and is not worth a word (common practice). */
const TIGHTEST = 1 / 2;

/** Of the two numbers on either side of the limits that whose joint is nearer to them. */
function nearestOutside(row: Row, length: number, parity: 0 | 1): number {
  const { least, best, most } = row.limits;
  const wide = mostWithin(row, length, parity) ?? 2 - parity;
  const off = (halves: number) => {
    const joint = jointFor(row, halves, length);
    if (joint === null || joint < best * TIGHTEST) return Number.POSITIVE_INFINITY;
    return Math.max(least - joint, joint - most);
  };
  return off(wide + 2) < off(wide) ? wide + 2 : wide;
}

function jointWay(row: Row, length: number, parity: 0 | 1): JointWay | null {
  const halves = fittingHalves(row, length, parity) ?? nearestOutside(row, length, parity);
  const joint = jointFor(row, halves, length);
  if (joint === null) return null;
  const kind = parity === 1 ? 'half-bond' : 'joints';
  return { kind, ...toPieces(halves), joint, acceptable: withinLimits(joint, row.limits) };
}

function lengthWays(row: Row, length: number): LengthWay[] {
  const nearest = nearestHalves(row, length);
  const near = [-2, -1, 0, 1, 2].map((by) => nearest + by);
  const able = near.filter((halves) => halves >= 1 && (row.half !== null || halves % 2 === 0));
  const ways = able.map((halves) => {
    const size = sizeOf(row, halves);
    return { kind: 'length' as const, ...toPieces(halves), length: size, change: size - length };
  });
  ways.sort((a, b) => Math.abs(a.change) - Math.abs(b.change));
  return nearestEachSide(ways);
}

/** The nearest length shorter and longer, in whole pieces and in any. */
function nearestEachSide(ways: readonly LengthWay[]): LengthWay[] {
  const kept = new Set<LengthWay | undefined>();
  for (const side of [-1, 1])
    for (const halves of [1, 0]) {
      kept.add(ways.find((w) => w.change * side > SAME && w.half <= halves));
    }
  return ways.filter((way) => kept.has(way));
}

/** Joints or a cut that nobody would accept who had another way. */
export function isPoor(way: Way): boolean {
  if (way.kind === 'cut') return way.short === true;
  return (way.kind === 'joints' || way.kind === 'half-bond') && !way.acceptable;
}

/** Smaller is better: what is acceptable first, then by kind, then as they came. */
function rank(way: Way, prefer: readonly WayKind[]): number {
  const place = prefer.indexOf(way.kind);
  return (isPoor(way) ? 1000 : 0) + (place < 0 ? prefer.length : place);
}

function numbersOf(row: Row, length: number): FitNumbers {
  const { piece, endJoints, limits } = row;
  const room = length + limits.best * (1 - endJoints);
  const goIn = Math.max(0, Math.floor((room + SAME) / (piece + limits.best)));
  const joint = (n: number) => (jointsIn(row, 2 * n) > 0 ? jointFor(row, 2 * n, length) : null);
  const used = goIn * (piece + limits.best);
  return {
    goIn,
    gap: length - used - limits.best * endJoints,
    left: length - used - limits.best * (endJoints - 1),
    spread: goIn > 0 ? joint(goIn) : null,
    squeezed: joint(goIn + 1),
    over: sizeOf(row, 2 * (goIn + 1)) - length,
    ...oddNearest(row, length),
  };
}

function oddNearest(row: Row, length: number): Pick<FitNumbers, 'nearest'> {
  const halves = nearestHalves(row, length);
  if (halves % 2 === 0) return {};
  return { nearest: { ...toPieces(halves), over: sizeOf(row, halves) - length } };
}

/**
 * Does a run between two fixed points work in whole or half pieces, at a joint anyone would accept?
 * If not, what are the ways out, best first? The same question serves walls, openings, piers, brick
 * on edge (`half` null) and heights in courses (`half` null, one end joint).
 *
 * Exact: each way is the best of its kind. `joints` and `half-bond` are nearest the best joint
 * within the limits, else the most pieces that go in, spread; `length` is nearest the length asked;
 * `cut` alters the joint least, then leaves the longest cut. Sizes or limits that make no sense
 * (nothing, less than nothing, a least over a most) work in no way.
 */
export function fitRun(question: FitQuestion): Fit {
  const { length, prefer = [] } = question;
  if (!canBeFilled(question, length)) return unfillable(length);
  const found = fittingHalves(question, length);
  const halves = found ?? nearestHalves(question, length);
  const joint = jointFor(question, halves, length);
  const exact = found !== null && Math.abs(sizeOf(question, halves) - length) < SAME;
  const works = found === null ? 'no' : exact ? 'exactly' : 'joints';
  return answered(question, found, prefer, { length, works, pieces: toPieces(halves), joint });
}

/** Ways and numbers are found when they are asked for: of a run that works nobody asks. */
function answered(
  question: FitQuestion,
  found: number | null,
  prefer: readonly WayKind[],
  known: Pick<Fit, 'length' | 'works' | 'pieces' | 'joint'>,
): Fit {
  let ranked: Way[] | undefined;
  return {
    ...known,
    get ways() {
      ranked ??= rankedWays(question, found, prefer);
      return ranked;
    },
    get numbers() {
      return numbersOf(question, known.length);
    },
  };
}

function unfillable(length: number): Fit {
  const numbers = { goIn: 0, gap: length, left: length, spread: null, squeezed: null, over: 0 };
  return { length, works: 'no', pieces: { wholes: 0, half: 0 }, joint: null, ways: [], numbers };
}

function rankedWays(
  question: FitQuestion,
  found: number | null,
  prefer: readonly WayKind[],
): Way[] {
  const { length } = question;
  const parities = question.half === null ? [0 as const] : [0 as const, 1 as const];
  const ways: Way[] = parities.flatMap((parity) => jointWay(question, length, parity) ?? []);
  ways.push(...lengthWays(question, length), ...cutWays(question));
  if (question.cap) ways.push({ kind: 'cap' });
  const chosen = (way: Way) =>
    (way.kind === 'joints' || way.kind === 'half-bond') &&
    found !== null &&
    way.wholes * 2 + way.half === found;
  const key = (way: Way) => (chosen(way) ? -1 : rank(way, prefer));
  return ways
    .map((way, i) => ({ way, i }))
    .sort((a, b) => key(a.way) - key(b.way) || a.i - b.i)
    .map(({ way }) => way);
}
