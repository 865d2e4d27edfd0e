import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between, measuredOutputs } from '../../server/engine/firm/outputs';
import { rateText } from '../../server/engine/firm/rates';
import { filed, jobWith, settingsOf } from './folder';

const ENOUGH = { days: 10, jobs: 3, sure: 0.8 };

function measured(...records: (readonly string[])[]) {
  const files = Object.fromEntries(records.map((r, i) => [`job-${i}.perp`, jobWith(r)]));
  return measuredOutputs(filed(files), settingsOf(files), ENOUGH);
}

const day = (n: number, bricks: number, hours = '7.5 h') =>
  `worked 2026-03-${String(n).padStart(2, '0')} 2 people ${hours} facework ${bricks} bricks`;

describe('what was done in an hour', () => {
  test('is the amount by the hours of those who lay: one of two, in a gang of one and one', () => {
    const [m] = measured([day(2, 450), day(3, 300)]);
    expect(m).toMatchObject({ task: 'facework', unit: 'bricks', jobs: 1, days: 2, by: 'days' });
    expect([m!.hours, m!.mean, m!.least, m!.most]).toEqual([15, 50, 40, 60]);
  });

  test('counts a long day for more', () => {
    const [m] = measured([day(2, 400, '8 h'), day(3, 100, '4 h')]);
    expect(m!.mean).toBeCloseTo(500 / 12, 10);
  });

  test('takes lines of one day for one', () => {
    const [m] = measured([day(2, 200, '4 h'), day(2, 100, '3 h'), day(3, 300)]);
    expect([m!.days, m!.hours]).toEqual([2, 14.5]);
  });

  test('loading out is by all of the gang, as its output line is', () => {
    const [m] = measured(['worked 2026-03-02 2 people 1 h load-out 900 bricks']);
    expect([m!.task, m!.mean]).toEqual(['load-out', 450]);
  });

  test('tells areas and bricks apart, and says feet in metres', () => {
    const found = measured(
      ['worked 2026-03-02 2 people 5 h repoint 10 m2'],
      ['worked 2026-03-02 2 people 5 h repoint 100 ft2'],
    );
    // 1 ft2 is 0.09290304 m2 exactly (international foot, 1959).
    expect(found.map((m) => [m.unit, m.amount])).toEqual([['m2', 10 + 9.290304]]);
  });

  test('takes nothing of a job where a day has no amount, and says how many such there are', () => {
    const [m] = measured(
      [day(2, 450), day(3, 300)],
      [day(2, 800), 'worked 2026-03-03 2 people 7.5 h facework'],
    );
    expect([m!.jobs, m!.without, m!.mean]).toEqual([1, 1, 50]);
  });

  test('is nothing of hours at no task, or of no hours', () => {
    expect(measured(['worked 2026-03-02 2 people 7.5 h'])).toEqual([]);
    expect(measured(['worked 2026-03-02 2 people 0 h facework 10 bricks'])).toEqual([]);
  });
});

describe('how sure it is', () => {
  test('with hours all alike, is Student’s interval of a mean: 30, 32, 34, 36, 38 by hand', () => {
    const samples = [30, 32, 34, 36, 38].map((amount) => ({ amount, hours: 1 }));
    // Mean 34, s² = (16 + 4 + 0 + 4 + 16) / 4 = 10; t of 4 at 90% is 1.533 (NIST table): 1.533 × √(10 / 5) = 2.168.
    const { low, high } = between(samples, 0.8);
    expect([low, high].map((v) => v!.toFixed(2))).toEqual(['31.83', '36.17']);
  });

  test('is from job to job where there are enough of them, however many days each has', () => {
    const jobs = [450, 375, 300, 225].map((n) => [day(2, n), day(3, n), day(4, n)]);
    const [few] = measured(...jobs.slice(0, 2));
    const [many] = measured(...jobs);
    expect([few!.by, many!.by]).toEqual(['days', 'jobs']);
    // Rates 60, 50, 40, 30 of hours alike: mean 45, s² = 500/3, t of 3 at 90% is 1.638: 1.638 × √(166.67 / 4) = 10.57.
    expect([many!.low!.toFixed(1), many!.high!.toFixed(1)]).toEqual(['34.4', '55.6']);
  });

  test('is not said of one day', () => {
    const [m] = measured([day(2, 450)]);
    expect([m!.low, m!.high]).toEqual([undefined, undefined]);
  });

  test('covers the true mean about as often as it says', () => {
    let [covered, state] = [0, 20_261_126];
    const chance = () => {
      state = (state * 16_807) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const trials = 2000;
    for (let i = 0; i < trials; i++) {
      const samples = Array.from({ length: 8 }, () => {
        const hours = 5 + 5 * chance();
        // The sum of twelve evenly spread numbers less 6 is all but normal, of variance one.
        const normal = Array.from({ length: 12 }, chance).reduce((a, b) => a + b, -6);
        return { hours, amount: hours * 50 + 20 * normal };
      });
      const { low, high } = between(samples, 0.8);
      if (low! <= 50 && high! >= 50) covered += 1;
    }
    // 80% of 2000 within four standard errors (0.9% each) is 76.4 to 83.6%.
    expect(covered / trials).toBeGreaterThan(0.764);
    expect(covered / trials).toBeLessThan(0.836);
  });

  test('no day is left out, and whatever is written is finite or not there', () => {
    const sample = fc.record({
      amount: fc.double({ min: 1e-6, max: 1e12, noNaN: true }),
      hours: fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(sample, { maxLength: 12 }), (samples) => {
        const { low, high } = between(samples, 0.8);
        expect(low === undefined).toBe(samples.length < 2);
        if (low !== undefined) {
          const mean =
            samples.reduce((n, s) => n + s.amount, 0) / samples.reduce((n, s) => n + s.hours, 0);
          expect(low >= 0 && low <= mean * (1 + 1e-9) && high! >= mean * (1 - 1e-9)).toBe(true);
          expect(Number.isFinite(high)).toBe(true);
        }
      }),
    );
  });
});

describe('a rate in the notation', () => {
  test.each([
    [52.34, '52.3'],
    [450.4, '450'],
    [1.2345, '1.23'],
    [50, '50'],
    [0.004, '0.004'],
  ])('%s is %s', (value, text) => {
    expect(Number(rateText(value))).toBe(Number(text));
  });

  test('never has three digits after the point, and stays between the ends', () => {
    const pair = fc.tuple(
      fc.double({ min: 0.01, max: 5000, noNaN: true }),
      fc.double({ min: 0, max: 0.2, noNaN: true }),
    );
    fc.assert(
      fc.property(pair, ([mean, by]) => {
        const text = rateText(mean, { low: mean * (1 - by), high: mean * (1 + by) });
        expect(text).not.toMatch(/^\d{1,3}\.\d{3}$/);
        expect(Math.abs(Number(text) - mean)).toBeLessThan(Math.max(mean * by, 1e-5) + 1e-6);
      }),
    );
  });
});
