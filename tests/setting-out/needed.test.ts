import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Tally } from '../../server/engine/setting-out';
import { bricksNeeded, setOut, tally } from '../../server/engine/setting-out';
import { BONDS, overAll, UK, wall } from './fixtures';

const none: Tally = {
  wholes: 0,
  halves: 0,
  threeQuarters: 0,
  closers: 0,
  cuts: [],
  brickVolume: 0,
  grossVolume: 0,
};

const need = (part: Partial<Tally>, kerf = 0) => bricksNeeded({ ...none, ...part }, UK, 10, kerf);

describe('bricks for pieces', () => {
  test('two half bats or two closers from a brick, one three-quarter bat', () => {
    const { total, ...each } = need({ wholes: 10, halves: 5, threeQuarters: 4, closers: 6 });
    expect(each).toEqual({
      wholes: 10,
      forHalves: 3,
      forThreeQuarters: 4,
      forClosers: 3,
      forCuts: 0,
    });
    expect(total).toBe(20);
  });

  test('a saw that takes more than the 10 mm between two halves leaves one from a brick', () => {
    expect(need({ halves: 6 }, 10).forHalves).toBe(3);
    expect(need({ halves: 6 }, 10.5).forHalves).toBe(6);
    expect(need({ closers: 6 }, 10).forClosers).toBe(3);
    expect(need({ closers: 6 }, 10.5).forClosers).toBe(6);
  });

  test('two cuts from a brick where they and the kerf go into 215 mm', () => {
    const cuts = [
      { length: 70, count: 3 },
      { length: 145, count: 2 },
    ];
    expect(need({ cuts }).forCuts).toBe(3);
    expect(need({ cuts }, 3).forCuts).toBe(4);
  });
});

/** Fewest bricks for up to nine cuts, every way to pair them tried. */
function fewest(cuts: readonly number[], kerf: number): number {
  if (cuts.length === 0) return 0;
  const [first, ...rest] = cuts;
  let best = 1 + fewest(rest, kerf);
  for (const [i, other] of rest.entries())
    if (first! + kerf + other <= 215) best = Math.min(best, 1 + fewest(rest.toSpliced(i, 1), kerf));
  return best;
}

describe('pairing of cuts', () => {
  test('is the best there is, at two from a brick', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 30, max: 210 }), { maxLength: 8 }),
        fc.constantFrom(0, 3, 5),
        (lengths, kerf) => {
          const cuts = lengths.map((length) => ({ length, count: 1 }));
          expect(need({ cuts }, kerf).forCuts).toBe(fewest(lengths, kerf));
        },
      ),
      { numRuns: 400 },
    );
  });
});

test('a wall: the closers of an English wall cost half a brick each', () => {
  const spec = wall({ bond: BONDS.english, thickness: 2, length: overAll(12), courses: 4 });
  const all = tally(setOut(spec));
  expect(all.closers).toBe(4);
  expect(bricksNeeded(all, UK, 10).total).toBe(all.wholes + 2);
});
