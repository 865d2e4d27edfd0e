import type { Moved } from './alike';
import type { Clear, Fixed } from './bands';
import type { Craft } from './craft';
import { BRICK } from './grid';
import { fromLeft, fromRight, type Laid, layOnGrid, sameZone } from './phases';
import type { LaidStretch } from './stretch';
import type { Tiling } from './tiling';
import { lapsAtEnds, layZones, shiftZone, type Zone } from './zones';

/** A stretch between fixed points of the whole wall, as laid beside them. */
export interface Beside {
  clear: Clear;
  stretch: LaidStretch;
}

/** Patterns narrower than this between two breaks are dropped, steps: the least first, more where that leaves no room. */
export const NARROW = [2, 3, 5].map((bricks) => bricks * BRICK);
/** A break keeps at least this far from an end, so that quoin and break do not meet, steps. */
export const CLEAR_OF_END = BRICK;

/** A pattern of a stretch beside, `by` steps along, up to step `to`. Most run on from the one before, so it is moved only when kept. */
interface Part {
  zone: Zone;
  by: number;
  to: number;
}

/**
 * The patterns a long stretch below or above openings takes from the stretches beside them, so
 * that perpends stay plumb past every reveal: where two neighbours' patterns do not run into one
 * another, the bond is broken under (or over) the middle of the opening between.
 */
export function partsUnder(
  clear: Clear,
  beside: readonly Beside[],
  width: number,
  step: number,
): Part[] {
  const half = BRICK / 2;
  const parts: Part[] = [];
  for (const [i, { clear: mine, stretch }] of beside.entries()) {
    const last = i === beside.length - 1;
    const start = half * Math.round((mine.from - clear.from) / (half * step));
    const by = last && i > 0 ? width - stretch.width : start;
    for (const zone of stretch.zones) parts.push({ zone, by, to: zone.to + by });
    const following = beside[i + 1]?.clear.from;
    if (following !== undefined) parts.at(-1)!.to = ((mine.to + following) / 2 - clear.from) / step;
    else parts.at(-1)!.to = Number.POSITIVE_INFINITY;
  }
  return parts;
}

function runsOn(before: Part, { zone, by }: Part): boolean {
  return sameZone(before.zone, zone, by - before.by);
}

/** The parts as zones, mm: one that only goes on, or is narrower than `narrow`, is part of that before it. */
export function tidy(parts: readonly Part[], width: number, narrow: number): Zone[] {
  const kept: Part[] = [];
  for (const [i, part] of parts.entries()) {
    const last = i === parts.length - 1;
    const before = kept.at(-1);
    const from = before?.to ?? 0;
    const to = last ? part.to : Math.min(Math.max(part.to, CLEAR_OF_END), width - CLEAR_OF_END);
    if (before && (runsOn(before, part) || (!last && to - from < narrow))) before.to = to;
    else kept.push({ ...part, to });
  }
  return kept.map(({ zone, by, to }) => ({ ...shiftZone(zone, by), to }));
}

/** Those of the stretches beside that one runs past, by their places: from `first` up to `end`. */
export interface Past {
  readonly first: number;
  readonly end: number;
}

/**
 * The pattern of all the stretches beside, where each is laid in one and they run on from one to the next as they
 * are; null where that takes a closer look ({@link onePattern}). Most are so, and nothing is made on the way.
 */
export function runsThrough(
  beside: readonly Clear[],
  laid: (place: number) => LaidStretch,
  { first, end }: Past,
  clear: Clear,
  width: number,
  step: number,
): Moved | null {
  const half = BRICK / 2;
  let zone: Zone | null = null;
  let from = 0;
  for (let i = first; i < end; i++) {
    const stretch = laid(i);
    const only = stretch.zones[0]!;
    const start = half * Math.round((beside[i]!.from - clear.from) / (half * step));
    const by = i === end - 1 && i > first ? width - stretch.width : start;
    if (stretch.zones.length > 1 || (zone && !sameZone(zone, only, by - from))) return null;
    if (!zone) [zone, from] = [only, by];
  }
  return zone && { tilings: zone.tilings, by: from };
}

/** The pattern of all the stretches beside, where it is one and the same. */
export function onePattern(
  craft: Craft,
  beside: readonly Beside[],
  width: number,
  clear: Clear,
): readonly Tiling[] | null {
  const zones = tidy(partsUnder(clear, beside, width, craft.grid.step), width, NARROW[0]!);
  return zones.length === 1 ? zones[0]!.tilings : null;
}

/** The zones as they are, then with one end's or both ends' pattern set out from that end itself. */
export function* withOwnEnds(
  craft: Craft,
  zones: readonly Zone[],
  width: number,
): Generator<Zone[]> {
  yield [...zones];
  const last = { ...fromRight(craft, width), to: zones.at(-1)!.to };
  const first = fromLeft(craft, zones[0]!.to);
  yield [...zones.slice(0, -1), last];
  yield [first, ...zones.slice(1)];
  if (zones.length > 1) yield [first, ...zones.slice(1, -1), last];
}

/**
 * Lays a stretch that runs under or over openings, or over piers, in the patterns of the stretches
 * beside them; by its own two ends where that does not close.
 */
export function layUnder(
  craft: Craft,
  zonings: Iterable<readonly Zone[]>,
  width: number,
  clear: Clear,
  master: readonly Tiling[],
  under?: number,
): Laid | null {
  if (width > 2 * CLEAR_OF_END)
    for (const zones of zonings)
      for (const own of withOwnEnds(craft, zones, width)) {
        const courses = layZones(craft, own, width, clear);
        if (courses && lapsAtEnds(craft, courses, width)) return { courses, zones: own };
      }
  return layOnGrid(craft, width, clear, master, under);
}

/** The patterns beside a stretch, fewer and fewer of the narrow ones kept. */
export function* zonesBeside(
  clear: Clear,
  beside: readonly Beside[],
  width: number,
  step: number,
): Generator<Zone[]> {
  const parts = partsUnder(clear, beside, width, step);
  for (const narrow of NARROW) yield tidy(parts, width, narrow);
}

/** First index of an ordered list from which `holds` is true, its length if none. */
function firstWhere(length: number, holds: (i: number) => boolean): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Those of the stretches, which stand in order and clear of each other, that lie within `clear`. */
export function within(beside: readonly Clear[], clear: Clear): Past {
  const first = firstWhere(beside.length, (i) => beside[i]!.from >= clear.from);
  const end = firstWhere(beside.length, (i) => beside[i]!.to > clear.to);
  return { first, end: Math.max(first, end) };
}

/** Tells the first opening whose width takes in a point, mm from the wall's left end. */
export function openingsOver(fixed: readonly Fixed[]): (at: number) => Fixed | undefined {
  const openings = fixed.filter((f) => f.opening);
  let reach = Number.NEGATIVE_INFINITY;
  const reaches = openings.map(({ to }) => {
    reach = Math.max(reach, to);
    return reach;
  });
  return (at) => {
    const opening = openings[firstWhere(openings.length, (i) => reaches[i]! >= at)];
    return opening && opening.from <= at ? opening : undefined;
  };
}
