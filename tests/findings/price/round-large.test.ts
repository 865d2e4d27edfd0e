/** A price that is made by what it is rounded to. */
import { describe, expect, test } from 'vitest';
import { FIRM, findingsIn, silent, tells } from '../tells';

const job = (price: string, cost = '£200') =>
  `perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip hire" 1 at ${cost}\nprice\n${price}`;

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
    const [told] = findingsIn(job('  round £500\n', '£1300')).filter(
      (f) => f.code === 'round-large',
    );
    expect(told!.message).toContain('£1,300.00 and rounded to £1,500.00');
    expect(told!.ways[0]!.title).toBe('Round to £10.00');
  });

  test('is told at the job’s heading of a line of the firm’s', () => {
    const files = { 'firm.perp': `${FIRM}price\n  round £500\n` };
    const text = 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip hire" 1 at £200\n';
    const [told] = findingsIn(text, files).filter((f) => f.code === 'round-large');
    expect(told!.place.line).toBe(2);
    expect(told!.related[0]!.place.file).toMatch(/firm\.perp$/);
  });

  test('is not told of rounding that hardly moves it, of a least price, nor of one that is agreed', () => {
    silent(job('  round £5\n', '£203'), 'round-large');
    silent(job('  round £50\n'), 'round-large');
    silent(job('  least £500\n  round £500\n'), 'round-large');
    silent(job('  agreed £200\n  round £500\n'), 'round-large');
    silent(job('  round £500\n', '?'), 'round-large');
  });
});
