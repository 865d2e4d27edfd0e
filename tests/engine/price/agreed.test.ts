import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { exact } from '../../../shared/exact';
import { jobOf } from '../world';
import { costing, figures } from './jobs';

describe('an agreed price', () => {
  test('before tax: what it leaves, and what it would have been', () => {
    const job = costing('£1000', '  overhead 10%\n  profit 20%\n  agreed £1,400.00\n');
    expect(figures(job)).toMatchObject({
      net: '1400',
      tax: '280',
      price: '1680',
      leaves: '300',
      'leaves-share': '21.4',
      asked: '1320',
      'asked-total': '1584',
    });
    expect(job.price.discounts).toEqual([]);
  });

  test('with tax: the price before tax is what makes it', () => {
    const job = costing('£1000', '  agreed £1,680.00 with tax\n');
    expect(figures(job)).toMatchObject({ net: '1400', tax: '280', price: '1680', leaves: '400' });
    expect(job.price.rounding).toBeUndefined();
  });

  test('what it earns for each hour paid: wages and what is left', () => {
    const text = (price: string) => `perpend 1
use uk
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £0.50 each
  waste  0%
mix dry
  parts  sand 1
  joint  10 mm
material sand
  pack   1000 kg bag at £0
labour
  bricklayer  £20 per h
  gang        1 bricklayer
output
  facework  5 bricks per h
wall a
  brick   red
  mix     dry
  stands  held
  length  1115 mm
  height  8 courses
price
  round £0
${price}`;
    // 40 bricks for £20, 8 h for £160: of £260 there are £240 for 8 h.
    expect(figures(jobOf(text('  agreed £260\n')))).toMatchObject({ leaves: '80', earns: '30' });
  });

  // .03 cannot be made of a price and its 20% to the penny: .02 has none, and .03 has .01.
  test('a penny that price and tax cannot make is said as rounding', () => {
    const job = costing('£0', '  agreed £0.03 with tax\n');
    expect(figures(job)).toMatchObject({
      net: '0.03',
      tax: '0.01',
      rounding: '-0.01',
      price: '0.03',
    });
  });

  test('is met to the penny, and by price and tax alone wherever they can', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500_000 }),
        fc.integer({ min: 0, max: 270 }),
        (pence, rate) => {
          const job = costing(
            '£5',
            `  agreed £${(pence / 100).toFixed(2)} with tax\n`,
            `  tax ${rate / 10}%\n`,
          );
          const { price, tax, rounding, total } = job.price;
          expect(total.value.toFixed(2)).toBe((pence / 100).toFixed(2));
          const off = rounding?.value ?? exact(0);
          expect(price.value.add(tax.value).add(off).eq(total.value)).toBe(true);
          expect(off.abs().lte('0.01')).toBe(true);
          const net = Math.round(price.value.toNumber() * 100);
          const makes = (n: number) => n + Math.floor((n * rate) / 1000 + 0.5 + 1e-9);
          const can = [net - 1, net, net + 1].some((n) => makes(n) === pence);
          expect(off.isZero()).toBe(can);
        },
      ),
      { numRuns: 100 },
    );
  });
});
