import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elevation } from '../../server/engine/drawing';
import { fitRun, setOut, tally } from '../../server/engine/setting-out';
import { BONDS, wall } from './fixtures';

/** Numbers as a half-written or hostile note may hold them. */
const any = fc.oneof(
  fc.constantFrom(0, -1, 1e-9, 0.1, 10, 65, 215, 1e6, 1e12, 1e300, Number.NaN, Infinity, -Infinity),
  fc.double({ min: -1000, max: 100000 }),
);

const limits = fc.record({ least: any, best: any, most: any, leastCut: any });

describe('whatever the numbers, an answer comes, and soon', () => {
  test('fitRun', () => {
    fc.assert(
      fc.property(any, any, any, limits, fc.boolean(), (length, piece, half, of, halved) => {
        const question = { length, piece, half: halved ? half : null, endJoints: 1 as const };
        const fit = fitRun({ ...question, limits: of });
        for (const way of fit.ways) expect(JSON.stringify(way)).not.toContain('null');
      }),
      { numRuns: 5000, interruptAfterTimeLimit: 180_000, markInterruptAsFailure: true },
    );
  });

  test('setOut, tally and elevation', () => {
    const size = fc.record({ length: any, width: any, height: any });
    const joints = fc.record({ bed: any, perpend: any });
    const opening = fc.record({
      name: fc.constant('hole'),
      from: any,
      width: any,
      sill: any,
      top: fc.option(any),
    });
    const most = fc.record({
      unit: fc.oneof(size, fc.constant({ length: 215, width: 102.5, height: 65 })),
      joints: fc.oneof(joints, fc.constant({ bed: 10, perpend: 10 })),
      limits: fc.oneof(limits, fc.constant({ least: 7, best: 10, most: 13, leastCut: 50 })),
      length: any,
      courses: fc.oneof(any, fc.nat(20)),
      openings: fc.array(opening, { maxLength: 3 }),
      bond: fc.constantFrom(...Object.values(BONDS)),
      thickness: fc.constantFrom(1 as const, 2 as const),
    });
    fc.assert(
      fc.property(most, (part) => {
        const out = setOut(wall(part));
        const { wholes, brickVolume } = tally(out);
        expect(Number.isNaN(wholes + brickVolume)).toBe(false);
        expect(elevation(out, { title: 'x', mostBricks: 2000 }).boxes.length).toBeLessThan(4000);
      }),
      { numRuns: 3000, interruptAfterTimeLimit: 180_000, markInterruptAsFailure: true },
    );
  });

  test('more courses than can be counted are none', () => {
    const out = setOut(wall({ courses: 1e300, length: 1e6, joints: { bed: 0, perpend: 65 } }));
    expect(tally(out).wholes).toBe(0);
  });
});
