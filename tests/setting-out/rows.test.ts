/** Walls thicker than a brick: rows behind the face, half a brick or a brick deep. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BondPattern,
  depthsOf,
  type PlacedPiece,
  placeCourse,
  setOut,
  type Thickness,
  tally,
  tallyFace,
} from '../../server/engine/setting-out';
import { BONDS, overAll, UK, wall } from './fixtures';
import { ENGLISH, FLEMISH } from './thick';

const thick = (thickness: Thickness, bond: BondPattern, halves = 20) =>
  setOut(wall({ bond, thickness, length: overAll(halves), courses: 4 }));

const overlap = (a: PlacedPiece, b: PlacedPiece) =>
  Math.min(a.x + a.along, b.x + b.along) - Math.max(a.x, b.x) > 1e-6 &&
  Math.min(a.y + a.across, b.y + b.across) - Math.max(a.y, b.y) > 1e-6;

describe('how deep each row is', () => {
  test('a wall of half a brick or one brick has the one row', () => {
    expect(depthsOf(BONDS.stretcher, 1)).toEqual([[1, 1]]);
    expect(depthsOf(BONDS.english, 2)).toEqual([[2, 2]]);
  });

  test('English: stretchers half a brick, headers a brick; the core only where there is one', () => {
    expect(depthsOf(ENGLISH[3], 3)).toEqual([
      [1, 2],
      [2, 1],
    ]);
    expect(depthsOf(ENGLISH[4], 4)).toEqual([
      [1, 2],
      [2, 0],
      [1, 2],
    ]);
  });

  test('Flemish over English: its headers go through every second course only', () => {
    expect(depthsOf(FLEMISH, 3)).toEqual([
      [1, 2],
      [2, 1],
    ]);
  });

  test('a bond that does not say what stands behind its face is not laid thicker', () => {
    expect(depthsOf(BONDS.english, 3)).toBeNull();
    expect(thick(3, BONDS.english).bands).toEqual([]);
    expect(thick(3, BONDS.english).rows).toEqual([]);
  });
});

describe('thick walls', () => {
  test.each([
    [3, 327.5],
    [4, 440],
  ] as const)('of %i half bricks are %f mm through (CO- of the dimension tables)', (n, mm) => {
    expect(thick(n, ENGLISH[n]).thickness).toBe(mm);
  });

  test('one and a half bricks, 20 half bricks long, by hand: what a bricklayer would count', () => {
    // Course A: 10 stretchers before 2 + 17 headers and two closers; course B the same from the other side.
    const { wholes, closers, halves, cuts } = tally(thick(3, ENGLISH[3]));
    expect({ wholes, closers, halves, cuts }).toEqual({
      wholes: 4 * (10 + 19),
      closers: 4 * 2,
      halves: 0,
      cuts: [],
    });
  });

  test('snapped headers are half bats: six of every twenty half bricks in every second course', () => {
    expect(tally(thick(3, FLEMISH)).halves).toBe(2 * 6);
  });

  test('the back shows its own row', () => {
    const out = thick(3, ENGLISH[3]);
    expect(tallyFace(out, { from: 0, to: 1 })).toMatchObject({ stretcher: 10, header: 0 });
    expect(tallyFace(out, { from: 0, to: 1 }, 'back')).toMatchObject({ header: 19, closer: 2 });
  });

  test('on plan no piece lies in another, all lie in the wall, and volume closes with the count', () => {
    const walls = fc.record({
      thickness: fc.constantFrom(3 as const, 4 as const),
      halves: fc.integer({ min: 3, max: 60 }),
      off: fc.constantFrom(0, 3.5, 41),
    });
    fc.assert(
      fc.property(walls, ({ thickness, halves, off }) => {
        const length = overAll(halves) + off;
        const out = setOut(wall({ bond: ENGLISH[thickness], thickness, length, courses: 2 }));
        const placed = [0, 1].map((course) => placeCourse(out, course));
        for (const pieces of placed) {
          for (const [i, a] of pieces.entries()) {
            expect(a.x).toBeGreaterThan(-1e-6);
            expect(a.x + a.along).toBeLessThan(length + 1e-6);
            expect(a.y + a.across).toBeLessThan(out.thickness + 1e-6);
            for (const b of pieces.slice(i + 1)) expect(overlap(a, b)).toBe(false);
          }
        }
        const area = placed.flat().reduce((sum, p) => sum + p.along * p.across, 0);
        expect(area * UK.height).toBeCloseTo(tally(out).brickVolume, 3);
      }),
      { numRuns: 60 },
    );
  });

  test('a window of it has just the pieces that reach into the window', () => {
    const out = thick(4, ENGLISH[4], 60);
    const all = placeCourse(out, 1);
    const seen = placeCourse(out, 1, 1000, 1500);
    const reaching = all.filter((p) => p.x < 1500 && p.x + p.along > 1000);
    expect(seen).toEqual(reaching);
    expect(seen.length).toBeLessThan(all.length / 4);
  });
});
