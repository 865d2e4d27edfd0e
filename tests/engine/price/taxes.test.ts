import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { documentTotals } from '../../../server/engine/price/document-totals';
import { workingOf } from '../../../server/engine/views/working';
import type { Job } from '../../../server/engine/workspace/job';
import { ZERO } from '../../../shared/exact';
import { jobOf } from '../world';
import { costing, errors } from './jobs';

const rows = (job: Job) =>
  job.price.taxes.map((t) =>
    [t.category, t.rate, t.base, t.tax].map((x) => (typeof x === 'string' ? x : x.value.toFixed())),
  );

const REPAIR = (name: string, bricks: number, tax = '') =>
  `repair ${name}\n  brick red\n  mix dry\n  cut-out ${bricks} bricks\n${tax}`;

/** Each brick cut out is £1, and an hour at £20: so £21, nothing lost. */
const FIRM = `perpend 1
use uk
job "A"
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £1 each
  waste  0%
mix dry
  parts  sand 1
  joint  10 mm
material sand
  loose  1000 kg/m3
  price  £0 per t
labour
  bricklayer  £20 per h
  gang        1 bricklayer
  part-day    0 day
output
  cut-out  1 brick per h
  repoint-joints 100 m per h
price
  round £0
`;

const two = (price: string, more = '') =>
  jobOf(`${FIRM}${price}${more}${REPAIR('a', 10)}${REPAIR('b', 30, '  tax 5%\n')}`);

describe('tax by line', () => {
  test('the price before tax is shared out by cost, and each rate is worked once', () => {
    const job = two('  profit 10%\n');
    expect(errors(job)).toEqual([]);
    // 40 bricks at £21: 840, and 84: a quarter of it at 20%.
    expect(rows(job)).toEqual([
      ['S', '20', '231', '46.2'],
      ['S', '5', '693', '34.65'],
    ]);
    expect([job.price.tax, job.price.total].map((t) => t.value.toFixed())).toEqual([
      '80.85',
      '1004.85',
    ]);
    expect(job.price.taxes.map((t) => t.name)).toEqual(['VAT', 'VAT']);
  });

  test('a piece of work’s part of the price is of its own row of tax', () => {
    const job = two('  profit 10%\n');
    const parts = job.works.map((work) => job.shareOf(work));
    expect(parts.map((p) => [p.price.value.toFixed(), p.tax.rate.value.toFixed()])).toEqual([
      ['231', '20'],
      ['693', '5'],
    ]);
  });

  test('a cost with a tax line bears as much of the price as of the cost', () => {
    const job = two('', 'cost skip "Skip" 1 at £160\n  tax none "Paid for the client"\n');
    // 840 and 160; the skip is by itself.
    expect(rows(job)).toEqual([
      ['S', '20', '210', '42'],
      ['S', '5', '630', '31.5'],
      ['E', '0', '160', '0'],
    ]);
    expect(job.price.taxes[2]!.reason).toBe('Paid for the client');
    expect(job.itemShares.map((p) => [p.item.title, p.base.value.toFixed()])).toEqual([
      ['Skip', '160'],
    ]);
  });

  test('discounts are shared out as the price is', () => {
    const job = two('  discount 10%\n');
    const told = job.price.taxes.map((t) => [t.gross, t.base].map((x) => x.value.toFixed()));
    expect(told).toEqual([
      ['210', '189'],
      ['630', '567'],
    ]);
    const { price, gross } = job.shareOf(job.works[1]!);
    expect([gross.value.toFixed(), price.value.toFixed()]).toEqual(['630', '567']);
  });

  test('all of the work at another rate leaves no row for the job’s', () => {
    const job = jobOf(`${FIRM}${REPAIR('a', 10, '  tax 5%\n')}`);
    expect(rows(job)).toEqual([['S', '5', '210', '10.5']]);
  });

  test('an agreed price with tax is met to the penny', () => {
    const job = two('  agreed £1,000.00 with tax\n');
    expect(job.price.total.value.toFixed()).toBe('1000');
    const off = job.price.rounding?.value.abs().toNumber() ?? 0;
    expect(off).toBeLessThanOrEqual(0.02);
  });
});

