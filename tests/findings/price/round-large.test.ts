/** A price that is made by what it is rounded to. */
import { describe, expect, test } from 'vitest';
import { oneCost, pricedAs } from '../../harness/priced';
import { FIRM, findingsOf, silent, tells } from '../tells';

describe('round-large', () => {
  test('is told where rounding moves the price by more than a tenth', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        cost skip "Skip hire" 1 at £200
        price
          round £500
                ^^^^ round-large: The price is worked out as £200.00 and rounded to £0.00, since it is rounded to a multiple of £500.00
      `,
      { ways: ['Round to £1.00', 'Take the line out'] },
    );
  });

  test('upwards too', () => {
    const [told] = findingsOf('round-large', pricedAs('  round £500\n', '£1300'));
    expect(told!.message).toContain('£1,300.00 and rounded to £1,500.00');
    expect(told!.ways[0]!.title).toBe('Round to £10.00');
  });

  test('is told at the job’s heading of a line of the firm’s', () => {
    const files = { 'firm.perp': `${FIRM}price\n  round £500\n` };
    const text = oneCost();
    const [told] = findingsOf('round-large', text, files);
    expect(told!.place.line).toBe(2);
    expect(told!.related[0]!.place.file).toMatch(/firm\.perp$/);
  });

  test('is not told of rounding that hardly moves it, of a least price, nor of one that is agreed', () => {
    silent(pricedAs('  round £5\n', '£203'), 'round-large');
    silent(pricedAs('  round £50\n'), 'round-large');
    silent(pricedAs('  least £500\n  round £500\n'), 'round-large');
    silent(pricedAs('  agreed £200\n  round £500\n'), 'round-large');
    silent(pricedAs('  round £500\n', '?'), 'round-large');
  });
});
