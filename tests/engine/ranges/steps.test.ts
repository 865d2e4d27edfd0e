/**
 * The spread of prices that go in steps (whole bags), and of the slower of two (laying and serving), against what they
 * are exactly: by a closed form, or by every value on a grid far finer than the sampling.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { jobOf } from '../world';

const HEAD = `perpend 1
use uk
job "Steps"
  tax 0%
price
  round £0.01
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £1 each
  waste  0%
`;
const GANG = 'labour\n  bricklayer £20 per h\n  labourer £10 per h\n';

function pricedAt(text: string) {
  const job = jobOf(`${HEAD}${text}`);
  expect(job.findings.filter((f) => f.severity === 'error' || f.code === 'incomplete')).toEqual([]);
  const { spread, price } = job;
  return {
    likely: price.total.value.toNumber(),
    low: spread?.low.value.toNumber(),
    high: spread?.high.value.toNumber(),
  };
}

/** The least value that so many of them do not exceed. */
const quantile = (sorted: readonly number[], share: number) =>
  sorted[Math.ceil(share * sorted.length) - 1]!;

/** Litres to a square metre of joints raked 20 mm: the face less its bricks, 1 - 13975 / 16875 of it. */
const LITRES = (1 - 13975 / 16875) * 20;

/** Pointed at no cost of time, in bags of 12.5 l at £6. */
const pointed = (area: string, lost: string) =>
  `mix bags\n  ready 25 kg bag makes 12.5 l at £6\n  joint 10 mm\n  waste ${lost}\nlabour\n  bricklayer £0 per h\n  gang 1 bricklayer\nrepair r\n  brick red\n  mix bags\n  repoint ${area} raked 20 mm\n`;
const bagsOf = (area: number, lost: number) =>
  Math.ceil((area * LITRES * (1 + lost / 100)) / 12.5 - 1e-9);

describe('whole bags', () => {
  // 8 to 40 m2 at 3.4370 l and 10% lost: 3 to 13 bags. A bag more for every 3.306 m2; the tenth lies at 11.2 m2, in the
  // fourth bag (9.92 to 13.22), the ninth at 36.8, in the twelfth (36.37 to 39.67).
  test('of one range: the bag that its tenth lies in, exactly', () => {
    const { low, high } = pricedAt(pointed('8..40 m2', '10%'));
    expect([low, high]).toEqual([4 * 6, 12 * 6]);
    expect([bagsOf(11.2, 10), bagsOf(36.8, 10)]).toEqual([4, 12]);
  });

  test('of two ranges: those of a grid of a million', () => {
    const { low, high } = pricedAt(pointed('8..40 m2', '5..45%'));
    const grid = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    const all = grid.flatMap((u) => grid.map((v) => 6 * bagsOf(8 + 32 * u, 5 + 40 * v)));
    all.sort((a, b) => a - b);
    expect([low, high]).toEqual([quantile(all, 0.1), quantile(all, 0.9)]);
  });

  test('a range within one bag moves nothing, and has no spread', () => {
    expect(pricedAt(pointed('8..9 m2', '10%')).low).toBeUndefined();
  });
});

/**
 * 300 bricks cut out by one who does 4 to 6 an hour, served by one who keeps 4.5 to 7 going: the slower of the two, m,
 * sets the pace. P(m > x) = (6 - x)(7 - x) / (2 x 2.5), for x of 4.5 and above, and (6 - x) / 2 below.
 */
describe('the slower of two', () => {
  const at = (share: number) => {
    // (6 - x)(7 - x) = 5 share: the lesser root of x² - 13 x + 42 - 5 share.
    const x = (13 - Math.sqrt(169 - 4 * (42 - 5 * share))) / 2;
    return x >= 4.5 ? x : 6 - 2 * share;
  };

  test('is that of the closed form', () => {
    const text = `${GANG}  gang 1 bricklayer + 1 labourer\nmix bags\n  ready 25 kg bag makes 12.5 l at £0\n  joint 10 mm\noutput\n  cut-out 4..6 bricks per h\nserving\n  cut-out 4.5..7 bricks per h\nrepair r\n  brick red\n  mix bags\n  cut-out 300 bricks\n`;
    const { low, high } = pricedAt(text);
    const price = (share: number) => 300 + (30 * 300) / at(share);
    expect(at(0.9)).toBeCloseTo(4.2, 9);
    // The price is low where the pace is such as only a tenth of all exceed.
    expect(Math.abs(low! / price(0.1) - 1)).toBeLessThan(0.01);
    expect(Math.abs(high! / price(0.9) - 1)).toBeLessThan(0.01);
  });
});

/** Neither end is a price between two that can be asked: each is the price of some sample. */
test('low and high are prices that the job has, the low below the high', () => {
  const range = fc
    .tuple(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 1, max: 60 }))
    .map(([low, more]) => [low, low + more] as const);
  const lost = fc
    .tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 60 }))
    .map(([low, more]) => [low, low + more] as const);
  fc.assert(
    fc.property(range, lost, (area, waste) => {
      const { low, high, likely } = pricedAt(
        pointed(`${area[0]}..${area[1]} m2`, `${waste[0]}..${waste[1]}%`),
      );
      const least = 6 * bagsOf(area[0], waste[0]);
      const most = 6 * bagsOf(area[1], waste[1]);
      expect(likely).toBe(6 * bagsOf((area[0] + area[1]) / 2, (waste[0] + waste[1]) / 2));
      if (low === undefined || high === undefined) return;
      expect(low).toBeLessThan(high);
      for (const end of [low, high]) {
        expect(end % 6).toBe(0);
        expect(end).toBeGreaterThanOrEqual(least);
        expect(end).toBeLessThanOrEqual(most);
      }
    }),
    { numRuns: 40 },
  );
});
