import type { Joining } from './breaks';
import { breakBond, breakKey, moveJoining } from './breaks';
import type { Craft, Ends } from './craft';
import { leftEnd, rightEnd } from './ends';
import { EPS } from './grid';
import type { GridCourse } from './laps';
import { cycleLap } from './laps';
import type { CellGroup, Tiling } from './tiling';
import { between, shift } from './tiling';

/** Part of a stretch where one pattern runs unbroken, up to step `to` or the end of the stretch. */
export interface Zone {
  tilings: readonly Tiling[];
  to: number;
}

export function shiftZone(zone: Zone, by: number): Zone {
  return { tilings: zone.tilings.map((tiling) => shift(tiling, by)), to: zone.to + by };
}

function joinAt(craft: Craft, left: Zone, right: Zone): Joining[] | null {
  const { to: at } = left;
  const key = breakKey(left.tilings, right.tilings, at);
  let known = craft.breaks.get(key);
  if (!known) {
    const joinings = breakBond(craft, left.tilings, right.tilings, at);
    known = { at, joinings };
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
  ends: Ends,
): GridCourse[] | null {
  const joins = zones.slice(1).map((zone, i) => joinAt(craft, zones[i]!, zone));
  if (joins.some((join) => join === null)) return null;
  const courses = craft.tilings.map((_, course) => {
    const chain = joins.map((join) => join![course]!);
    const tilings = zones.map((zone) => zone.tilings[course]!);
    return layCourse(craft, tilings, chain, width, ends);
  });
  return courses.some((course) => course === null) ? null : (courses as GridCourse[]);
}

function layCourse(
  craft: Craft,
  tilings: readonly Tiling[],
  chain: readonly Joining[],
  width: number,
  ends: Ends,
): GridCourse | null {
  const head = leftEnd(tilings[0]!, 0, ends.left, craft);
  const tail = rightEnd(tilings.at(-1)!, width, ends.right, craft);
  if (!head || !tail) return null;
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
