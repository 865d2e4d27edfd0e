import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { workingOf } from '../../../server/engine/views/working';
import { exact } from '../../../shared/exact';
import { jobOf } from '../world';
import { costing, figure, figures, termOf } from './jobs';

describe('a mark-up and a margin', () => {
  test('by hand: 20% on 200 is 40; 20% of the price is 50, a quarter of the cost', () => {
    expect(figure(costing('£200', '  profit 20%\n'), 'profit')).toBe('40');
    const margin = costing('£200', '  margin 20%\n');
    expect([
      figure(margin, 'profit'),
      figure(margin, 'net'),
      figure(margin, 'leaves-share'),
    ]).toEqual(['50', '250', '20']);
  });

  test('each working names what it is of', () => {
    const told = (line: string) => {
      const job = costing('£200', line);
      return JSON.stringify(workingOf(termOf(job, 'profit'), job.env));
    };
    expect(told('  profit 20%\n')).toContain('mark-up: on cost');
    expect(told('  margin 20%\n')).toContain('margin: of the price before tax');
    expect(told('  margin 20%\n')).toContain('is 80% of it');
  });

  test('a margin is a margin: before rounding the profit is exactly that part of the price', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        fc.integer({ min: 0, max: 9900 }),
        (cost, part) => {
          const job = costing(`£${cost / 100}`, `  margin ${part / 100}%\n`);
          const [unrounded] = termOf(job, 'profit').args;
          const [price] = unrounded!.args;
          const off = unrounded!.value.sub(price!.value.mul(part).div(10_000)).abs();
          expect(off.lt(price!.value.mul('1e-30').add('1e-30'))).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a margin m is the mark-up m / (1 - m)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 10_000_000 }),
        fc.integer({ min: 1, max: 90 }),
        (cost, m) => {
          const markUp = exact(100 * m)
            .div(100 - m)
            .toDecimalPlaces(12);
          const margin = figure(costing(`£${cost / 100}`, `  margin ${m}%\n`), 'profit');
          const profit = figure(
            costing(`£${cost / 100}`, `  profit ${markUp.toFixed(12)}%\n`),
            'profit',
          );
          expect(exact(margin).sub(profit).abs().toNumber()).toBeLessThanOrEqual(0.01);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('the nearest file holds: a margin of the job over a profit of the firm, and the other way round', () => {
    const profit = (own: string, firm: string) => {
      const files = { 'firm.perp': `perpend 1\nprice\n  ${firm}\n` };
      const text = `perpend 1\nuse uk\nuse "firm.perp"\ncost a "A" 1 at £100\nprice\n  ${own}\n`;
      return figure(jobOf(text, files), 'profit');
    };
    expect(profit('margin 50%', 'profit 10%')).toBe('100');
    expect(profit('profit 10%', 'margin 50%')).toBe('10');
    expect(profit('round £1', 'margin 50%')).toBe('100');
  });
});

test('a contingency is of the cost, and overhead and profit are reckoned on both', () => {
  const job = costing('£200', '  contingency 5% "Old footings"\n  overhead 10%\n  profit 20%\n');
  // 200 + 10 = 210; 21; 231; 46.20: 277.20. It leaves the profit.
  expect(figures(job)).toMatchObject({
    contingency: '10',
    overhead: '21',
    profit: '46.2',
    net: '277.2',
    leaves: '46.2',
  });
});

describe('discounts', () => {
  test('each is of the price before any, and all come off it before tax', () => {
    const job = costing('£200', '  profit 100%\n  discount 5% "Second job"\n  discount £30\n');
    expect(figures(job)).toMatchObject({
      gross: '400',
      discount: '50',
      net: '350',
      tax: '70',
      price: '420',
    });
    expect(job.price.discounts.map((d) => [d.title, d.amount.value.toFixed()])).toEqual([
      ['Second job', '20'],
      ['Discount', '30'],
    ]);
    expect(figure(job, 'leaves')).toBe('150');
  });

  test('come off a rounded price, and are not rounded into it again', () => {
    const job = costing('£203', '  round £5\n  discount 5%\n');
    expect(figures(job)).toMatchObject({ gross: '205', discount: '10.25', net: '194.75' });
  });
});
