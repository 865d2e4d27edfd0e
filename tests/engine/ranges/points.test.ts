import { describe, expect, test } from 'vitest';
import { pointOf, RUNS, runPointOf, SAMPLES } from '../../../server/engine/ranges/points';

const RANGES = Array.from({ length: 128 }, (_, range) => range);
const inOrder = (points: readonly number[]) => points.toSorted((a, b) => a - b);
const steps = (count: number) => Array.from({ length: count }, (_, i) => (i + 0.5) / count);
const pointsOf = (range: number) => Array.from({ length: SAMPLES }, (_, at) => pointOf(range, at));
const runsOf = (at: number) => Array.from({ length: RUNS }, (_, run) => runPointOf(at, run));

function correlation(a: readonly number[], b: readonly number[]): number {
  return (a.reduce((sum, x, i) => sum + (x - 0.5) * (b[i]! - 0.5), 0) / a.length) * 12;
}

/** Centred L2 discrepancy in two dimensions (Hickernell 1998): zero would be as even as nothing can be. */
function discrepancy(a: readonly number[], b: readonly number[]): number {
  const n = a.length;
  const one = (x: number) => 1 + Math.abs(x - 0.5) / 2 - (x - 0.5) ** 2 / 2;
  const two = (x: number, y: number) =>
    1 + Math.abs(x - 0.5) / 2 + Math.abs(y - 0.5) / 2 - Math.abs(x - y) / 2;
  let single = 0;
  let pairs = 0;
  for (let i = 0; i < n; i++) {
    single += one(a[i]!) * one(b[i]!);
    for (let k = 0; k < n; k++) pairs += two(a[i]!, a[k]!) * two(b[i]!, b[k]!);
  }
  return Math.sqrt((13 / 12) ** 2 - (2 / n) * single + pairs / n / n);
}

describe('the points of the sampling', () => {
  test('each range is sampled once in each of its steps', () => {
    for (const range of RANGES) expect(inOrder(pointsOf(range))).toEqual(steps(SAMPLES));
  });

  test('no two of the first 128 are sampled in the same order, nor in the order turned round', () => {
    const seen = new Set<string>();
    for (const points of RANGES.map(pointsOf))
      for (const order of [points, points.map((p) => 1 - p)]) {
        expect(seen.has(order.join())).toBe(false);
        seen.add(order.join());
      }
  });

  test('of the first dozen, no two go together', () => {
    const points = RANGES.slice(0, 12).map(pointsOf);
    for (const [i, a] of points.entries())
      for (const b of points.slice(i + 1)) expect(Math.abs(correlation(a, b))).toBeLessThan(0.015);
  });

  test('the samples of each run are spread over the other ranges as all of them are', () => {
    for (const points of RANGES.slice(0, 64).map(pointsOf))
      for (let run = 0; run < RUNS; run++) {
        const some = points.filter((_, lane) => lane % RUNS === run);
        const mean = some.reduce((sum, p) => sum + p, 0) / some.length;
        expect(Math.abs(mean - 0.5)).toBeLessThan(1 / RUNS);
      }
  });

  test('runs take each of their steps once, in eight orders that do not go together', () => {
    const orders = Array.from({ length: 8 }, (_, at) => runsOf(at));
    for (const [i, order] of orders.entries()) {
      expect(inOrder(order)).toEqual(steps(RUNS));
      for (const other of orders.slice(i + 1))
        expect(Math.abs(correlation(order, other))).toBeLessThan(0.12);
    }
  });

  test('are those that a search for the most even pairs finds', () => {
    const odd = Array.from({ length: SAMPLES / 4 }, (_, i) => 2 * i + 1);
    const tent = (x: number) => 1 - Math.abs(2 * x - 1);
    const points = new Map(
      odd.map((z) => [
        z,
        Array.from({ length: SAMPLES }, (_, i) => tent((((i * z) % SAMPLES) + 0.25) / SAMPLES)),
      ]),
    );
    const found = [1];
    while (found.length < 6) {
      const left = odd.filter((z) => !found.includes(z));
      const worst = left.map((z) => {
        const each = found.map((other) => discrepancy(points.get(other)!, points.get(z)!));
        return { z, most: Math.max(...each), all: each.reduce((sum, d) => sum + d * d, 0) };
      });
      worst.sort((a, b) => (Math.abs(a.most - b.most) > 1e-9 ? a.most - b.most : a.all - b.all));
      found.push(worst[0]!.z);
    }
    for (const [range, z] of found.entries()) expect(pointsOf(range)).toEqual(points.get(z));
  });
});
