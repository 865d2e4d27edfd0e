/** Creasing tiles, falls and stepped footings. Sources beside each check. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  copingAtCorner,
  creasingCourse,
  creasingLines,
  creasingWidth,
  fallSteps,
  fitCoping,
  footingSteps,
  halfTile,
  lapVolume,
  levelsOf,
} from '../../server/engine/setting-out';
import { LIMITS, UK } from './fixtures';

const TILE = { length: 265, width: 165 };

describe('creasing tiles through a wall (265 x 165 mm plain tiles)', () => {
  const across = (wall: number) => creasingLines(wall, 25, TILE, 10).map((l) => l.across);

  test('one tile, its length through a one-brick wall, 25 mm out on each side (common practice)', () => {
    expect(across(215)).toEqual([265]);
    expect((265 - 215) / 2).toBe(25);
  });

  test('its width through half a brick; two tiles through one and a half and two', () => {
    expect(across(102.5)).toEqual([165]);
    // 327.5 + 50 = 377.5: 165 + 10 + 165 is too narrow, 265 + 10 + 165 = 440 is enough.
    expect(across(327.5)).toEqual([265, 165]);
    // 440 + 50 = 490: two lengths, 265 + 10 + 265 = 540.
    expect(across(440)).toEqual([265, 265]);
  });

  test('no few tiles cover a wall of five metres, nor does a tile of no size', () => {
    expect(across(5000)).toEqual([]);
    expect(creasingLines(215, 25, { length: Number.NaN, width: 165 }, 10)).toEqual([]);
  });

  test('covers what it is asked for, whatever the wall and the tile', () => {
    const mm = fc.integer({ min: 50, max: 400 });
    fc.assert(
      fc.property(mm, fc.integer({ min: 0, max: 60 }), mm, mm, (wall, out, length, width) => {
        const lines = creasingLines(wall, out, { length, width }, 10);
        if (lines.length) expect(creasingWidth(lines, 10)).toBeGreaterThanOrEqual(wall + 2 * out);
      }),
    );
  });
});

describe('a course of creasing tiles', () => {
  const run = { along: 165, endJoints: 0 as const, limits: LIMITS };

  test('half lapped over 1740 mm: ten whole; then nine between two halves', () => {
    // By hand: 10 x 165 + 9 x 10 = 1740; 77.5 + 9 x 165 + 77.5 + 10 x 10 = 1740.
    const length = 1740;
    const none = { cuts: [], joint: 10 };
    expect(creasingCourse({ ...run, length }, false)).toEqual({ halves: 0, wholes: 10, ...none });
    expect(creasingCourse({ ...run, length }, true)).toEqual({ halves: 2, wholes: 9, ...none });
  });

  test('fills its run, in whole and half tiles or with a cut no shorter than the least', () => {
    const length = fc.integer({ min: 200, max: 20000 });
    const endJoints = fc.constantFrom(0 as const, 1 as const, 2 as const);
    fc.assert(
      fc.property(length, endJoints, fc.boolean(), (length, endJoints, fromHalf) => {
        const all = { ...run, length, endJoints };
        const { halves, wholes, cuts, joint } = creasingCourse(all, fromHalf);
        const pieces = halves + wholes + cuts.length;
        const laid = halves * halfTile(all) + wholes * 165 + cuts.reduce((a, b) => a + b, 0);
        // A cut course keeps the best joint beside its first half.
        const odd = cuts.length && fromHalf ? 10 - joint : 0;
        expect(laid + (pieces - 1 + endJoints) * joint + odd).toBeCloseTo(length, 6);
        expect(joint).toBeGreaterThanOrEqual(LIMITS.least - 1e-6);
        expect(joint).toBeLessThanOrEqual(LIMITS.most + 1e-6);
        for (const cut of cuts) expect(cut).toBeGreaterThanOrEqual(LIMITS.leastCut - 1e-6);
        expect(fromHalf).toBe(halves > 0 && (fromHalf || cuts.length === 0) ? fromHalf : false);
      }),
      { numRuns: 300 },
    );
  });
});

describe('brick on end (common practice: 65 mm along, a brick’s width through)', () => {
  test('one to each half brick of wall, and as many along as on edge', () => {
    const asked = { unit: UK, length: 965, endJoints: 0, limits: LIMITS } as const;
    for (const thickness of [1, 2, 3, 4] as const) {
      const end = fitCoping({ ...asked, thickness, on: 'end' });
      expect(end.across).toEqual({ wholes: thickness, halves: 0 });
      expect(end.fit.pieces).toEqual(fitCoping({ ...asked, thickness }).fit.pieces);
    }
  });
});

describe('laps of a stepped footing (NHBC Standards 4.3.8, table 3: 2 x S, T or 300 mm, the largest)', () => {
  const rule = { times: 2, least: 300 };
  const lap = (courses: number, depth: number) =>
    footingSteps(levelsOf(9000, 0, [{ at: 4000, by: -courses }]), 75, depth, rule)[0];

  test.each([
    // S = 225: 450 is more than T = 225 and 300.
    [3, 225, 450],
    // S = 75: 150; T = 200; so 300.
    [1, 200, 300],
    // S = 150: 300; T = 450.
    [2, 450, 450],
  ])('%d courses on %d mm: %d mm', (courses, depth, wanted) => {
    expect(lap(courses, depth)).toEqual({ at: 4000, high: courses * 75, lap: wanted });
  });

  test('each lap is as much concrete as its step is high over it', () => {
    const steps = [lap(3, 225)!, lap(1, 200)!];
    expect(lapVolume(steps, 450)).toBe(450 * (225 * 450 + 75 * 300));
  });

  test('level ground has none', () => {
    expect(footingSteps(levelsOf(9000, 0, []), 75, 225, rule)).toEqual([]);
  });
});

describe('a fall in steps', () => {
  const fall = { length: 4490, courses: 4, half: 112.5, from: 'right', odd: -10 } as const;

  test('two steps of two courses, a third of the way each, to half bricks from the right end', () => {
    // By hand: 4490 / 3 = 1496.7 from the left is 2993.3 from the right: 27 half bricks less a joint are 3027.5.
    expect(fallSteps(fall, 2)).toEqual([
      { at: 4490 - (27 * 112.5 - 10), by: -2 },
      { at: 4490 - (13 * 112.5 - 10), by: -2 },
    ]);
  });

  test('odd courses go to the first steps, and every course is in one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -30, max: 30 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 300, max: 30000 }),
        (courses, count, length) => {
          const steps = fallSteps({ ...fall, courses, length }, count);
          if (!steps) return;
          expect(steps.reduce((sum, { by }) => sum - by, 0)).toBe(courses);
          const heights = steps.map(({ by }) => Math.abs(by));
          expect(Math.max(...heights) - Math.min(...heights)).toBeLessThanOrEqual(1);
          expect(heights).toEqual([...heights].sort((a, b) => b - a));
          for (const { at } of steps) {
            expect(at).toBeGreaterThan(0);
            expect(at).toBeLessThan(length);
          }
        },
      ),
    );
  });

  test('more steps than courses, none at all, or more than there is room for: no such steps', () => {
    expect(fallSteps(fall, 5)).toBeUndefined();
    expect(fallSteps(fall, 0)).toBeUndefined();
    expect(fallSteps({ ...fall, courses: 0 }, 1)).toBeUndefined();
    expect(fallSteps({ ...fall, courses: 90, length: 500 }, 90)).toBeUndefined();
  });
});

describe('copings at a corner (common practice: one runs through, the other butts against it)', () => {
  const wall = (part: object = {}) => ({ length: 5000, high: 600, thick: 215, deep: 215, ...part });
  const through = { inset: 0, joint: 0 };

  test('the longer wall’s runs through; the other begins at its side, with a joint', () => {
    expect(copingAtCorner(wall(), wall({ length: 4000 }), false)).toEqual(through);
    expect(copingAtCorner(wall({ length: 4000 }), wall(), true)).toEqual({ inset: 215, joint: 1 });
  });

  test('of two walls as long, one and only one runs through', () => {
    expect(copingAtCorner(wall(), wall(), true)).toEqual(through);
    expect(copingAtCorner(wall(), wall(), false)).toEqual({ inset: 215, joint: 1 });
  });

  test('a coping that reaches 45 mm over its faces takes so much more of the other', () => {
    expect(copingAtCorner(wall({ length: 4000 }), wall({ deep: 305 }), true).inset).toBe(260);
  });

  test('a lower wall’s ends at the face of the higher one, which runs to its end', () => {
    expect(copingAtCorner(wall(), wall({ high: 750, length: 1000 }), true)).toEqual({
      inset: 215,
      joint: 1,
    });
    expect(copingAtCorner(wall({ high: 750, length: 1000 }), wall(), false)).toEqual(through);
  });

  test('where the other has none it runs to the end', () => {
    expect(copingAtCorner(wall({ length: 4000 }), wall({ deep: 0 }), false)).toEqual(through);
  });

  test('a corner is covered once, whatever the walls', () => {
    const length = fc.constantFrom(1000, 2000, 3000);
    const high = fc.constantFrom(600, 750);
    const any = fc.record({ length, high, thick: fc.constant(215), deep: fc.constant(215) });
    fc.assert(
      fc.property(any, any, fc.boolean(), (a, b, first) => {
        const ends = [copingAtCorner(a, b, first), copingAtCorner(b, a, !first)];
        expect(ends.filter((end) => end.inset === 0)).toHaveLength(1);
      }),
    );
  });
});
