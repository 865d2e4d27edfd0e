import type { Clear, Fixed } from './bands';
import type { Craft } from './craft';
import { BRICK } from './grid';
import type { Laid } from './phases';
import { fromLeft, fromRight, layOnGrid, sameZone } from './phases';
import type { LaidStretch } from './stretch';
import type { Tiling } from './tiling';
import type { Zone } from './zones';
import { lapsAtEnds, layZones, shiftZone } from './zones';

/** A stretch between fixed points of the whole wall, as laid beside them. */
export interface Beside {
  clear: Clear;
  stretch: LaidStretch;
}

/** Patterns narrower than this between two breaks are dropped, steps: the least first, more where that leaves no room. */
const NARROW = [2, 3, 5].map((bricks) => bricks * BRICK);
/** A break keeps at least this far from an end, so that quoin and break do not meet, steps. */
const CLEAR_OF_END = BRICK;

/**
 * The patterns a long stretch below or above openings takes from the stretches beside them, so
 * that perpends stay plumb past every reveal: where two neighbours' patterns do not run into one
 * another, the bond is broken under (or over) the middle of the opening between.
 */
function zonesUnder(clear: Clear, beside: readonly Beside[], width: number, step: number): Zone[] {
  const half = BRICK / 2;
  return beside.flatMap(({ clear: mine, stretch }, i) => {
    const last = i === beside.length - 1;
    const start = half * Math.round((mine.from - clear.from) / (half * step));
    const by = last && i > 0 ? width - stretch.width : start;
    const own = stretch.zones.map((zone) => shiftZone(zone, by));
    const following = beside[i + 1]?.clear.from;
    const to = last ? Number.POSITIVE_INFINITY : ((mine.to + following!) / 2 - clear.from) / step;
    return [...own.slice(0, -1), { tilings: own.at(-1)!.tilings, to }];
  });
}

function tidy(zones: readonly Zone[], width: number, narrow: number): Zone[] {
  const kept: Zone[] = [];
  for (const [i, zone] of zones.entries()) {
    const last = i === zones.length - 1;
    const from = kept.at(-1)?.to ?? 0;
    const to = last ? zone.to : Math.min(Math.max(zone.to, CLEAR_OF_END), width - CLEAR_OF_END);
    const before = kept.at(-1);
    if (before && sameZone(before, zone)) kept[kept.length - 1] = { ...before, to };
    else if (before && !last && to - from < narrow) kept[kept.length - 1] = { ...before, to };
    else kept.push({ ...zone, to });
  }
  return kept;
}

/** The zones as they are, then with one end's or both ends' pattern set out from that end itself. */
function* withOwnEnds(craft: Craft, zones: readonly Zone[], width: number): Generator<Zone[]> {
  const last = { ...fromRight(craft, width), to: zones.at(-1)!.to };
  const first = fromLeft(craft, zones[0]!.to);
  yield [...zones];
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
  beside: readonly Beside[],
  width: number,
  clear: Clear,
  master: readonly Tiling[],
  under?: number,
): Laid | null {
  const zones = zonesUnder(clear, beside, width, craft.grid.step);
  for (const narrow of width > 2 * CLEAR_OF_END ? NARROW : [])
    for (const own of withOwnEnds(craft, tidy(zones, width, narrow), width)) {
      const courses = layZones(craft, own, width, clear);
      if (courses && lapsAtEnds(craft, courses, width)) return { courses, zones: own };
    }
  return layOnGrid(craft, width, clear, master, under);
}

/** The opening whose width takes in `at` mm, if any. */
export function openingAt(fixed: readonly Fixed[], at: number): Fixed | undefined {
  return fixed.find((f) => f.opening && f.from <= at && f.to >= at);
}
