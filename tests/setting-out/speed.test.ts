import { performance } from 'node:perf_hooks';
import { expect, test } from 'vitest';
import { setOut, tally } from '../../server/engine/setting-out';
import { BONDS, overAll, wall } from './fixtures';

/** Bricks are never visited: what is compared is one wall with another a thousand times as large, in one run. */
const flemish = (halves: number, courses: number) =>
  wall({ bond: BONDS.flemish, thickness: 2, length: overAll(halves), courses });

function best(run: () => void): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 60; round++) {
    const start = performance.now();
    for (let i = 0; i < 10; i++) run();
    least = Math.min(least, performance.now() - start);
  }
  return least / 10;
}

test('ten million bricks cost what ten thousand do, and far less than to visit them', () => {
  const small = flemish(100, 100);
  const large = flemish(3000, 3333);
  expect(tally(setOut(large)).wholes).toBeGreaterThan(9_900_000);
  const work = (spec: typeof small) => () => tally(setOut(spec));
  const [little, much] = [best(work(small)), best(work(large))];
  expect(much / little).toBeLessThan(3);
  // Well under a millisecond where it was measured; to look at each brick alone would take this long on any machine.
  expect(much).toBeLessThan(8);
});

test('what is kept grows with interruptions, not with bricks', () => {
  const kept = (spec: typeof small) =>
    setOut(spec)
      .bands.flatMap((band) => band.segments.flatMap((segment) => segment.runs))
      .reduce((sum, run) => sum + run.groups.reduce((n, g) => n + g.pieces.length, 0), 0);
  const small = flemish(101, 10);
  expect(kept(flemish(101 + 3 * 9000, 1000))).toBe(kept(small));
});

test('forty like windows are laid about as cheaply, each, as four', () => {
  const windows = (count: number) =>
    wall({
      length: overAll(30 * count + 12),
      courses: 40,
      openings: Array.from({ length: count }, (_, i) => ({
        name: `window ${i}`,
        from: overAll(30 * i + 12),
        width: 12 * 112.5 + 10,
        sill: 10,
        top: 25,
      })),
    });
  const [few, many] = [windows(4), windows(40)];
  const ratio = best(() => setOut(many)) / best(() => setOut(few));
  expect(ratio).toBeLessThan(40);
});
