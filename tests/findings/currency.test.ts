import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, silent, tells } from './tells';

describe('currency-unknown', () => {
  test('is told of a code that is no currency', () => {
    tells(`
      perpend 1
      use uk
      defaults
        currency  ZZZ
                  ^^^ currency-unknown: no currency of ISO 4217
    `);
  });

  test.each(['constructor', '__proto__', 'toString'])('is told of %s', (word) => {
    tells(`
      perpend 1
      use uk
      defaults
        currency  ${word}
                  ${'^'.repeat(word.length)} currency-unknown: “${word}”
    `);
  });

  test('is not told of those that the library has, nor of one that the job itself gives', () => {
    silent(
      'perpend 1\nuse uk\ncurrencies\n  XYZ 2\ndefaults\n  currency XYZ\n',
      'currency-unknown',
    );
    for (const code of ['EUR', 'JPY', 'KWD'])
      silent(`perpend 1\nuse uk\ndefaults\n  currency ${code}\n`, 'currency-unknown');
  });
});

describe('currency-other', () => {
  test('is told of money in another currency, which no total counts', () => {
    tells(`
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip" 1 at €240
                            ^^^^ currency-other: This is in €, but the job is priced in GBP
                            ^^^^ incomplete: in another currency
      cost fee "Fee" 1 at 240 USD
                          ^^^^^^^ currency-other: This is in USD
                          ^^^^^^^ incomplete: in another currency
      cost lock "Lock" 1 at £10
    `);
    const text =
      'perpend 1\nuse "firm.perp"\ncost a "A" 1 at €240\ncost b "B" 1 at £10\ncost c "C" 1 at GBP 5\n';
    const { price } = jobOf(text, { 'firm.perp': FIRM });
    expect(price.cost.value.toFixed()).toBe('15');
  });

  test('is not told of the job’s own, by its sign or its code', () => {
    silent('perpend 1\nuse us\ncost a "A" 1 at $10\ncost b "B" 1 at USD 10\n', 'currency-other');
    silent('perpend 1\nuse de\ncost a "A" 1 at 10 €\ncost b "B" 1 at 10 EUR\n', 'currency-other');
  });
});
