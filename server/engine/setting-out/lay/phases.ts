import type { Craft, Ends } from './craft';
import { EPS } from './grid';
import type { GridCourse } from './laps';
import { layShort, SHORT } from './stub';
import { mirror, sameTiling, shift, type Tiling } from './tiling';
import { lapsAtEnds, layZones, type Zone } from './zones';

/** A stretch laid on the grid. `zones` say where its pattern runs unbroken, for the courses above and below. */
export interface Laid {
  courses: readonly GridCourse[];
  zones: readonly Zone[];
}

const END = Number.POSITIVE_INFINITY;

/** @param by steps that `b` is moved along before it is looked at */
export function sameZone(a: Zone, b: Zone, by = 0): boolean {
  for (let i = 0; i < a.tilings.length; i++)
    if (!sameTiling(a.tilings[i]!, b.tilings[i]!, by)) return false;
  return true;
}

/** The bond begun at the left end of a stretch, up to `to`, in grid steps. */
export const fromLeft = (craft: Craft, to = END): Zone => ({ tilings: craft.tilings, to });

/** The bond begun at the right end of a stretch `width` grid steps wide. */
export const fromRight = (craft: Craft, width: number): Zone => ({
  tilings: craft.tilings.map((tiling) => mirror(tiling, width)),
  to: END,
});

/**
 * Patterns worth trying unbroken, best first: the wall's own, so that perpends stay plumb with the
 * courses above and below; then one set out from a free end of this stretch.
 */
export function unbroken(
  craft: Craft,
  width: number,
  ends: Ends,
  master: readonly Tiling[],
): Zone[] {
  const own: Zone = { tilings: master, to: END };
  if (ends.left === 'toothed' && ends.right === 'toothed') return [own];
  if (ends.left === 'toothed') return [own, fromRight(craft, width)];
  if (ends.right === 'toothed') return [own, fromLeft(craft)];
  return [own, fromLeft(craft), fromRight(craft, width)];
}

/** Unbroken, with whichever pattern laps at both ends. */
function layUnbroken(
  craft: Craft,
  width: number,
  ends: Ends,
  master: readonly Tiling[],
): Laid | null {
  for (const zone of unbroken(craft, width, ends, master)) {
    const courses = layZones(craft, [zone], width, ends);
    if (courses && lapsAtEnds(craft, courses, width)) return { courses, zones: [zone] };
  }
  return null;
}

/**
 * Lays `width` steps, a whole number of half bricks, between two ends: unbroken where the courses
 * lap, else like a pier where it is short, else set out from both ends and broken at `at`.
 * `master` is the wall's own pattern in this stretch's steps.
 */
export function layOnGrid(
  craft: Craft,
  width: number,
  ends: Ends,
  master: readonly Tiling[],
  at = width / 2,
): Laid | null {
  const whole = layUnbroken(craft, width, ends, master);
  if (whole) return whole;
  if (width <= SHORT) return layTiny(craft, width, master);
  const zones = [fromLeft(craft, at), fromRight(craft, width)];
  const courses = layZones(craft, zones, width, ends);
  return courses && { courses, zones };
}

/** A stretch too short for the pattern, as near to that as may be; `width` need not be on the grid. */
export function layTiny(craft: Craft, width: number, pattern?: readonly Tiling[]): Laid | null {
  const courses = layShort(craft, width, pattern);
  return courses && { courses, zones: [fromLeft(craft, width / 2), fromRight(craft, width)] };
}

/**
 * Lays a stretch that is no number of half bricks: the pattern of `width` steps, with `extra` steps
 * (less than nothing, too) let in by a cut at `at`.
 */
export function layWithCut(
  craft: Craft,
  laid: Laid,
  width: number,
  extra: number,
  ends: Ends,
  at: number,
): Laid | null {
  if (width + extra <= SHORT) return layTiny(craft, width + extra, laid.zones[0]!.tilings);
  const zones = letIn(laid.zones, extra, at);
  const courses = layZones(craft, zones, width + extra, ends);
  return courses && { courses, zones };
}

/** Shifts all that lies right of `at`, at a break there already is if it is that one. */
function letIn(zones: readonly Zone[], extra: number, at: number): Zone[] {
  const done: Zone[] = [];
  let cut = false;
  for (const zone of zones) {
    const moved = cut ? extra : 0;
    const tilings = zone.tilings.map((tiling) => shift(tiling, moved));
    if (cut || zone.to < at - EPS) done.push({ tilings, to: zone.to + moved });
    else if (Math.abs(zone.to - at) < EPS) {
      done.push({ tilings, to: at });
      cut = true;
    } else {
      done.push(
        { tilings, to: at },
        { tilings: tilings.map((t) => shift(t, extra)), to: zone.to + extra },
      );
      cut = true;
    }
  }
  return done;
}
