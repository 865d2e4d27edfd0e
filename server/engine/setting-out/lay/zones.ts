import { breakBond, breakKey, type Joining, moveJoining, near } from './breaks';
import type { Craft, Ends } from './craft';
import { type CourseEnd, leftEnds, rightEnds } from './ends';
import { EPS } from './grid';
import { cycleLap, type GridCourse } from './laps';
import { chooseEnds } from './quoins';
import { between, type CellGroup, mirror, sameTiling, shift, type Tiling } from './tiling';

/** Part of a stretch where one pattern runs unbroken, up to step `to` or the end of the stretch. */
export interface Zone {
  tilings: readonly Tiling[];
  to: number;
}

/** The same zone `by` grid steps further right. */
export function shiftZone(zone: Zone, by: number): Zone {
  return { tilings: zone.tilings.map((tiling) => shift(tiling, by)), to: zone.to + by };
}

interface CourseEnds {
  head: CourseEnd;
  tail: CourseEnd;
}

function endsOf(
  craft: Craft,
  zones: readonly Zone[],
  width: number,
  ends: Ends,
): CourseEnds[] | null {
  const left = zones[0]!.tilings;
  const right = zones.at(-1)!.tilings;
  const starts = left.map((tiling) => leftEnds(tiling, 0, ends.left, craft));
  const stops = right.map((tiling) => rightEnds(tiling, width, ends.right, craft));
  const own = craft.tilings;
  const fromLeft = left.every((tiling, i) => sameTiling(tiling, own[i]!));
  const fromRight = right.every((tiling, i) => sameTiling(tiling, mirror(own[i]!, width)));
  const heads = chooseEnds(craft, left, fromLeft || craft.beware ? starts : plain(starts), 0);
  const tails = chooseEnds(craft, right, fromRight || craft.beware ? stops : plain(stops), width);
  return heads && tails && heads.map((head, i) => ({ head, tail: tails[i]! }));
}

/**
 * A pattern that comes to an end from elsewhere ends plainly or not at all: then the bond is broken, not
 * the quoin. Only what is laid again, for the sake of its neighbours, may end in any way.
 */
function plain(ways: readonly (readonly CourseEnd[])[]): CourseEnd[][] {
  return ways.map((each) => each.slice(0, 1));
}

/** The break between zone `i` and the next, looked up or worked out. */
function joinAt(
  craft: Craft,
  zones: readonly Zone[],
  i: number,
  ends: readonly CourseEnds[],
): Joining[] | null {
  const { tilings: left, to: at } = zones[i]!;
  const { tilings: right } = zones[i + 1]!;
  const first = i === 0;
  const last = i === zones.length - 2;
  const bounds = ends.map(({ head, tail }) => near(at, first ? head : null, last ? tail : null));
  const key = `${breakKey(left, right, at, bounds)}${craft.beware ? ` ${at}` : ''}`;
  let known = craft.breaks.get(key);
  if (!known) {
    known = { at, joinings: breakBond(craft, left, right, at, bounds) };
    craft.breaks.set(key, known);
  }
  const by = at - known.at;
  return known.joinings?.map((joining) => moveJoining(joining, by)) ?? null;
}

/**
 * Lays every course of the cycle through its zones, `width` steps between the two ends.
 * Null when an end or a break cannot be closed, or there is no room between them.
 */
export function layZones(
  craft: Craft,
  zones: readonly Zone[],
  width: number,
  kinds: Ends,
): GridCourse[] | null {
  const ends = endsOf(craft, zones, width, kinds);
  if (!ends) return null;
  const joins: Joining[][] = [];
  for (const i of zones.slice(1).keys()) {
    const join = joinAt(craft, zones, i, ends);
    if (!join) return null;
    joins.push(join);
  }
  const courses: GridCourse[] = [];
  for (const [course, end] of ends.entries()) {
    const tilings = zones.map((zone) => zone.tilings[course]!);
    const chain = joins.map((join) => join[course]!);
    const laid = layCourse(tilings, chain, end);
    if (!laid) return null;
    courses.push(laid);
  }
  return courses;
}

function layCourse(
  tilings: readonly Tiling[],
  chain: readonly Joining[],
  { head, tail }: CourseEnds,
): GridCourse | null {
  const groups: CellGroup[] = [{ cells: head.cells, times: 1 }];
  let from = head.joint;
  for (const [i, tiling] of tilings.entries()) {
    const to = chain[i]?.left ?? tail.joint;
    if (to.at < from.at - EPS * 10) return null;
    groups.push(...between(tiling, from, to));
    if (chain[i]) groups.push({ cells: chain[i].cells, times: 1 });
    from = chain[i]?.right ?? to;
  }
  groups.push({ cells: [...tail.cells].reverse(), times: 1 });
  const start = head.cells.length > 0 ? 0 : head.joint.at;
  return { start, groups: groups.filter(({ cells }) => cells.length > 0) };
}

/** True when neighbouring courses lap well enough near both ends, where pieces other than the pattern's stand. */
export function lapsAtEnds(craft: Craft, courses: readonly GridCourse[], width: number): boolean {
  const reach = 2 * Math.max(...craft.tilings.map((tiling) => tiling.period));
  const enough = (low: number, high: number) =>
    cycleLap(courses, low, high) >= craft.lap - EPS * 100;
  if (craft.lap <= 0) return true;
  if (width <= 2 * reach) return enough(0, width);
  return enough(0, reach) && enough(width - reach, width);
}
