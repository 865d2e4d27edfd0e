import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  Decimal,
  exact,
  fromGeometry,
  readFraction,
  readNumber,
  writeNumber,
} from '../../shared/exact';
import { fromMinor, shareOut } from '../../shared/money';
import { PLAIN_STYLE, readStyle, showMoney, showNumber } from '../../shared/show';

const seed = 20260302;

describe('a number as written', () => {
  test.each([
    ['1450', '1450'],
    ['14.5', '14.5'],
    ['1,450.00', '1450'],
    ['1.450,25', '1450.25'],
    ['12,500,000', '12500000'],
    ['12.500.000,5', '12500000.5'],
    ['0.450', '0.45'],
    ['1450.250', '1450.25'],
  ])('%s is %s', (text, wanted) => {
    const read = readNumber(text);
    expect('value' in read && read.value.toFixed()).toBe(wanted);
  });

  test.each(['1,450', '1.450', '7,4', '999.999'])('%s can be read two ways', (text) => {
    expect(readNumber(text).faulty).toBe('two-ways');
  });

  test.each(['1,45,0', '1..2', '', '1.2.3', '1,2.3', '.5', 'NaN', 'Infinity', '1e9', '0x10'])(
    '“%s” is none',
    (text) => expect(readNumber(text).faulty).toBe('marks'),
  );

  test('written by the tool is read as the same number, and in one way', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 10n ** 15n }),
        fc.integer({ min: 0, max: 8 }),
        (digits, places) => {
          const value = new Decimal(digits.toString()).div(new Decimal(10).pow(places));
          const read = readNumber(writeNumber(value));
          expect('value' in read && read.value.eq(value)).toBe(true);
        },
      ),
      { seed, numRuns: 1000 },
    );
  });

  test('a fraction with nothing below the line is none', () => {
    expect(readFraction('1/0')).toBeUndefined();
    expect(readFraction('constructor')).toBeUndefined();
    expect(readFraction('⅝')!.toFixed()).toBe('0.625');
  });

  test('geometry is kept to a millionth, and what is no number counts as none', () => {
    expect(fromGeometry(0.1 + 0.2).toFixed()).toBe('0.3');
    expect(fromGeometry(Number.NaN).toFixed()).toBe('0');
    expect(fromGeometry(Number.NEGATIVE_INFINITY).toFixed()).toBe('0');
  });
});

describe('money shared out', () => {
  const weights = fc.array(fc.oneof(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.constant(0)), {
    minLength: 1,
    maxLength: 80,
  });

  test('sums to the total, to the last penny, whatever the weights', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), weights, (pence, of) => {
        const shares = shareOut(fromMinor(pence, 2), of, 2);
        expect(shares).toHaveLength(of.length);
        expect(shares.reduce((a, b) => a + b, 0)).toBe(pence);
        expect(shares.every((s) => Number.isInteger(s) && s >= 0)).toBe(true);
      }),
      { seed, numRuns: 1000 },
    );
  });

  test('is within a penny of what is fair', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e7 }), weights, (pence, of) => {
        const all = of.reduce((a, b) => a + b, 0);
        fc.pre(all > 0);
        shareOut(fromMinor(pence, 2), of, 2).forEach((share, i) => {
          expect(Math.abs(share - (pence * of[i]!) / all)).toBeLessThan(1.001);
        });
      }),
      { seed, numRuns: 500 },
    );
  });

  test('is equal where nothing has weight, and nothing where there are no parts', () => {
    expect(shareOut(exact('10'), [0, 0, 0], 2)).toEqual([333, 334, 333]);
    expect(shareOut(exact('10'), [Number.NaN, -1, 2], 2)).toEqual([0, 0, 1000]);
    expect(shareOut(exact('10'), [], 2)).toEqual([]);
    expect(shareOut(exact('10.005'), [1], 2)).toEqual([1001]);
    expect(shareOut(exact('10'), [1, 1, 1], 0)).toEqual([3, 4, 3]);
  });
});

describe('a figure for a reader', () => {
  const german = readStyle('1.234,56 €')!;

  test.each([
    ['£1,234.56', { group: ',', point: '.', signAfter: false, signSpace: false }],
    ['1.234,56 €', { group: '.', point: ',', signAfter: true, signSpace: true }],
    ['€ 1.234,56', { group: '.', point: ',', signAfter: false, signSpace: true }],
    ['1 234,56€', { group: ' ', point: ',', signAfter: true, signSpace: false }],
  ])('%s is a sample of how it is written', (sample, wanted) => {
    expect(readStyle(sample)).toEqual(wanted);
  });

  test.each(['', '1234', '1,234,56', 'constructor', '£12,34.56'])('“%s” is none', (sample) => {
    expect(readStyle(sample)).toBeUndefined();
  });

  test.each([
    ['1234.5', '£1,234.50', '1.234,50\u00a0€'],
    ['0', '£0.00', '0,00\u00a0€'],
    ['-1234567.891', '−£1,234,567.89', '−1.234.567,89\u00a0€'],
    ['999.995', '£1,000.00', '1.000,00\u00a0€'],
    ['-0.001', '£0.00', '0,00\u00a0€'],
  ])('%s is %s, and in Germany %s', (amount, plain, german_) => {
    expect(showMoney(exact(amount), '£', 2)).toBe(plain);
    expect(showMoney(exact(amount), '€', 2, german)).toBe(german_);
  });

  test('a sign of more than one letter stands apart, and yen have no pence', () => {
    expect(showMoney(exact('12.5'), 'CHF', 2, PLAIN_STYLE)).toBe('CHF\u00a012.50');
    expect(showMoney(exact('1234.5'), '¥', 0, PLAIN_STYLE)).toBe('¥1,235');
  });

  test('shows no more decimals than mean something', () => {
    expect(showNumber(exact('1.25'), 1)).toBe('1.3');
    expect(showNumber(exact('1.00'), 3)).toBe('1');
    expect(showNumber(exact('1234567.5'), 2, german)).toBe('1.234.567,5');
    expect(showNumber(exact('-0.04'), 1)).toBe('0');
  });
});
