/** The spread of a price, against values that have a closed form. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../world';

const FIRM = `perpend 1
use uk
job "Costs alone"
  tax 0%
price
  round £0.01
`;

function spread(lines: string) {
  const found = jobOf(`${FIRM}${lines}`).spread!;
  return {
    low: found.low.value.toNumber(),
    high: found.high.value.toNumber(),
    shares: found.ranges.map((r) => [r.line.values.name && r.origin.span.line, r.share]),
    ranges: found.ranges,
  };
}

/** Against the whole width of the sum, the ends are found to within one hundredth. */
describe('the low and the high price', () => {
  test('of one even range are a tenth of it from its ends', () => {
    const { low, high, ranges } = spread('cost skip "Skip" 1 at £100..£200\n');
    // A tenth of 100 from each end, to half a sample: 100 / 256 / 2.
    expect(Math.abs(low - 110)).toBeLessThan(0.4);
    expect(Math.abs(high - 190)).toBeLessThan(0.4);
    expect(ranges.map((r) => Math.round(r.share * 100))).toEqual([100]);
  });

  test('of one range all is that range’s, though the price goes in steps', () => {
    const { ranges } = spread('price\n  round £40\ncost skip "Skip" 1 at £100..£200\n');
    expect(ranges.map((r) => r.share)).toEqual([1]);
  });

  test('what is only let pass is no range of the price', () => {
    const limits =
      'defaults\n  joints-accepted 6..14 mm\nmortar-class own\n  mix lime 1, sand 2..3\n';
    const { ranges } = spread(`${limits}cost skip "Skip" 1 at £100..£200\n`);
    expect(ranges.map((r) => [r.line.kind.key, r.share])).toEqual([['cost', 1]]);
  });

  test('of two even ranges alike are those of the triangle that their sum makes', () => {
    const { low, high, ranges } = spread('cost a "A" 1 at £0..£100\ncost b "B" 1 at £0..£100\n');
    // Closed form: the sum's distribution function is x²/2 below 1, so that its tenth lies at √0.2 of 100.
    const tenth = 100 * Math.sqrt(0.2);
    expect(Math.abs(low - tenth)).toBeLessThan(2);
    expect(Math.abs(high - (200 - tenth))).toBeLessThan(2);
    for (const { share } of ranges) expect(Math.abs(share - 0.5)).toBeLessThan(0.01);
  });

  test('of three even ranges alike are those of their sum', () => {
    const { low, high } = spread(
      'cost a "A" 1 at £0..£100\ncost b "B" 1 at £0..£100\ncost c "C" 1 at £0..£100\n',
    );
    // Irwin–Hall, n = 3: x³/6 below 1; a tenth at ∛0.6.
    const tenth = 100 * Math.cbrt(0.6);
    expect(Math.abs(low - tenth)).toBeLessThan(3);
    expect(Math.abs(high - (300 - tenth))).toBeLessThan(3);
  });

  test('of an amount and a price that are both ranges are those of their product', () => {
    const { low, high } = spread('cost a "A" 1..3 at £50..£150\n');
    // No simple closed form: the product over a fine grid, each cell as likely as the next.
    const grid = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    const all = grid.flatMap((u) => grid.map((v) => (1 + 2 * u) * (50 + 100 * v)));
    all.sort((a, b) => a - b);
    expect(Math.abs(low / all[100_000]! - 1)).toBeLessThan(0.015);
    expect(Math.abs(high / all[900_000]! - 1)).toBeLessThan(0.015);
  });
});

describe('the share of each range', () => {
  test('goes with the square of what it moves, and the biggest comes first', () => {
    const { ranges } = spread(
      'cost a "A" 1 at £100..£120\ncost b "B" 1 at £100..£160\ncost c "C" 1 at £100..£140\n',
    );
    // Variances of even ranges go with their squares: 20², 60², 40²: 4, 36 and 16 of 56.
    expect(ranges.map((r) => r.origin.block.name)).toEqual(['b', 'c', 'a']);
    const shares = ranges.map((r) => r.share);
    for (const [i, exact] of [36 / 56, 16 / 56, 4 / 56].entries())
      expect(Math.abs(shares[i]! - exact)).toBeLessThan(0.01);
  });

  test('one that moves nothing is left out', () => {
    const { ranges } = spread('cost a "A" 1 at £100..£120\ncost b "B" 0 at £100..£160\n');
    expect(ranges.map((r) => r.origin.block.name)).toEqual(['a']);
  });

  test('there is no spread where nothing is moved', () => {
    expect(jobOf(`${FIRM}cost b "B" 0 at £100..£160\n`).spread).toBeUndefined();
    expect(jobOf(`${FIRM}cost b "B" 1 at £100\n`).spread).toBeUndefined();
  });
});

test('the same text gives the same spread, whatever was worked out before', () => {
  const text = `${FIRM}cost a "A" 1..3 at £50..£150\n`;
  const [a, b] = [jobOf(text).spread!, jobOf(text).spread!];
  expect(a.low.value.toFixed()).toBe(b.low.value.toFixed());
  expect(a.ranges.map((r) => r.share)).toEqual(b.ranges.map((r) => r.share));
});
