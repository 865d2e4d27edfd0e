/**
 * What is cut beside a lintel, held against every filling there is on a grid of millimetres: fewest and biggest cuts that
 * lap is common practice; a lap is what rules still call one, 41 mm of 56.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import {
  bricksOf,
  carve,
  carvedLap,
  type SettingOut,
  setOut,
} from '../../server/engine/setting-out';
import { BONDS, LIMITS, UK, UK_JOINTS } from './fixtures';

const KINDS = [
  { bond: BONDS.stretcher, thickness: 1 },
  { bond: BONDS.english, thickness: 2 },
  { bond: BONDS.flemish, thickness: 2 },
] as const;
const QUARTER = UK.length / 4;
const TOP = 12;

/** A pier beside a window under a lintel of one course, two or three. */
const cases = fc.record({
  kind: fc.constantFrom(...KINDS),
  pier: fc.integer({ min: 650, max: 2600 }).map((half) => half / 2),
  width: fc.integer({ min: 1200, max: 2700 }).map((half) => half / 2),
  beyond: fc.integer({ min: 650, max: 2600 }).map((half) => half / 2),
  bearing: fc.integer({ min: 100, max: 225 }),
  high: fc.integer({ min: 1, max: 3 }),
});
type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;

function built({ kind, pier, width, beyond, bearing, high }: Case) {
  const length = pier + width + beyond;
  const openings = [{ name: 'o', from: pier, width, sill: 6, top: TOP }];
  const ends = { left: 'stopped' as const, right: 'stopped' as const };
  const limits = { ...LIMITS, kerf: 3 };
  const own = { unit: UK, joints: UK_JOINTS, limits, ...kind, ...ends };
  const out = setOut({ ...own, length, courses: 20, openings, piers: [] });
  const courses = Array.from({ length: high }, (_, i) => TOP + i);
  const gap = { from: pier - bearing, to: pier + width + bearing, upright: true };
  return {
    out,
    carved: carve(
      out,
      courses.map((course) => ({ course, ...gap })),
    ),
    gap,
    courses,
  };
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

/** Seen from an end of the lintel outward, the nearest first, mm. */
function piecesFrom(out: SettingOut, course: number, at: number, side: -1 | 1) {
  const band = out.bands.find(({ from, to }) => course >= from && course < to);
  const all = (band?.segments ?? []).flatMap((segment) => [...bricksOf(segment, course)]);
  const seen = all.map(({ from, to, piece }) => {
    const [a, b] = [side * (from - at), side * (to - at)];
    return { from: Math.min(a, b), to: Math.max(a, b), piece };
  });
  return seen.filter(({ to }) => to > -300).sort((a, b) => a.from - b.from);
}

/** Middles of the joints between bricks: wider than these are openings and lintels. */
function perpendsOf(pieces: readonly Piece[]): number[] {
  return pieces.slice(1).flatMap(({ from }, i) => {
    const before = pieces[i]!.to;
    return from - before < 20 ? [(from + before) / 2] : [];
  });
}

interface Place {
  readonly far: number;
  readonly joint: number;
  readonly wary: readonly number[];
  readonly lap: number;
  /** Bricks that were there and may be laid again, mm. */
  readonly wholes: readonly number[];
}

/** Whether so many pieces at the most fill a place from a joint beside the lintel on, each perpend lapping: on a grid of mm. */
function canBeFilled(place: Place, from: number, most: number): boolean {
  const { far, joint, wary, lap, wholes } = place;
  const good = (length: number) =>
    (length >= QUARTER && length <= UK.length - 3) ||
    wholes.some((whole) => Math.abs(whole - length) < 1e-3);
  if (good(far - from)) return true;
  if (most === 1) return false;
  const step = most > 2 ? 4 : 1;
  const grid = Array.from({ length: Math.floor(UK.length / step) }, (_, i) => (i + 1) * step);
  return [...grid, ...wholes].some((length) => {
    const at = from + length + joint / 2;
    if (!good(length) || at > far || wary.some((x) => Math.abs(x - at) < lap + 0.1)) return false;
    return canBeFilled(place, from + length + joint, most - 1);
  });
}

/** What is wrong beside one end in one course, though it need not be. Courses of a lintel that the bond has alike are cut alike. */
function faultAt(all: ReturnType<typeof built>, course: number, side: -1 | 1) {
  const { out, carved, gap, courses } = all;
  const at = side < 0 ? gap.from : gap.to;
  const cycle = out.spec.bond.courses.length;
  const lap = carvedLap(out.spec);
  const laid = piecesFrom(carved, course, at, side).filter(({ from }) => from > 0);
  const before = piecesFrom(out, course, at, side);
  const { joint } = out.bands
    .find((b) => course >= b.from && course < b.to)!
    .segments.find((s) => s.from <= at && s.to >= at)!.runs[course % cycle]!;
  const alike = courses.filter((c) => (c - course) % cycle === 0);
  const near = new Set(alike.flatMap((c) => [c - 1, c + 1]));
  const wary = [...near].flatMap((c) => perpendsOf(piecesFrom(carved, c, at, side)));
  const kept = before.filter(({ from }) => from >= joint - 1e-6);
  const wrong = (far: number) => {
    const here = laid.filter(({ from }) => from < far - 1);
    const poor = perpendsOf(here).filter((x) => wary.some((y) => Math.abs(x - y) < lap - 0.01));
    const short = here.filter(
      ({ from, to, piece }) => piece === 'cut' && to - from < QUARTER - 0.01,
    );
    return poor.length + short.length ? { course, side, poor, short } : undefined;
  };
  const ends = kept.slice(0, 2).map(({ to }) => to);
  // What is laid well need not be looked for: looking through the grid is what takes time.
  if (!ends.some(wrong)) return undefined;
  for (const [i, far] of ends.entries()) {
    const wholes = kept.slice(0, i + 1).map(({ from, to }) => to - from);
    if (canBeFilled({ far, joint, wary, lap, wholes }, joint, i + 2)) return wrong(far);
  }
  return undefined;
}

describe('beside a lintel', () => {
  test('is no cut under a quarter brick, and no perpend that does not lap, where some filling has neither', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const all = built(each);
        for (const course of all.courses)
          for (const side of [-1, 1] as const) expect(faultAt(all, course, side)).toBeUndefined();
      }),
      { numRuns: 100 },
    );
  });

  test('one cut stands on a pier of 325 mm, where a half and a cut of 53 mm did', () => {
    const kind = KINDS[0];
    const each = { kind, pier: 325, width: 912.5, beyond: 1340, bearing: 150, high: 2 };
    const { carved, gap } = built(each);
    const lengths = [TOP, TOP + 1].map((course) =>
      piecesFrom(carved, course, gap.from, -1).map(({ from, to }) => to - from),
    );
    expect(lengths.map((all) => all.slice(0, 1))).toEqual([[165], [165]]);
  });
});
