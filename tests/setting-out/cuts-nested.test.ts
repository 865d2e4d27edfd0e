import fc from 'fast-check';
import highs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { bricksNeeded } from '../../server/engine/setting-out';
import { boundBy, type Cut, type Solver } from './arc-flow';
import { UK } from './fixtures';

/** 500 pieces, held against HiGHS and against a bricklayer who cuts them as they come. */
let solver: Solver;
beforeAll(async () => {
  solver = await highs();
});

const KERF = 3;
const PIECES = 500;

const bricksFor = (cuts: readonly Cut[], bats: Cut[] = []) => {
  const none = { wholes: 0, halves: 0, threeQuarters: 0, closers: 0 };
  const tally = { ...none, cuts, brickVolume: 0, grossVolume: 0 };
  return bricksNeeded(tally, UK, 10, KERF, bats).total;
};

/** So many pieces of each of these lengths, in the order they come. */
function counted(lengths: readonly number[]): Cut[] {
  const count = new Map<number, number>();
  for (const length of lengths) count.set(length, (count.get(length) ?? 0) + 1);
  return [...count].map(([length, n]) => ({ length, count: n }));
}

/** A piece at a time from the first bat or begun brick with room, else from a new one; each cut takes a kerf. */
function inOrder(lengths: readonly number[], bats: readonly Cut[] = []): number {
  const left = bats.flatMap((b) => Array<number>(b.count).fill(b.length));
  let bricks = 0;
  for (const length of lengths) {
    const at = left.findIndex((room) => room >= length);
    if (at >= 0) left[at] = left[at]! - length - KERF;
    else {
      bricks++;
      left.push(UK.length - length - KERF);
    }
  }
  return bricks;
}

const piecesOf = (low: number, high: number, sorts = PIECES) =>
  fc
    .array(fc.integer({ min: low, max: high }), { minLength: sorts, maxLength: sorts })
    .chain((known) =>
      fc
        .array(fc.nat({ max: sorts - 1 }), { minLength: PIECES, maxLength: PIECES })
        .map((picks) => picks.map((pick) => known[pick]!)),
    );

/** Pieces that three by three fill a brick to the millimetre: the hardest there are. */
const threes = fc
  .array(fc.tuple(fc.integer({ min: 55, max: 85 }), fc.integer({ min: 55, max: 74 })), {
    minLength: 167,
    maxLength: 167,
  })
  .map((pairs) => pairs.flatMap(([a, b]) => [a, b, 215 - 2 * KERF - a - b]));

const SORTS: [string, fc.Arbitrary<number[]>, number][] = [
  ['a few lengths, as a wall with some openings has', piecesOf(50, 205, 4), 20],
  ['a dozen lengths', piecesOf(50, 205, 12), 20],
  ['forty lengths of up to two thirds of a brick', piecesOf(50, 140, 40), 5],
  ['any length', piecesOf(50, 210), 3],
  ['about a third of a brick, of any length', piecesOf(53, 103), 4],
  ['three that fill a brick exactly', threes, 4],
];

describe('500 cuts', () => {
  test.each(SORTS)('%s: within 1% of the bound of HiGHS', (_, lengths, numRuns) => {
    fc.assert(
      fc.property(lengths, (all) => {
        const cuts = counted(all);
        const bound = boundBy(solver, cuts, UK.length, KERF);
        const bricks = bricksFor(cuts);
        expect(bricks).toBeGreaterThanOrEqual(bound);
        expect(bricks).toBeLessThanOrEqual(1.01 * bound);
      }),
      { numRuns },
    );
  });

  test('never more bricks than cutting in order, with bats at hand or without', () => {
    const bats = fc.array(
      fc.record({ length: fc.integer({ min: 40, max: 120 }), count: fc.nat(60) }),
      {
        maxLength: 3,
      },
    );
    const lengths = fc.array(fc.integer({ min: 400, max: 2150 }), { minLength: 1, maxLength: 120 });
    fc.assert(
      fc.property(lengths, bats, (tenths, atHand) => {
        const all = tenths.map((n) => n / 10);
        const cuts = counted(all);
        const asListed = cuts.flatMap((c) => Array<number>(c.count).fill(c.length));
        expect(bricksFor(cuts, atHand)).toBeLessThanOrEqual(inOrder(asListed, atHand));
        const bare = fc.sample(fc.shuffledSubarray(all, { minLength: all.length }), 1)[0]!;
        expect(bricksFor(counted(bare))).toBeLessThanOrEqual(inOrder(bare));
      }),
      { numRuns: 300 },
    );
  });
});
