/** Walls whose top or ground steps: what is left out is not laid, and nothing else changes. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  between,
  groundOf,
  levelAt,
  levelsOf,
  mostCourses,
  setOut,
  stepsOf,
  stretchesOf,
  sumTallies,
  type Tally,
  tally,
  topOf,
  type WallSpec,
} from '../../server/engine/setting-out';
import { plainWall, rudeWall } from './arbitrary';
import { BONDS, overAll, wall } from './fixtures';

/** Ten courses, the top down three at `top`, the ground down two at `foot`, both in half bricks. */
function stepped(part: Partial<WallSpec>, foot: number, top: number): WallSpec {
  const length = overAll(40);
  // Where the ground is lower the courses are measured from the right, as their end is there.
  const ground = levelsOf(length, 0, [{ at: length - overAll(40 - foot), by: -2 }]);
  const line = levelsOf(length, 10, [{ at: overAll(top), by: -3 }]);
  const up = (levels: typeof ground) => levels.map((l) => ({ ...l, level: l.level + 2 }));
  const steps = stepsOf(up(ground), up(line), 12);
  return wall({ ...part, length, courses: 12, steps });
}

const plain = ({ wholes, halves, threeQuarters, closers, cuts }: Tally) => {
  return { wholes, halves, threeQuarters, closers, cuts };
};

describe('a wall with a step in its top and one in its ground', () => {
  test('is the sum of its rectangles: each band of courses as a wall of that length', () => {
    for (const [bond, thickness] of [
      [BONDS.stretcher, 1],
      [BONDS.english, 2],
    ] as const) {
      const out = setOut(stepped({ bond, thickness }, 16, 24));
      const rows = (halves: number, from: number, to: number) =>
        tally(setOut(wall({ bond, thickness, length: overAll(halves), courses: to })), {
          from,
          to,
        });
      const parts = sumTallies([rows(24, 0, 2), rows(40, 2, 9), rows(24, 9, 12)]);
      expect(plain(tally(out))).toEqual(plain(parts));
      expect(tally(out).brickVolume).toBeCloseTo(parts.brickVolume, 3);
      expect(tally(out).grossVolume).toBeCloseTo(parts.grossVolume, 3);
    }
  });

  test('by hand in stretcher bond: 2 x 12 + 7 x 20 + 3 x 12 bricks', () => {
    // 24 half bricks are 12 bricks a course, 40 are 20; every second course two of them are half bats.
    const out = setOut(stepped({}, 16, 24));
    const { wholes, halves } = tally(out);
    expect(wholes + halves / 2).toBe(2 * 12 + 7 * 20 + 3 * 12);
    // One course of the first band, three of the second (courses 3 to 9) and two of the third (10 to 12).
    expect(halves).toBe(2 * (1 + 3 + 2));
  });

  test('keeps perpends plumb past its steps: every lower course is the full one, cut short', () => {
    const full = setOut(wall({ length: overAll(40), courses: 12 }));
    const out = setOut(stepped({}, 16, 24));
    const low = tally(out, { from: 2, to: 9 });
    expect(plain(low)).toEqual(plain(tally(full, { from: 2, to: 9 })));
    expect(out.bands.flatMap((b) => b.segments).every((s) => s.fits && !s.broken.length)).toBe(
      true,
    );
  });

  test('has no clash, and says again where its lines are', () => {
    const spec = stepped({}, 16, 24);
    expect(setOut(spec).clashes).toEqual([]);
    expect(groundOf(spec).map((l) => l.level)).toEqual([2, 0]);
    expect(topOf(spec).map((l) => l.level)).toEqual([12, 9]);
    expect(mostCourses(groundOf(spec), topOf(spec))).toBe(12);
  });
});

describe('levels', () => {
  test('steps at the ends or beyond them only raise or lower what follows', () => {
    expect(levelsOf(1000, 3, [])).toEqual([{ from: 0, to: 1000, level: 3 }]);
    expect(levelsOf(1000, 3, [{ at: 0, by: 2 }])).toEqual([{ from: 0, to: 1000, level: 5 }]);
    expect(levelsOf(1000, 3, [{ at: 1000, by: 2 }])).toEqual([{ from: 0, to: 1000, level: 3 }]);
  });

  test('stretches are level above and below, side by side from end to end', () => {
    const steps = fc.array(
      fc.record({ at: fc.integer({ min: -10, max: 1100 }), by: fc.integer({ min: -3, max: 3 }) }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(steps, steps, (a, b) => {
        const [ground, top] = [levelsOf(1000, 0, a), levelsOf(1000, 9, b)];
        const all = stretchesOf(ground, top);
        expect(all[0]!.from).toBe(0);
        expect(all.at(-1)!.to).toBe(1000);
        for (const [i, s] of all.entries()) {
          if (i > 0) expect(s.from).toBe(all[i - 1]!.to);
          for (const x of [s.from, (s.from + s.to) / 2])
            expect([s.bottom, s.top]).toEqual([levelAt(ground, x), levelAt(top, x)]);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('parts of a wall between places along it', () => {
  const cuts = fc.array(fc.integer({ min: -300, max: 21000 }), { minLength: 1, maxLength: 4 });
  const whole = (out: ReturnType<typeof setOut>, at: readonly number[]) => {
    const ends = [-1e6, ...[...at].sort((a, b) => a - b), 1e6];
    const parts = ends.slice(1).map((to, i) => tally(between(out, ends[i]!, to)));
    return [tally(out), sumTallies(parts)] as const;
  };

  test.each([
    ['plain walls', plainWall],
    ['walls of any openings and piers', rudeWall],
  ])('have every piece of it once: %s', (_, walls) => {
    fc.assert(
      fc.property(walls, cuts, (spec, at) => {
        const [all, sum] = whole(setOut(spec), at);
        const number = (t: Tally) => t.cuts.reduce((n, c) => n + c.count, 0);
        expect({ ...plain(sum), cuts: number(sum) }).toEqual({ ...plain(all), cuts: number(all) });
        expect(sum.brickVolume).toBeCloseTo(all.brickVolume, 0);
        expect(Math.abs(sum.grossVolume - all.grossVolume)).toBeLessThan(1);
      }),
      { numRuns: 60 },
    );
  });

  test('by hand: the left half of a wall of 20 bricks has ten of each course', () => {
    const out = setOut(wall({ length: overAll(40), courses: 2 }));
    const left = tally(between(out, 0, overAll(20)));
    // Ten stretchers; then a half bat and nine stretchers, and the middle of the tenth on the line's far side.
    expect(plain(left)).toEqual({ wholes: 19, halves: 1, threeQuarters: 0, closers: 0, cuts: [] });
  });
});

test('the area of a stepped wall is that of its rectangles', () => {
  const out = setOut(stepped({}, 16, 24));
  const area = out.bands
    .flatMap((b) => b.segments.map((s) => (s.to - s.from) * (b.to - b.from) * out.gauge))
    .reduce((a, b) => a + b, 0);
  const byHand = (2 * overAll(24) + 7 * overAll(40) + 3 * overAll(24)) * 75;
  expect(area).toBeCloseTo(byHand, 6);
});
