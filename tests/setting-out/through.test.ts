/** Room in walls of half a brick for walls that run right through: closed, lapping, and the same seen from the other side. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import {
  letIn,
  placeCourse,
  type SettingOut,
  setOut,
  tally,
} from '../../server/engine/setting-out';
import { mirrorRun } from '../../server/engine/setting-out/join/trim';
import { overAll, wall } from './fixtures';

const COURSES = 8;

/** The same wall from the other side. */
function mirrored(out: SettingOut): SettingOut {
  const { length } = out.spec;
  const rows = out.rows.map((row) => ({
    ...row,
    bands: row.bands.map((band) => ({
      ...band,
      segments: [...band.segments].reverse().map((s) => ({
        ...s,
        from: length - s.to,
        to: length - s.from,
        left: s.right,
        right: s.left,
        runs: s.runs.map((run) => mirrorRun(run, s.to - s.from)),
      })),
    })),
  }));
  return { ...out, rows, bands: rows[0]!.bands };
}

interface Gap {
  readonly from: number;
  readonly to: number;
}

const gapAt = ({ from, to }: Gap, parity: 0 | 1, courses = { from: 0, to: COURSES }) => ({
  from,
  to,
  parity,
  courses,
});

const places = fc.record({
  length: fc.oneof(
    fc.integer({ min: 30, max: 50 }).map(overAll),
    fc.integer({ min: 3300, max: 5600 }),
  ),
  // From quarter to quarter of a brick, or anywhere.
  at: fc.oneof(
    fc.integer({ min: 1, max: 50 }).map((n) => n * 56.25),
    fc.integer({ min: 120, max: 3000 }),
  ),
  wide: fc.constantFrom(102.5, 215),
  parity: fc.constantFrom(0 as const, 1 as const),
});

/** Bricks of a course and what runs through it, from end to end: nothing in another, no joint out of the limits. */
function expectClosed(out: SettingOut, gaps: readonly ReturnType<typeof gapAt>[], low: number) {
  for (let course = 0; course < COURSES; course++) {
    const own = placeCourse(out, course).map((p) => ({ from: p.x, to: p.x + p.along }));
    const through = gaps.filter((g) => course % 2 === g.parity);
    const all = [...own, ...through].sort((a, b) => a.from - b.from);
    expect(all[0]!.from).toBeCloseTo(0, 6);
    expect(all.at(-1)!.to).toBeCloseTo(out.spec.length, 6);
    for (const [i, p] of all.slice(1).entries()) {
      const joint = p.from - all[i]!.to;
      expect(joint).toBeGreaterThan(low - 1e-6);
      expect(joint).toBeLessThan(13 + 1e-6);
    }
  }
}

describe('a wall that another runs through', () => {
  test('is closed, whatever its length and wherever the other stands', () => {
    fc.assert(
      fc.property(places, ({ length, at, wide, parity }) => {
        const gap = gapAt({ from: at, to: at + wide }, parity);
        expectClosed(letIn(setOut(wall({ length, courses: COURSES })), [gap]), [gap], 7);
      }),
      { numRuns: 40 },
    );
  });

  test('so is one that two run through, near one another or not, in the same courses or in others', () => {
    fc.assert(
      fc.property(
        places,
        fc.integer({ min: 300, max: 1500 }),
        fc.constantFrom(0 as const, 1 as const),
        ({ length, wide, parity }, between, other) => {
          const one = gapAt({ from: 900, to: 900 + wide }, parity);
          const two = gapAt({ from: one.to + between, to: one.to + between + 102.5 }, other);
          const out = setOut(wall({ length, courses: COURSES }));
          expectClosed(letIn(out, [one, two]), [one, two], 7);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('takes the same pieces seen from the other side', () => {
    fc.assert(
      fc.property(places, ({ length, at, wide, parity }) => {
        const out = setOut(wall({ length, courses: COURSES }));
        const gap = gapAt({ from: at, to: at + wide }, parity);
        const back = gapAt({ from: length - at - wide, to: length - at }, parity);
        const one = tally(letIn(out, [gap]));
        const other = tally(letIn(mirrored(out), [back]));
        for (const key of ['wholes', 'halves', 'threeQuarters', 'closers'] as const)
          expect(other[key]).toBe(one[key]);
        expect(other.brickVolume / one.brickVolume).toBeCloseTo(1, 6);
      }),
      { numRuns: 40 },
    );
  });

  test('stays as it was above the other and below it, and where that laps already', () => {
    const out = setOut(wall({ length: 4490, courses: COURSES }));
    const gap = gapAt({ from: 1800, to: 1902.5 }, 0, { from: 2, to: 6 });
    const now = letIn(out, [gap]);
    for (const course of [0, 1, 6, 7])
      expect(placeCourse(now, course)).toEqual(placeCourse(out, course));
  });

  test('stack bond, which asks for no lap, is only parted', () => {
    const bond = { name: 'stack', lap: 0, courses: [{ units: ['stretcher' as const] }] };
    const out = setOut(wall({ length: 4490, courses: COURSES, bond }));
    const now = letIn(out, [gapAt({ from: 1800, to: 1902.5 }, 0)]);
    expect(now.poorLaps).toEqual([]);
    expect(placeCourse(now, 1)).toEqual(placeCourse(out, 1));
  });
});
