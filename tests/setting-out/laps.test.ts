import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setOut } from '../../server/engine/setting-out';
import { coordinatedWall } from './arbitrary';
import { everyCourse, lapOf } from './expand';
import { BOND_NAMES, BONDS, overAll, wall } from './fixtures';

/** A quarter of a brick and its joint: 56.25 mm (glossary of the Tylers and Bricklayers Company: 56). */
const QUARTER = 56.25 - 1e-6;
/** Half of that is the least a cut may leave: common practice, no perpend all but over another. */
const EIGHTH = 225 / 8;

const BONDED = BOND_NAMES.filter((name) => name !== 'stack');

describe('perpends lap', () => {
  test.each(BONDED)(
    '%s: a quarter brick at least in every length from half a brick to 40, broken or not',
    (name) => {
      for (const thickness of [1, 2] as const)
        for (let halves = 1; halves <= 80; halves++) {
          const bond = BONDS[name];
          const length = overAll(halves);
          const courses = bond.courses.length + 1;
          const out = setOut(wall({ bond, thickness, length, courses }));
          const rows = everyCourse(out).map((row) => row.segments[0]!.bricks);
          for (let i = 1; i < rows.length; i++)
            expect(lapOf(rows[i - 1]!, rows[i]!)).toBeGreaterThan(QUARTER);
        }
    },
  );

  test('stretcher bond laps half a brick wherever it is not cut', () => {
    for (let halves = 2; halves <= 80; halves++) {
      const out = setOut(wall({ length: overAll(halves), courses: 3 }));
      const rows = everyCourse(out).map((row) => row.segments[0]!.bricks);
      for (let i = 1; i < rows.length; i++)
        expect(lapOf(rows[i - 1]!, rows[i]!)).toBeGreaterThan(112.5 - 1e-6);
    }
  });

  test('between openings in brickwork sizes, in each stretch from course to course', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        fc.pre(spec.bond.lap > 0);
        const out = setOut(spec);
        for (const band of out.bands)
          for (const { runs, ...segment } of band.segments)
            for (let i = 0; i < runs.length; i++) {
              const one = {
                ...out,
                bands: [{ from: i, to: i + 2, segments: [{ ...segment, runs }] }],
              };
              const [a, b] = everyCourse(one).map((row) => row.segments[0]!.bricks);
              expect(lapOf(a!, b!)).toBeGreaterThan(QUARTER);
            }
      }),
      { numRuns: 500 },
    );
  });

  test('in stretcher bond also past every sill and head, the whole wall over', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const out = setOut({ ...spec, bond: BONDS.stretcher });
        const rows = everyCourse(out).map((row) => row.segments.map((s) => s.bricks));
        for (let i = 1; i < rows.length; i++)
          for (const a of rows[i - 1]!)
            for (const b of rows[i]!) expect(lapOf(a, b)).toBeGreaterThan(QUARTER);
      }),
      { numRuns: 200 },
    );
  });

  test.each(BONDED)(
    '%s: a cut for a length that does not work never brings perpends within an eighth of a brick',
    (name) => {
      const bond = BONDS[name];
      const limits = { least: 10, best: 10, most: 10, leastCut: 50 };
      const short: string[] = [];
      for (const thickness of [1, 2] as const)
        for (let length = 900; length < 5000; length += 23.7) {
          const courses = bond.courses.length + 1;
          const out = setOut(wall({ bond, thickness, length, courses, limits }));
          const rows = everyCourse(out).map((row) => row.segments[0]!.bricks);
          for (let i = 1; i < rows.length; i++) {
            const lap = lapOf(rows[i - 1]!, rows[i]!);
            if (lap < EIGHTH) short.push(`${thickness} ${length} ${lap}`);
          }
        }
      expect(short).toEqual([]);
    },
  );
});
