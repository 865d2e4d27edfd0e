import type { Clear } from './bands';
import { type Beside, CLEAR_OF_END, NARROW, partsUnder, tidy, withOwnEnds } from './composite';
import type { Craft, Ends } from './craft';
import { BRICK, mod } from './grid';
import { fromLeft, fromRight, type Laid, layTiny, sameZone, unbroken } from './phases';
import { SHORT } from './stub';
import type { Tiling } from './tiling';
import { layZones, type Zone } from './zones';

/*
 * Every way to lay a stretch that is laid again for the sake of what stands above or below it. They
 * come in the order in which a single stretch would have them: see `phases.ts` and `composite.ts`.
 */

/** Steps from either end at which a break is tried. */
const FROM_END = [1.5, 2.5, 3.5].map((bricks) => bricks * BRICK);
/** More places than this no stretch is tried with a break at. */
const MOST_PLACES = 24;

/** Ways to lay a stretch of `width` steps by itself, unbroken or with one break, at one of `places` or elsewhere; none of those `tried`. */
export function* waysAlone(
  craft: Craft,
  width: number,
  ends: Ends,
  master: readonly Tiling[],
  places: readonly number[],
  tried = new Set<string>(),
): Generator<Laid> {
  const layNew = (zones: readonly Zone[]) => layOnce(craft, zones, width, ends, tried);
  for (const zone of unbroken(craft, width, ends, master)) yield* layNew([zone]);
  const tiny = width <= SHORT ? layTiny(craft, width) : null;
  if (tiny) yield tiny;
  for (const zones of brokenOnce(craft, width, master, places)) yield* layNew(zones);
}

/** Laid in those zones, unless that was tried before or cannot be. */
function* layOnce(
  craft: Craft,
  zones: readonly Zone[],
  width: number,
  ends: Ends,
  tried: Set<string>,
): Generator<Laid> {
  const text = textOf(zones);
  if (tried.has(text)) return;
  tried.add(text);
  const courses = layZones(craft, zones, width, ends);
  if (courses) yield { courses, zones };
}

function* brokenOnce(
  craft: Craft,
  width: number,
  master: readonly Tiling[],
  places: readonly number[],
): Generator<Zone[]> {
  const own = [width / 2];
  const room = (at: number) => at >= FROM_END[0]! && at <= width - FROM_END[0]!;
  for (const at of [...places.slice(0, MOST_PLACES), ...own].filter(room))
    for (const left of [fromLeft(craft, at), { tilings: master, to: at }])
      for (const right of [fromRight(craft, width), { tilings: master, to: END }])
        if (!sameZone(left, right)) yield [left, right];
}

const END = Number.POSITIVE_INFINITY;

/** Ways to lay a stretch past openings or piers: by the patterns beside them, fewer and fewer kept, or by itself. */
export function* waysAcross(
  craft: Craft,
  beside: readonly Beside[],
  width: number,
  clear: Clear,
  master: readonly Tiling[],
  places: readonly number[],
): Generator<Laid> {
  const parts = partsUnder(clear, beside, width, craft.grid.step);
  const tried = new Set<string>();
  for (const narrow of width > 2 * CLEAR_OF_END ? [...NARROW, BRICK, BRICK / 2] : [])
    for (const own of withOwnEnds(craft, tidy(parts, width, narrow), width))
      yield* layOnce(craft, own, width, clear, tried);
  const under = parts.slice(0, -1).map(({ to }) => to);
  yield* waysAlone(craft, width, clear, master, [...places, ...under], tried);
}

/** Zones alike in this are alike: where the last of them ends does not matter. */
function textOf(zones: readonly Zone[]): string {
  const phase = ({ origin, period, cells }: Tiling) =>
    `${mod(origin, period).toFixed(3)}:${cells.map(({ width }) => width)}`;
  const last = zones.length - 1;
  const end = (to: number, i: number) => (i === last ? '' : to.toFixed(3));
  return zones.map(({ to, tilings }, i) => `${end(to, i)} ${tilings.map(phase)}`).join();
}
