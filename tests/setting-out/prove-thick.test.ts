/** Walls of a brick and a half and of two, proved on both faces and, course by course, on plan. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import { setOut, type WallSpec } from '../../server/engine/setting-out';
import { overAll, wall } from './fixtures';
import { facesOf, plansOf } from './proofs';
import { ENGLISH, FLEMISH, libraryBonds, unlike } from './thick';

/** Every bond of the libraries that says what stands behind its face, and those of the tests. */
const THICK = unlike([
  { name: 'english 3', thickness: 3 as const, bond: ENGLISH[3] },
  { name: 'english 4', thickness: 4 as const, bond: ENGLISH[4] },
  { name: 'flemish 3', thickness: 3 as const, bond: FLEMISH },
  ...libraryBonds()
    .filter(({ thickness }) => thickness > 2)
    .map((each) => ({ ...each, name: `${each.library} ${each.name} ${each.thickness}` })),
]);

describe.each(THICK)('$name', ({ bond, thickness }) => {
  const lengths = fc.integer({ min: 3, max: 60 });
  const end = fc.constantFrom('stopped' as const, 'toothed' as const, 'butted' as const);

  test('of brickwork sizes: both faces and every course on plan without a fault', () => {
    fc.assert(
      fc.property(lengths, (halves) => {
        const out = setOut(wall({ bond, thickness, length: overAll(halves), courses: 5 }));
        expect([...facesOf(out), ...plansOf(out)]).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  test('of any length and ends', () => {
    const any = fc.record({
      length: fc.integer({ min: 4500, max: 60000 }).map((n) => n / 10),
      left: end,
      right: end,
    });
    fc.assert(
      fc.property(any, (ends) => {
        const out = setOut(wall({ bond, thickness, ...ends, courses: 5 }));
        expect([...facesOf(out), ...plansOf(out)]).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  test('with openings of brickwork sizes', () => {
    const gaps = fc.array(
      fc.record({
        pier: fc.integer({ min: 6, max: 24 }),
        width: fc.integer({ min: 3, max: 16 }),
        sill: fc.integer({ min: 0, max: 5 }),
        high: fc.integer({ min: 1, max: 6 }),
      }),
      { minLength: 1, maxLength: 3 },
    );
    fc.assert(
      fc.property(gaps, fc.integer({ min: 6, max: 24 }), (holes, last) => {
        const spec = withHoles(wall({ bond, thickness, courses: 12 }), holes, last);
        const out = setOut(spec);
        expect([...facesOf(out), ...plansOf(out)]).toEqual([]);
      }),
      { numRuns: 8 },
    );
  });
});

interface Hole {
  readonly pier: number;
  readonly width: number;
  readonly sill: number;
  readonly high: number;
}

/** Half bricks before each opening and across it. */
function withHoles(spec: WallSpec, holes: readonly Hole[], last: number): WallSpec {
  let at = 0;
  const openings = holes.map(({ pier, width, sill, high }, i) => {
    const from = at + pier;
    at = from + width;
    const name = `opening ${i}`;
    return { name, from: 112.5 * from - 10, width: 112.5 * width + 10, sill, top: sill + high };
  });
  return { ...spec, openings, length: overAll(at + last) };
}
