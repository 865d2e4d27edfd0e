import { canBeFilled } from '../fit/halves';
import type { Band, PoorLap, Segment, SettingOut, WallRow, WallSpec } from '../types';
import { type Agreed, agree } from './agree';
import { AllLap } from './all-lap';
import {
  type Clear,
  type ClearBand,
  clashesOf,
  clearBands,
  fixedPoints,
  wholeCourses,
} from './bands';
import { carried } from './carried';
import type { Craft } from './craft';
import { stillLapOf } from './least-laps';
import { keyOf, meetingsOf } from './meetings';
import { fromTheRight, mirrorSpec, Turning } from './mirror';
import { wholesOf } from './plumb/wholes';
import { depthsOf, rowsOf } from './rows';
import { layAgain, layClear, type Site, siteOf, siteWords } from './site';
import { rowOf } from './stretch';

/** Far above any wall, and far below where counts stop being exact. */
const MOST_COURSES = 1e7;

function makesSense(spec: WallSpec): boolean {
  const { unit, joints, limits, bond } = spec;
  const courses = wholeCourses(spec);
  const sizes = [unit.width, unit.height, unit.height + joints.bed, unit.width - joints.perpend];
  const row = rowOf(unit, joints.perpend, { left: 'stopped', right: 'stopped' }, limits);
  const laid =
    bond.courses.length > 0 && bond.courses.every(({ start }) => Number.isFinite(start ?? 0));
  return (
    canBeFilled(row, spec.length) &&
    joints.perpend >= 0 &&
    sizes.every((size) => size > 0 && Number.isFinite(size)) &&
    courses > 0 &&
    courses <= MOST_COURSES &&
    Number.isFinite(bond.lap) &&
    laid
  );
}

/**
 * Sets a wall out in runs: bands of courses interrupted alike, in each the clear stretches between
 * fixed points, in each one laid run for every course of the bond. Work and memory go with
 * interruptions and courses of the bond, never with bricks.
 *
 * Takes any numbers: what stands outside the wall is cut off at its edge, and what overlaps is told
 * in `clashes`. A wall with no length or no courses, or whose sizes make no sense, has no bands.
 */
export function setOut(spec: WallSpec): SettingOut {
  const { rows, poorLaps } = fromTheRight(spec) ? turnedBack(spec) : layRows(spec);
  return {
    spec,
    gauge: spec.unit.height + spec.joints.bed,
    thickness: through(spec),
    clashes: clashesOf(fixedPoints(spec)),
    bands: rows[0]?.bands ?? [],
    rows,
    poorLaps,
  };
}

interface Laid {
  rows: WallRow[];
  poorLaps: readonly PoorLap[];
}

/** Each row from the left end on. */
function layRows(spec: WallSpec): Laid {
  const depths = depthsOf(spec.bond, spec.thickness);
  const all = depths ? rowsOf(spec.bond) : [];
  const rows = (spec.only ? all.slice(0, 1) : all).map((bond, row) => {
    const site = siteOf({ ...spec, bond });
    return { ...layBands(site), depths: depths![row]! };
  });
  return {
    rows: rows.map(({ bands, depths: deep }) => ({ bands, depths: deep })),
    poorLaps: [...(rows[0]?.poorLaps ?? []), ...backLaps(rows)],
  };
}

/** Of the hindmost row, where both courses have it. */
function backLaps(rows: readonly (WallRow & { poorLaps: readonly PoorLap[] })[]): PoorLap[] {
  if (rows.length < 2) return [];
  const { poorLaps, depths } = rows.at(-1)!;
  const has = (course: number) => depths[course % depths.length]! > 0;
  return poorLaps
    .filter(({ course }) => has(course) && has(course - 1))
    .map((lap) => ({ ...lap, back: true }));
}

/** From the right end on: as its mirror image is, turned back. */
function turnedBack(spec: WallSpec): Laid {
  const { rows, poorLaps } = layRows(mirrorSpec(spec));
  const turning = new Turning(spec);
  return {
    rows: rows.map((row) => turning.row(row)),
    poorLaps: poorLaps.map((each) => turning.poorLap(each)),
  };
}

/** Every band, first each stretch by itself, then those again that clash with what is above or below them. */
function layBands(site: Site): { bands: Band[]; poorLaps: readonly PoorLap[] } {
  const clear = makesSense(site.spec) ? clearBands(site.spec, site.fixed) : [];
  const segmentsOf = carried((c: Clear) => layClear(site, c));
  const bands = clear.map(({ from, to, clear: all }) => ({ from, to, segments: segmentsOf(all) }));
  if (site.spec.only === 'apart' || allAgree(site, bands)) return { bands, poorLaps: [] };
  const { instead, poorLaps } = agreed(site, clear);
  const stands = (segment: Segment) => instead.get(segment) ?? segment;
  return {
    bands: bands.map(({ from, to, segments }) => ({ from, to, segments: segments.map(stands) })),
    poorLaps,
  };
}

/** Whether nothing clashes, as in most walls: then nobody need know who lies on whom. */
function allAgree({ craft }: Site, bands: readonly Band[]): boolean {
  if (craft.lap <= 0 || bands.length < 2) return true;
  return new AllLap(craft.grid.module, stillLapOf(craft)).holds(bands, craft.tilings.length);
}

function agreed(site: Site, clear: readonly ClearBand[]): Agreed {
  const { craft } = site;
  const meetings = meetingsOf(clear, craft.tilings.length);
  const again = (now: Segment, wary: Craft, near: readonly number[]) =>
    layAgain(site, now, wary, near);
  const placed = new Map<unknown, Segment>();
  for (const [c, segment] of site.placed) placed.set(keyOf(c), segment);
  return agree({
    craft,
    placed,
    meetings,
    limits: site.spec.limits,
    again,
    site: (now) => siteWords(site, now),
    wholeOf: wholesOf(site),
  });
}

/** Mm through the wall: its rows, each two half bricks as deep as a brick is long, and a joint between each two. */
function through({ unit, joints, thickness }: WallSpec): number {
  if (thickness <= 2) return thickness === 1 ? unit.width : unit.length;
  const half = (unit.length + joints.perpend) / 2;
  const odd = thickness % 2 === 1 ? unit.width + joints.perpend - half : 0;
  return thickness * half + odd - joints.perpend;
}
