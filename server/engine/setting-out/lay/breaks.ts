import { type Candidate, chooseBonded } from './choose';
import { compose, paletteOf } from './compose';
import { brokenLap, type Craft } from './craft';
import type { CourseEnd } from './ends';
import { BRICK, EPS, mod } from './grid';
import { firstFrom } from './joints';
import {
  atOrAfter,
  atOrBefore,
  type Boundary,
  type Cell,
  next,
  previous,
  type Tiling,
} from './tiling';

/** Steps on either side of a break within which perpends are judged. */
const WINDOW = 2 * BRICK;
/** Most pieces put into a break. */
const MOST = 4;

/** Where one course leaves the left pattern, what fills the break, and where it takes up the right one. */
export interface Joining {
  left: Boundary;
  cells: readonly Cell[];
  right: Boundary;
}

/** Ends of one course that a break may come near; null where there is another break before the end. */
export interface Bounds {
  head: CourseEnd | null;
  tail: CourseEnd | null;
}

/** Joints between the pieces of an end and where the pattern begins, outermost first. */
function endJoints({ cells, joint }: CourseEnd, inward: 1 | -1): number[] {
  let at = joint.at - inward * cells.reduce((sum, cell) => sum + cell.width, 0);
  return cells.map((cell) => {
    at += inward * cell.width;
    return at;
  });
}

function leftPerpends(tiling: Tiling, from: number, to: Boundary, head: CourseEnd | null) {
  const stop = Math.max(from, head ? head.joint.at + EPS * 10 : from);
  const found: number[] = [];
  for (let b = to; b.at > stop; b = previous(tiling, b)) found.unshift(b.at);
  return head ? [...endJoints(head, 1), ...found] : found;
}

function rightPerpends(tiling: Tiling, from: Boundary, to: number, tail: CourseEnd | null) {
  const stop = Math.min(to, tail ? tail.joint.at - EPS * 10 : to);
  const found: number[] = [];
  for (let b = from; b.at < stop; b = next(tiling, b)) found.push(b.at);
  return tail ? [...found, ...endJoints(tail, -1).reverse()] : found;
}

function inside(from: number, cells: readonly Cell[]): number[] {
  let at = from;
  return cells.slice(0, -1).map((cell) => {
    at += cell.width;
    return at;
  });
}

function candidatesFor(
  craft: Craft,
  left: Tiling,
  right: Tiling,
  at: number,
  { head, tail }: Bounds,
): (Candidate & Joining)[] {
  const palette = paletteOf(left.cells, craft);
  const l = atOrBefore(left, at);
  const r = atOrAfter(right, at);
  const pairs = [l, previous(left, l)].flatMap((a) => [r, next(right, r)].map((b) => [a, b]));
  return pairs.flatMap(([a, b]) => (within(a!, b!) ? joinings(a!, b!) : []));

  function within(a: Boundary, b: Boundary): boolean {
    const low = head?.joint.at ?? Number.NEGATIVE_INFINITY;
    const high = tail?.joint.at ?? Number.POSITIVE_INFINITY;
    return a.at >= low - EPS * 10 && b.at <= high + EPS * 10;
  }

  function joinings(a: Boundary, b: Boundary): (Candidate & Joining)[] {
    const before = leftPerpends(left, at - WINDOW, a, head);
    const after = rightPerpends(right, b, at + WINDOW, tail);
    const offCentre = Math.abs((a.at + b.at) / 2 - at) / 1000;
    return compose(b.at - a.at, palette, MOST).map(({ cells, cost }) => ({
      left: a,
      right: b,
      from: a.at,
      to: b.at,
      cells,
      cost: cost + offCentre,
      perpends: [...before, ...inside(a.at, cells), ...(cells.length > 0 ? after : after.slice(1))],
    }));
  }
}

/**
 * Breaks the bond near step `at`: for each course, the pieces between the pattern that comes from
 * the left and the one that comes from the right, with no perpend over another nearer than a
 * quarter brick where any choice of pieces allows it. Null when nothing fills the place.
 */
export function breakBond(
  craft: Craft,
  left: readonly Tiling[],
  right: readonly Tiling[],
  at: number,
  bounds: readonly Bounds[],
): Joining[] | null {
  const layers = left.map((tiling, i) => candidatesFor(craft, tiling, right[i]!, at, bounds[i]!));
  const reach = WINDOW + BRICK;
  const beware = craft.beware?.map((all) =>
    all.slice(firstFrom(all, at - reach), firstFrom(all, at + reach)),
  );
  return chooseBonded(layers, brokenLap(craft), beware) as (Candidate & Joining)[] | null;
}

const widths = new WeakMap<readonly Cell[], string>();

function widthsOf(cells: readonly Cell[]): string {
  let text = widths.get(cells);
  if (text === undefined) {
    text = cells.map((cell) => cell.width).join();
    widths.set(cells, text);
  }
  return text;
}

/** What the answer of {@link breakBond} depends on, so that like breaks are worked out once. */
export function breakKey(
  left: readonly Tiling[],
  right: readonly Tiling[],
  at: number,
  bounds: readonly Bounds[],
): string {
  const near = (steps: number) => Math.round(steps * 1e4);
  const place = (t: Tiling) => `${near(mod(t.origin - at + 1e-7, t.period))}:${widthsOf(t.cells)}`;
  const end = (e: CourseEnd | null) => (e ? near(e.joint.at - at) : '');
  const courses = left.map((t, i) => {
    const { head, tail } = bounds[i]!;
    return `${place(t)} ${place(right[i]!)} ${end(head)} ${end(tail)}`;
  });
  return courses.join();
}

/** Ends too far from a break to matter to it are left out. */
export function near(at: number, head: CourseEnd | null, tail: CourseEnd | null): Bounds {
  const close = (end: CourseEnd | null) =>
    end && Math.abs(end.joint.at - at) < WINDOW + BRICK ? end : null;
  return { head: close(head), tail: close(tail) };
}

/** A joining found at one break moved to a like one. */
export function moveJoining({ left, cells, right }: Joining, by: number): Joining {
  return {
    left: { ...left, at: left.at + by },
    cells,
    right: { ...right, at: right.at + by },
  };
}
