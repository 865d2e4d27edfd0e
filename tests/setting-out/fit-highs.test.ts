import fc from 'fast-check';
import highs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { FitQuestion } from '../../server/engine/setting-out';
import { fitRun } from '../../server/engine/setting-out';
import { LIMITS } from './fixtures';

/** Brick-on-edge runs put to a mixed-integer solver (HiGHS) that knows nothing of how fitRun searches. */
let solver: Awaited<ReturnType<typeof highs>>;
beforeAll(async () => {
  solver = await highs();
});

/**
 * Least distance of the joint from the best. One binary for each number of wholes; the chosen one
 * must fill the length: wholes and their joints, and with `cut` one piece of any allowed length.
 */
function program(q: FitQuestion, cut: boolean): string {
  const { least, most, best, leastCut } = q.limits;
  const counts = Array.from({ length: Math.ceil(q.length / q.piece) + 3 }, (_, n) => n);
  const usable = counts.filter((n) => (cut ? n : n - 1) + q.endJoints > 0 && (cut || n > 0));
  const big = 4 * q.length + 1000;
  const fills = usable.flatMap((n) => {
    const joints = (cut ? n : n - 1) + q.endJoints;
    const sum = `${joints} j${cut ? ' + c' : ''}`;
    const left = q.length - n * q.piece;
    return [
      ` a${n}: ${sum} + ${big} z${n} <= ${left + big}`,
      ` b${n}: ${sum} - ${big} z${n} >= ${left - big}`,
    ];
  });
  return [
    'Minimize',
    ' obj: d',
    'Subject To',
    ` up: d - j >= ${-best}`,
    ` down: d + j >= ${best}`,
    ` one: ${usable.map((n) => `z${n}`).join(' + ')} = 1`,
    ...fills,
    'Bounds',
    ` ${least} <= j <= ${most}`,
    cut ? ` ${leastCut} <= c <= ${q.piece}` : '',
    'Binary',
    ` ${usable.map((n) => `z${n}`).join(' ')}`,
    'End',
  ].join('\n');
}

function optimum(q: FitQuestion, cut: boolean): number | null {
  const solved = solver.solve(program(q, cut), {
    mip_rel_gap: 0,
    mip_abs_gap: 0,
    mip_feasibility_tolerance: 1e-9,
    primal_feasibility_tolerance: 1e-9,
  });
  return solved.Status === 'Optimal' ? solved.ObjectiveValue : null;
}

const run = fc
  .record({
    length: fc.integer({ min: 150, max: 1500 }),
    piece: fc.constantFrom(65, 73, 50),
    endJoints: fc.constantFrom(0 as const, 1 as const, 2 as const),
    leastCut: fc.constantFrom(25, 35),
  })
  .map(({ length, piece, endJoints, leastCut }): FitQuestion => {
    return { length, piece, half: null, endJoints, limits: { ...LIMITS, leastCut } };
  });

describe('fitRun against HiGHS', () => {
  test('whole bricks on edge: the same least change of joint, or neither finds one', () => {
    fc.assert(
      fc.property(run, (q) => {
        const way = fitRun(q).ways.find((w) => w.kind === 'joints' && w.acceptable);
        const best = optimum(q, false);
        if (best === null) expect(way).toBeUndefined();
        else if (way?.kind === 'joints')
          expect(Math.abs(way.joint - q.limits.best)).toBeCloseTo(best, 4);
        else expect.unreachable(`HiGHS found ${best} for ${JSON.stringify(q)}`);
      }),
      { numRuns: 150 },
    );
  });

  test('with one cut: the same least change of joint, or neither finds one', () => {
    fc.assert(
      fc.property(run, (q) => {
        // A cut as long as a whole is no cut: runs that whole bricks fill are the other test's.
        fc.pre(fitRun(q).works === 'no');
        const way = fitRun(q).ways.find((w) => w.kind === 'cut' && w.cuts === 1);
        const best = optimum(q, true);
        if (best === null) expect(way).toBeUndefined();
        else if (way?.kind === 'cut')
          expect(Math.abs(way.joint - q.limits.best)).toBeCloseTo(best, 4);
        else expect.unreachable(`HiGHS found ${best} for ${JSON.stringify(q)}`);
      }),
      { numRuns: 60 },
    );
  });
});
