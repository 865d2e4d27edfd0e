import fc from 'fast-check';
import highs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type FitQuestion, fitRun } from '../../server/engine/setting-out';
import { LIMITS } from './fixtures';

/**
 * Runs of every sort put to a mixed-integer solver (HiGHS) that knows nothing of how fitRun searches: stretches of
 * wall in whole and half bricks, openings, piers, bricks on edge, heights in courses.
 */
let solver: Awaited<ReturnType<typeof highs>>;
beforeAll(async () => {
  solver = await highs();
});

type With = 'wholes' | 'half' | 'cut';

/**
 * Least distance of the joint from the best. One binary for each number of wholes; the chosen one
 * must fill the length: wholes and their joints, with `half` a half piece among them, and with `cut`
 * one piece of any allowed length.
 */
function program(q: FitQuestion, beside: With): string {
  const { least, most, best, leastCut } = q.limits;
  const cut = beside === 'cut';
  const more = beside === 'wholes' ? 0 : 1;
  const half = beside === 'half' ? q.half! : 0;
  const counts = Array.from({ length: Math.ceil(q.length / q.piece) + 3 }, (_, n) => n);
  const usable = counts.filter((n) => n + more - 1 + q.endJoints > 0 && n + more > 0);
  const big = 4 * q.length + 1000;
  const fills = usable.flatMap((n) => {
    const joints = n + more - 1 + q.endJoints;
    const sum = `${joints} j${cut ? ' + c' : ''}`;
    const left = q.length - n * q.piece - half;
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

function optimum(q: FitQuestion, beside: With): number | null {
  const solved = solver.solve(program(q, beside), {
    mip_rel_gap: 0,
    mip_abs_gap: 0,
    mip_feasibility_tolerance: 1e-9,
    primal_feasibility_tolerance: 1e-9,
  });
  return solved.Status === 'Optimal' ? solved.ObjectiveValue : null;
}

const limits = (best: number, leastCut: number) => ({
  ...LIMITS,
  least: best - 3,
  best,
  most: best + 3,
  leastCut,
});
const tenths = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((n) => n / 10);

/** A run of one sort: its pieces, whether halves are laid in it, and the joints at its ends. */
const sort = (pieces: number[], halved: boolean, ends: (0 | 1 | 2)[], long: [number, number]) =>
  fc
    .record({
      length: tenths(...long),
      piece: fc.constantFrom(...pieces),
      endJoints: fc.constantFrom(...ends),
      best: fc.constantFrom(10, 12),
      leastCut: fc.constantFrom(25, 50),
    })
    .map(({ length, piece, endJoints, best, leastCut }): FitQuestion => {
      const half = halved ? (piece - best) / 2 : null;
      return { length, piece, half, endJoints, limits: limits(best, leastCut) };
    });

const SORTS: [string, fc.Arbitrary<FitQuestion>][] = [
  ['stretches of wall', sort([215, 240, 190], true, [0, 1, 2], [400, 4000])],
  ['openings', sort([215, 240, 193.7], true, [2], [400, 3000])],
  ['faces of piers', sort([215, 240], true, [0], [205, 900])],
  ['bricks on edge', sort([65, 73, 50], false, [0, 1, 2], [150, 1500])],
  ['heights in courses', sort([65, 73, 71, 52], false, [1], [150, 1500])],
];

/** The same least change of joint, or neither finds a way. */
function same(q: FitQuestion, joint: number | undefined, beside: With): void {
  const best = optimum(q, beside);
  const ours = joint === undefined ? null : Math.abs(joint - q.limits.best);
  if (best === null || ours === null) expect([best, ours]).toEqual([null, null]);
  else expect(ours).toBeCloseTo(best, 4);
}

/** Whole pieces that fill the run to the micron with no joint at all to alter are beside the solver’s question. */
const hasJoints = (q: FitQuestion) => q.endJoints > 0 || q.length > 2 * q.piece;

describe.each(SORTS)('%s against HiGHS', (_, run) => {
  test('in whole pieces, and with a half', () => {
    fc.assert(
      fc.property(run.filter(hasJoints), (q) => {
        const { ways } = fitRun(q);
        const joint = (kind: 'joints' | 'half-bond') =>
          ways.flatMap((w) => (w.kind === kind && w.acceptable ? [w.joint] : []))[0];
        same(q, joint('joints'), 'wholes');
        if (q.half !== null) same(q, joint('half-bond'), 'half');
      }),
      { numRuns: 150 },
    );
  });

  test('with one cut', () => {
    fc.assert(
      fc.property(run.filter(hasJoints), (q) => {
        // A cut as long as a whole is no cut: runs that whole bricks fill are the other test's.
        fc.pre(fitRun(q).works === 'no');
        const way = fitRun(q).ways.find((w) => w.kind === 'cut' && w.cuts === 1 && !w.short);
        same(q, way?.kind === 'cut' ? way.joint : undefined, 'cut');
      }),
      { numRuns: 60 },
    );
  });
});
