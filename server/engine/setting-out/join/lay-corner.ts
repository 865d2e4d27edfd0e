import type { Band, Segment, SettingOut, WallRow } from '../types';
import { repeatingOver } from './bond-courses';
import {
  type Courses,
  cutbackOf,
  type Parity,
  type Side,
  stretchAt,
  trimAt,
  within,
} from './corner';

/** How a wall gives way at one end to the wall across it. */
export interface GivingWay {
  /** The courses in which it does: every second one, or every second block of them. */
  readonly parity: Parity;
  /** Courses to a block; 1 when left out. */
  readonly block?: number;
  /** Thickness of the other wall, mm. */
  readonly by: number;
  /** Where either wall has several rows: how far each row is cut back in each course, over and over, mm; 0 where it is not. */
  readonly reach?: readonly (readonly number[])[];
  /** Where the other wall has brickwork at all; elsewhere this one runs to its end. */
  readonly courses: readonly Courses[];
}

/** Courses after which it is laid alike again. */
function repeatOf({ reach, block = 1 }: GivingWay): number {
  return reach?.[0]?.length ?? 2 * block;
}

/** Bands parted where the other wall begins or stops, so that through each of them it is there or not. */
function parted(bands: readonly Band[], { courses }: GivingWay): Band[] {
  const levels = courses.flatMap(({ from, to }) => [from, to]);
  return bands.flatMap((band) => {
    const inside = levels.filter((level) => level > band.from && level < band.to);
    const cuts = [...new Set([band.from, ...inside, band.to])].sort((a, b) => a - b);
    return cuts.slice(1).map((to, i) => ({ ...band, from: cuts[i]!, to }));
  });
}

function trimmed(segment: Segment, out: SettingOut, side: Side, way: GivingWay): Segment {
  const cutback = cutbackOf(out, way.by);
  const { block = 1 } = way;
  const runs = segment.runs.map((run, course) =>
    Math.floor(course / block) % 2 === way.parity ? trimAt(run, segment, side, cutback).run : run,
  );
  return { ...segment, runs };
}

/** One of several rows. The front one goes on standing for the whole thickness where the work is measured. */
function nested(
  segment: Segment,
  out: SettingOut,
  side: Side,
  way: GivingWay,
  row: number,
): Segment {
  const reach = way.reach![row]!;
  const runs = segment.runs.map((run, course) => {
    const by = reach[course % reach.length]!;
    const laid = by > 0 ? trimAt(run, segment, side, cutbackOf(out, by)).run : run;
    if (row > 0) return laid;
    const stops = course % 2 === way.parity ? way.by : 0;
    const extra = run.length - stops - laid.length;
    return extra === 0 ? laid : { ...laid, extra: (run.extra ?? 0) + extra };
  });
  return { ...segment, runs };
}

function layRow(row: WallRow, at: number, out: SettingOut, side: Side, way: GivingWay): WallRow {
  const bands = parted(row.bands, way).map((band) => {
    const segment = stretchAt(band, out, side);
    if (!segment || !within(band.from, way.courses)) return band;
    const laid = way.reach ? nested(segment, out, side, way, at) : trimmed(segment, out, side, way);
    return { ...band, segments: band.segments.map((s) => (s === segment ? laid : s)) };
  });
  return { ...row, bands };
}

/**
 * A wall as it is laid on plan where other walls meet its ends. Its face goes on looking as it did: in the
 * courses in which it gives way, what stood in the corner is now the other wall's, seen on end.
 */
export function layCorners(
  out: SettingOut,
  ways: Readonly<Partial<Record<Side, GivingWay>>>,
): SettingOut {
  const given = [ways.left, ways.right].filter((way) => way !== undefined);
  if (given.length === 0) return out;
  const even = given.reduce((wall, way) => repeatingOver(wall, repeatOf(way)), out);
  let rows = even.rows;
  for (const side of ['left', 'right'] as const) {
    const way = ways[side];
    if (way) rows = rows.map((row, i) => layRow(row, i, even, side, way));
  }
  return { ...even, rows, bands: rows[0]?.bands ?? [] };
}
