/**
 * Walls with openings off the brickwork module: set out from the wall's end as if it had no openings, and cut at the
 * reveals, where stretches set out by themselves would put perpends over one another (common practice).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SettingOut, setOut, type WallSpec } from '../../server/engine/setting-out';
import { mirrorSpec } from '../../server/engine/setting-out/lay/mirror';
import { builtFace, rulesOf } from '../../server/engine/setting-out/place/built';
import { proveFace } from '../../server/engine/setting-out/prove';
import { BONDS, UK, wall } from './fixtures';
import { ofLap } from './proofs';

/** Half bricks bond walls of half a brick, quarter bonds those of a brick: as the libraries have them. */
const LIBRARY = [
  { bond: BONDS.stretcher, thickness: 1 as const },
  ...[
    BONDS.header,
    BONDS.english,
    BONDS.flemish,
    BONDS.englishGarden,
    BONDS.flemishGarden,
    BONDS.monk,
  ].map((bond) => ({ bond, thickness: 2 as const })),
];

/*
 * Work sizes, joints and least cuts. UK: BS EN 771-1 and common practice. Germany: NF of DIN 4172 and DIN 105.
 * United States: modular brick, BIA Technical Note 10B. Joints accepted, saw cuts: as in `server/library`.
 */
const FORMATS = [
  {
    unit: UK,
    joints: { bed: 10, perpend: 10 },
    limits: { least: 8, best: 10, most: 13, leastCut: 50, kerf: 3 },
  },
  {
    unit: { length: 240, width: 115, height: 71 },
    joints: { bed: 12, perpend: 10 },
    limits: { least: 8, best: 10, most: 13, leastCut: 60, kerf: 3 },
  },
  {
    unit: { length: 193.675, width: 92.075, height: 57.15 },
    joints: { bed: 9.525, perpend: 9.525 },
    limits: { least: 7.9375, best: 9.525, most: 12.7, leastCut: 50.8, kerf: 3.175 },
  },
];

