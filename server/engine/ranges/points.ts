/**
 * Where in their ranges the samples lie: a rank-1 lattice, folded, the same every time. Each range is cut into as many
 * equal steps as there are samples and every step is taken once; and so, nearly, is every pair of steps.
 */

/** How many samples. A power of two, so that every run of {@link RUNS} is spread nearly as all of them are. */
export const SAMPLES = 256;

/** How many of them a piece of work is laid again for, where its geometry hangs on a range. */
export const RUNS = 32;

/**
 * The generating vector: each next one is that whose points, taken with those of any before it, have the least
 * greatest centred discrepancy (Hickernell, A generalized discrepancy and quadrature error bound, Mathematics of
 * Computation 67, 1998). tests/engine/ranges finds it again.
 */
const VECTOR = [
  1, 75, 95, 47, 105, 121, 55, 113, 109, 111, 61, 69, 41, 97, 63, 57, 103, 9, 79, 39, 125, 11, 5,
  43, 93, 7, 17, 81, 115, 45, 65, 73, 85, 67, 49, 77, 101, 99, 29, 91, 107, 3, 123, 71, 25, 117, 83,
  35, 59, 31, 89, 27, 87, 51, 119, 23, 37, 19, 13, 15, 33, 21, 53, 127,
];

/**
 * How far sample `at` lies in range number `range`, 0 to 1. Folding a lattice (the tent transform: Hickernell, Obtaining
 * O(N^-2) convergence for lattice quadrature rules, 2002) makes it as good for prices as for what comes round again;
 * set off by a quarter step it still takes every step once.
 */
export function pointOf(range: number, at: number): number {
  const step = (at * VECTOR[range % VECTOR.length]!) % SAMPLES;
  const place = Math.floor(range / VECTOR.length) % 2 === 1 ? reversed(step) : step;
  return 1 - Math.abs((2 * (place + 0.25)) / SAMPLES - 1);
}

/** More ranges than the vector is long: the same steps in another order, their binary digits read backwards. */
function reversed(step: number): number {
  let back = 0;
  for (let bit = 1, high = SAMPLES >> 1; high; bit <<= 1, high >>= 1) if (step & bit) back |= high;
  return back;
}

/**
 * The steps of the runs, one order for each range: found by a search at random for orders that go together as evenly
 * as may be. So few steps have few such; after eight ranges of one piece of work they come again.
 */
const ORDERS = [
  '0123456789abcdefghijklmnopqrstuv',
  'h0t9q5om8bsg17knve3lj4pci6dfua2r',
  'jsga0vn68hm1e2bcqtopk75id4r39lfu',
  'mu3oa5dk1bqeg72tpihj8slfnc0r9v64',
  'jl1cq0f8grhen6v3sau9ko7bi4tpm25d',
  'nva0dh4lq21s8ogrebpck59i76ftmj3u',
  '3pildkjv024me6gf89nqhsotb5r1uca7',
  'm3sb9q461u5jtklghacvrpnf720oed8i',
].map((order) => [...order].map((digit) => Number.parseInt(digit, RUNS)));

/** How far run `run` lies in the range `at` of those that work is laid again for. */
export function runPointOf(at: number, run: number): number {
  return (ORDERS[at % ORDERS.length]![run]! + 0.5) / RUNS;
}
