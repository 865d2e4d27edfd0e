/**
 * What each range does to a price by itself. Points of many ranges never lie quite evenly to each other, so their
 * straight parts are found together, by least squares, and what is left is looked at range by range.
 */
import type { Lanes } from './lanes';

/** How often the price may turn within one range and still be followed. */
const DEGREE = 5;

/** A trace of each equation’s own: ranges that take the very same points share what they do between them. */
const RIDGE = 1e-6;

/**
 * What share of the spread is each range’s alone, 0 to 1: first-order sensitivity indices from the coefficients of
 * Legendre polynomials (Sudret, Global sensitivity analysis using polynomial chaos expansions, Reliability Engineering
 * and System Safety 93, 2008; from memory). A price that goes in steps is followed to about nine tenths.
 */
export function sharesOf(prices: Lanes, points: readonly Lanes[]): number[] {
  const count = prices.length;
  const mean = prices.reduce((sum, y) => sum + y, 0) / count;
  const left = prices.map((y) => y - mean);
  const all = left.reduce((sum, y) => sum + y * y, 0) / count;
  if (!all) return points.map(() => 0);
  // All of the spread is that of the only range, in steps or not.
  if (points.length === 1) return [1];
  const lines = points.map((u) => u.map((x) => 2 * x - 1));
  const slopes = leastSquares(lines, left);
  for (const [j, x] of lines.entries())
    for (let lane = 0; lane < count; lane++) left[lane]! -= slopes[j]! * x[lane]!;
  return lines.map((x, j) => Math.min(1, (slopes[j]! ** 2 / 3 + bends(x, left)) / all));
}

/** The variance of what turns: Legendre polynomials of the second degree and above. */
function bends(x: Lanes, left: Lanes): number {
  const sums = new Float64Array(DEGREE + 1);
  for (let lane = 0; lane < left.length; lane++) addTo(sums, x[lane]!, left[lane]!);
  let total = 0;
  for (let k = 2; k <= DEGREE; k++) total += (2 * k + 1) * (sums[k]! / left.length) ** 2;
  return total;
}

/** Adds `y` times each Legendre polynomial at `x`, -1 to 1, by their recurrence. */
function addTo(sums: Float64Array, x: number, y: number): void {
  let [before, now] = [0, 1];
  for (let k = 0; k < sums.length; k++) {
    sums[k]! += y * now;
    [before, now] = [now, ((2 * k + 1) * x * now - k * before) / (k + 1)];
  }
}

/** The slopes whose straight lines together leave the least of `y`: the normal equations, by Cholesky. */
function leastSquares(columns: readonly Lanes[], y: Lanes): Float64Array {
  const n = columns.length;
  const triangle = columns.map((a, i) => {
    const row = Float64Array.from({ length: i + 1 }, (_, k) => dot(a, columns[k]!));
    row[i]! *= 1 + RIDGE;
    return row;
  });
  for (let i = 0; i < n; i++)
    for (let k = 0; k <= i; k++) {
      let rest = triangle[i]![k]!;
      for (let m = 0; m < k; m++) rest -= triangle[i]![m]! * triangle[k]![m]!;
      triangle[i]![k] = i === k ? Math.sqrt(Math.max(rest, 1e-12)) : rest / triangle[k]![k]!;
    }
  const found = Float64Array.from(columns, (a) => dot(a, y));
  for (let i = 0; i < n; i++) {
    for (let m = 0; m < i; m++) found[i]! -= triangle[i]![m]! * found[m]!;
    found[i]! /= triangle[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let m = i + 1; m < n; m++) found[i]! -= triangle[m]![i]! * found[m]!;
    found[i]! /= triangle[i]![i]!;
  }
  return found;
}

function dot(a: Lanes, b: Lanes): number {
  let sum = 0;
  for (let lane = 0; lane < a.length; lane++) sum += a[lane]! * b[lane]!;
  return sum;
}
