import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CutWay, type FitQuestion, fitRun } from '../../server/engine/setting-out';
import { bestWithin, cutsTried, nearestSizes } from './fit-search';

/** Runs of any sort: bricks flat or on edge, free or butted, tight limits or slack ones, in tenths of a mm. */
const tenths = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((n) => n / 10);

const question: fc.Arbitrary<FitQuestion> = fc
  .record({
    length: tenths(40, 6000),
    piece: fc.constantFrom(65, 73, 102.5, 188, 215, 230, 240),
    halved: fc.boolean(),
    endJoints: fc.constantFrom(0 as const, 1 as const, 2 as const),
    best: fc.constantFrom(8, 10, 12),
    down: tenths(0, 4),
    up: tenths(0, 6),
    leastCut: fc.constantFrom(20, 30, 50, 60),
  })
  .map(({ length, piece, halved, endJoints, best, down, up, leastCut }) => ({
    length,
    piece,
    half: halved ? (piece - best) / 2 : null,
    endJoints,
    limits: { least: best - down, best, most: best + up, leastCut },
  }));

const RUNS = { numRuns: 4000 };
const halvesOf = (way: { wholes: number; half: 0 | 1 }) => way.wholes * 2 + way.half;

describe('fitRun against trying everything', () => {
  test('it works exactly when some number of pieces does, and in the best such number', () => {
    fc.assert(
      fc.property(question, (q) => {
        const fit = fitRun(q);
        const best = bestWithin(q);
        expect(fit.works !== 'no').toBe(best !== null);
        if (!best) return;
        const off = (joint: number) => Math.abs(joint - q.limits.best);
        expect(off(fit.joint!)).toBeCloseTo(off(best.joint), 6);
        expect(fit.ways[0]).toMatchObject({ joint: fit.joint, acceptable: true });
        expect(halvesOf(fit.pieces)).toBe(halvesOf(fit.ways[0] as never));
      }),
      RUNS,
    );
  });

  test('whole pieces, and an odd half, are each the best of their kind', () => {
    fc.assert(
      fc.property(question, (q) => {
        for (const [kind, parity] of [
          ['joints', 0],
          ['half-bond', 1],
        ] as const) {
          const way = fitRun(q).ways.find((w) => w.kind === kind);
          const best = bestWithin(q, parity);
          if (best)
            expect(way).toMatchObject({ acceptable: true, joint: expect.closeTo(best.joint, 6) });
          else if (way) expect(way).toMatchObject({ acceptable: false });
        }
      }),
      RUNS,
    );
  });

  test('the lengths offered are the nearest on either side', () => {
    fc.assert(
      fc.property(question, (q) => {
        const offered = fitRun(q).ways.flatMap((w) => (w.kind === 'length' ? w : []));
        for (const wholeOnly of [true, false]) {
          const mine = offered.filter((w) => !wholeOnly || w.half === 0);
          const { below, above } = nearestSizes(q, wholeOnly);
          const shorter = mine.filter((w) => w.change < 0).map((w) => w.length);
          const longer = mine.filter((w) => w.change > 0).map((w) => w.length);
          if (below === null) expect(shorter).toEqual([]);
          else expect(Math.max(...shorter)).toBeCloseTo(below, 6);
          expect(Math.min(...longer)).toBeCloseTo(above, 6);
        }
      }),
      RUNS,
    );
  });

  test('a cut fills the run, is never under the least, and no joint or number of wholes betters it', () => {
    fc.assert(
      fc.property(question, (q) => {
        const ways = fitRun(q).ways.filter((w): w is CutWay => w.kind === 'cut' && !w.short);
        const step = 0.05;
        for (const cuts of [1, 2] as const) {
          const way = ways.find((w) => w.cuts === cuts);
          if (cuts === 2 && !way && ways.some((w) => w.joint === q.limits.best)) continue;
          if (way) holds(q, way);
          const tried = cutsTried(q, cuts, step);
          const off = (w: { joint: number }) => Math.abs(w.joint - q.limits.best);
          if (!way) expect(tried).toEqual([]);
          for (const other of tried) expect(off(way!)).toBeLessThan(off(other) + step / 10);
        }
      }),
      { numRuns: 1500 },
    );
  });
});

function holds(q: FitQuestion, { wholes, cuts, cut, joint }: CutWay) {
  const joints = wholes + cuts - 1 + q.endJoints;
  expect(wholes * q.piece + cuts * cut + joints * joint).toBeCloseTo(q.length, 6);
  expect(cut).toBeGreaterThan(q.limits.leastCut - 1e-6);
  expect(cut).toBeLessThan(q.piece);
  expect(joint).toBeGreaterThan(q.limits.least - 1e-6);
  expect(joint).toBeLessThan(q.limits.most + 1e-6);
}