/** Openings and piers of any number of whole millimetres. */
const offModule: fc.Arbitrary<WallSpec> = fc
  .record({
    bonded: fc.constantFrom(...LIBRARY),
    format: fc.constantFrom(...FORMATS),
    gaps: fc.array(
      fc.record({
        pier: fc.integer({ min: 450, max: 2500 }),
        width: fc.integer({ min: 600, max: 1800 }),
        sill: fc.integer({ min: 0, max: 8 }),
        high: fc.integer({ min: 4, max: 16 }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    last: fc.integer({ min: 450, max: 2500 }),
  })
  .map(({ bonded, format, gaps, last }) => {
    let at = 0;
    const openings = gaps.map(({ pier, width, sill, high }, i) => {
      const from = at + pier;
      at = from + width;
      return { name: `opening ${i}`, from, width, sill, top: sill + high };
    });
    return wall({ ...format, ...bonded, length: at + last, courses: 28, openings });
  });

const brickOf = ({ unit, joints }: WallSpec) => unit.length + joints.perpend;
const faultsOf = (out: SettingOut) => proveFace(builtFace(out), rulesOf(out.spec));

/** Laps nearer than `least` of a brick. */
const short = (out: SettingOut, least: number) =>
  faultsOf(out).filter((f) => ofLap(f) && f.measured < least * brickOf(out.spec));

describe('openings off the module', () => {
  /*
   * Measured over 1000 walls of these bonds and others, before: an eighth of a brick was lacking in 64 walls of a
   * hundred, a lap that rules still call one in 75, a perpend stood over another in 40. Now 0.3, 1.0 and 0.1.
   */
  test('leave perpends lapped in at least 98 walls of 100, and the rest are told', () => {
    const seen = { all: 0, aligned: 0, poor: 0, less: 0 };
    fc.assert(
      fc.property(offModule, (spec) => {
        const out = setOut(spec);
        const faults = faultsOf(out);
        expect(faults.filter((f) => !ofLap(f))).toEqual([]);
        const poor = short(out, 1 / 8);
        seen.all++;
        if (poor.some((f) => f.measured < spec.joints.perpend)) seen.aligned++;
        if (poor.length > 0) seen.poor++;
        // Less than 41 mm of 56: DIN EN 1996-2 asks 45 mm, Dutch practice 40 (steen010.nl).
        if (short(out, (1 / 4) * (1 - 0.8 / 3)).length > 0) seen.less++;
        if (poor.length > 0) expect(out.poorLaps.length).toBeGreaterThan(0);
      }),
      { numRuns: 150 },
    );
    expect(seen.aligned / seen.all).toBeLessThan(0.01);
    expect(seen.poor / seen.all).toBeLessThan(0.02);
    expect(seen.less / seen.all).toBeLessThan(0.03);
  });

  test('are laid alike in a wall and in its mirror image', () => {
    const pieces = (out: SettingOut) => builtFace(out).map((course) => course.pieces);
    fc.assert(
      fc.property(offModule, (spec) => {
        const [one, other] = [pieces(setOut(spec)), pieces(setOut(mirrorSpec(spec)))];
        for (const [i, course] of one.entries()) {
          const turned = [...other[i]!].reverse();
          expect(turned.map(({ piece }) => piece)).toEqual(course.map(({ piece }) => piece));
          for (const [j, { from, to }] of course.entries())
            expect(Math.abs(turned[j]!.to - turned[j]!.from - (to - from))).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('cut no piece so long that the saw would take more than comes off a brick', () => {
    fc.assert(
      fc.property(offModule, (spec) => {
        const longest = spec.unit.length - spec.limits.kerf!;
        const pieces = builtFace(setOut(spec)).flatMap((course) => course.pieces);
        const cuts = pieces.filter(({ piece }) => piece === 'cut');
        for (const { from, to } of cuts) expect(to - from).toBeLessThan(longest + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('cut no piece under the least cut, and keep joints within limits', () => {
    fc.assert(
      fc.property(offModule, (spec) => {
        const out = setOut(spec);
        const laid = out.bands.flatMap((b) => b.segments).filter(({ plumb }) => plumb);
        for (const { runs } of laid)
          for (const { joint, groups } of runs) {
            expect(joint).toBeGreaterThan(spec.limits.least - 1e-6);
            expect(joint).toBeLessThan(spec.limits.most + 1e-6);
            for (const { piece, length } of groups.flatMap((g) => g.pieces))
              if (piece === 'cut') expect(length).toBeGreaterThan(spec.limits.leastCut - 1e-6);
          }
      }),
      { numRuns: 60 },
    );
  });
});

describe('a pier between two openings', () => {
  /** Stretcher bond, a wall of 24 bricks; neither reveal of the pier stands on a perpend of it. */
  const spec = wall({
    length: 24 * 225 - 10,
    courses: 12,
    openings: [
      { name: 'a', from: 5 * 225 - 10, width: 940, sill: 3, top: 9 },
      { name: 'b', from: 3000, width: 1000, sill: 3, top: 9 },
    ],
  });
  const out = setOut(spec);
  const pier = out.bands.find(({ from }) => from === 3)!.segments[1]!;

  test('keeps the perpends of the wall and is cut at its reveals', () => {
    expect(pier.plumb).toBe(true);
    expect(pier.broken.map(({ at }) => at)).toEqual([pier.from, pier.to]);
    expect(out.poorLaps).toEqual([]);
  });

  test('but not where somebody has decided how it is cut', () => {
    const { from, to } = pier;
    const decided = [{ from, to, limits: spec.limits, cutAt: 'left' as const }];
    const other = setOut({ ...spec, decided }).bands.find((b) => b.from === 3)!.segments[1]!;
    expect(other.plumb).toBeUndefined();
  });
});