describe('no tax, and tax that the client owes', () => {
  test('none, with the reason for the paper', () => {
    const job = costing('£100', '', '  tax none "Not registered for VAT"\n');
    expect(rows(job)).toEqual([['E', '0', '100', '0']]);
    expect(job.price.taxes[0]!.reason).toBe('Not registered for VAT');
  });

  test('0% is a rate', () => {
    expect(rows(costing('£100', '', '  tax 0%\n'))).toEqual([['Z', '0', '100', '0']]);
  });

  // HMRC manual VATREVCON37100: the amount is stated, and not in the total of VAT charged.
  test('a reverse charge: what the client owes is told, and is in no total', () => {
    const job = costing('£100', '', '  tax reverse-charge 20% "VAT"\n');
    const [row] = job.price.taxes;
    expect(rows(job)).toEqual([['AE', '0', '100', '0']]);
    expect(
      [row!.owed!.rate, row!.owed!.tax, job.price.total].map((t) => t.value.toFixed()),
    ).toEqual(['20', '20', '100']);
    expect(row!.reason).toBe('Reverse charge: customer to pay the VAT to HMRC');
  });
});

const repairs = fc.array(
  fc.record({
    bricks: fc.integer({ min: 0, max: 90 }),
    tax: fc.constantFrom(
      '',
      '  tax 5%\n',
      '  tax 12.5%\n',
      '  tax none "x"\n',
      '  tax reverse-charge 20%\n',
    ),
  }),
  { minLength: 1, maxLength: 6 },
);
const prices = fc.record({
  skip: fc.integer({ min: 0, max: 30_000 }),
  skipTax: fc.constantFrom('', '  tax 5%\n', '  tax 0%\n'),
  profit: fc.integer({ min: 0, max: 3000 }),
  discount: fc.integer({ min: 0, max: 2000 }),
});

test('rows of tax add up to the price before tax, and with tax to what is paid; parts to their row', () => {
  fc.assert(
    fc.property(repairs, prices, (all, p) => {
      const job = jobOf(
        `${FIRM}  profit ${p.profit / 100}%\n  discount ${p.discount / 100}%\n` +
          `cost skip "Skip" 1 at £${p.skip / 100}\n${p.skipTax}` +
          all.map((r, i) => REPAIR(`r${'abcdef'[i]}`, r.bricks || 1, r.tax)).join(''),
      );
      const { taxes, price, gross, tax, total } = job.price;
      const add = (of: readonly { value: typeof ZERO }[]) =>
        of.reduce((s, t) => s.add(t.value), ZERO);
      expect(add(taxes.map((t) => t.base)).eq(price.value)).toBe(true);
      expect(add(taxes.map((t) => t.gross)).eq(gross.value)).toBe(true);
      expect(price.value.add(tax.value).eq(total.value)).toBe(true);
      const parts = job.works.map((work) => job.shareOf(work));
      for (const row of taxes) {
        const mine = parts.filter((part) => part.tax === row).map((part) => part.price);
        const own = job.itemShares.filter((item) => item.tax === row).map((item) => item.base);
        expect(add([...mine, ...own]).eq(row.base.value)).toBe(true);
        expect(row.base.value.decimalPlaces()).toBeLessThanOrEqual(2);
      }
      const paper = documentTotals({
        lines: taxes.map((t) => ({ category: t.category, rate: t.rate.value, net: t.gross.value })),
        allowances: taxes.map((t) => ({
          category: t.category,
          rate: t.rate.value,
          net: t.gross.value.sub(t.base.value),
        })),
        digits: 2,
      });
      expect([paper.net.toFixed(), paper.tax.toFixed(), paper.gross.toFixed()]).toEqual(
        [price, tax, total].map((t) => t.value.toFixed()),
      );
      expect(() => workingOf(total, job.env)).not.toThrow();
    }),
    { numRuns: 40 },
  );
});
