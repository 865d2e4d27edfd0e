/**
 * Walls bonded into walls of half a brick: no perpend stands over another beside the one that runs in, wherever it is put, in the
 * formats of three countries; where no way is found to lay it so, that is told.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import { placeCourse } from '../../server/engine/setting-out';
import { type HalfTee, lookAt } from './half-tees';

const ofLap = new Set(['aligned', 'lap-short']);

interface Format {
  readonly use: string;
  /** A brick and a joint, mm: 215 + 10, 240 + 10, 7 5/8 and 3/8 in. */
  readonly brick: number;
  readonly bond: string;
  readonly arms: readonly (readonly [string, string])[];
}

const FORMATS: readonly Format[] = [
  {
    use: 'uk',
    brick: 225,
    bond: 'stretcher',
    arms: [
      ['stretcher', '1/2 brick'],
      ['english', '1 brick'],
      ['flemish', '1 brick'],
    ],
  },
  {
    use: 'uk',
    brick: 225,
    bond: 'third',
    arms: [
      ['third', '1/2 brick'],
      ['english', '1 brick'],
    ],
  },
  {
    use: 'de',
    brick: 250,
    bond: 'laeuferverband',
    arms: [
      ['laeuferverband', '1/2 brick'],
      ['blockverband', '1 brick'],
    ],
  },
  {
    use: 'us',
    brick: 203.2,
    bond: 'running',
    arms: [
      ['running', '1/2 brick'],
      ['english', '1 brick'],
    ],
  },
];

const ALL = FORMATS.flatMap(({ arms, ...format }) => arms.map((arm) => ({ ...format, arm })));

describe('far from any end or opening it laps wherever it is put', () => {
  test.each(ALL)('$use, $arm into $bond', ({ use, bond, arm, brick }) => {
    // Sixteenths of a brick over two bricks, each with another length: in whole and half bricks, and 37 mm off.
    for (let i = 0; i < 32; i += 5) {
      const off = i % 4 === 3 ? 37 : 0;
      const length = Math.round((20 + (i % 3) / 2) * brick - 10 + off);
      const tee: HalfTee = { use, bond, arm, length, at: 5 * brick + (i * brick) / 16 };
      const { faults, told } = lookAt(tee);
      expect([tee, faults]).toEqual([tee, []]);
      expect(told).toEqual([]);
    }
  });
});

test('near ends and openings: what does not lap is told, and nothing else is', () => {
  const opening = fc.option(
    fc.record({
      gap: fc.integer({ min: 60, max: 600 }),
      width: fc.integer({ min: 300, max: 1000 }),
      before: fc.boolean(),
    }),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...ALL),
      fc.integer({ min: 2500, max: 5000 }),
      fc.double({ min: 0.05, max: 0.9, noNaN: true }),
      fc.constantFrom('left' as const, 'right' as const),
      opening,
      ({ use, bond, arm }, length, part, side, hole) => {
        const at = Math.round(length * part * 4) / 4;
        const from = hole && (hole.before ? at - hole.gap - hole.width : at + 240 + hole.gap);
        const fits = hole && from! > 100 && from! + hole.width < length - 100;
        const more = fits
          ? `  opening o\n    from left ${from} mm\n    width ${hole.width} mm\n    sill 3 courses\n    height 3 courses\n`
          : '';
        fc.pre(at + 240 < length);
        const { faults, told } = lookAt({ use, bond, arm, length, at, side, more });
        expect(told.length > 0).toBe(faults.some(({ kind }) => ofLap.has(kind)));
      },
    ),
    { numRuns: 12 },
  );
});

/*
 * Common practice for a half-brick wall that runs into another: bats on either side of it. By hand, over 225 mm: it runs in where a
 * perpend of the courses between stands at its left side, 2582.5 mm. There a half bat closes the course that it runs through
 * (2475 to 2577.5), and in the courses between, two stretchers become a three-quarter, a half and a three-quarter bat (158.75 + 10 +
 * 102.5 + 10 + 158.75 = 440), whose joints are a quarter brick, 56.25 mm, from those on either side of it.
 */
test('by hand: over a half brick, closed with bats', () => {
  const { out } = lookAt({
    use: 'uk',
    bond: 'stretcher',
    arm: ['stretcher', '1/2 brick'],
    length: 4490,
    at: 2587.5,
  });
  const near = (course: number) =>
    placeCourse(out, course, 2300, 2990).map((p) => [p.piece, p.x, p.x + p.along]);
  expect(near(0)).toEqual([
    ['whole', 2250, 2465],
    ['half', 2475, 2577.5],
    ['whole', 2700, 2915],
    ['whole', 2925, 3140],
  ]);
  expect(near(1)).toEqual([
    ['whole', 2137.5, 2352.5],
    ['three-quarter', 2362.5, 2521.25],
    ['half', 2531.25, 2633.75],
    ['three-quarter', 2643.75, 2802.5],
    ['whole', 2812.5, 3027.5],
  ]);
});

/*
 * By hand: here it runs through the middle of a stretcher, over a perpend of the courses between. From the joint at 2245 to its side,
 * 2526.25 mm, are five quarters of a brick: a three-quarter and a half bat, their joint a quarter from the perpend at 2357.5 mm.
 */
test('by hand: over a perpend, closed with bats in the courses that it runs through alone', () => {
  const { out, faults } = lookAt({
    use: 'uk',
    bond: 'stretcher',
    arm: ['stretcher', '1/2 brick'],
    length: 4490,
    at: 2531.25,
  });
  expect(faults).toEqual([]);
  const cuts = [0, 1].map((course) =>
    placeCourse(out, course, 2200, 2990).flatMap(({ piece }) => (piece === 'whole' ? [] : piece)),
  );
  expect(cuts).toEqual([['three-quarter', 'half', 'half', 'three-quarter'], []]);
});

test('no way beside a narrow pier between it and an opening: that is told, with the courses and the place', () => {
  const { faults, told } = lookAt({
    use: 'uk',
    bond: 'stretcher',
    arm: ['stretcher', '1/2 brick'],
    length: 4612,
    at: 393.75,
    side: 'right',
    more: '  opening o\n    from left 603 mm\n    width 549 mm\n    sill 3 courses\n    height 3 courses\n',
  });
  expect(faults.length).toBeGreaterThan(0);
  expect(told).toHaveLength(1);
  expect(told[0]!.message).toMatch(
    /^Perpends stand over one another beside the wall arm, which is bonded into this one: between courses \d+ and \d+, [\d.]+ mm from the left end\. No way was found/,
  );
});
