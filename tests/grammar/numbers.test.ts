import { Fraction } from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { QuantityValue } from '../../grammar/read/values';
import { Decimal, exact, readFraction, readNumber, writeNumber } from '../../shared/exact';
import { valuesOf } from './reading';

describe('a number as written', () => {
  test.each([
    ['1450', '1450'],
    ['7.4', '7.4'],
    ['102.5', '102.5'],
    ['0.450', '0.45'],
    ['0450', '450'],
    ['1450.125', '1450.125'],
    ['1,450.00', '1450'],
    ['1.450,00', '1450'],
    ['12,500,000', '12500000'],
    ['12.500.000', '12500000'],
    ['12.500.000,5', '12500000.5'],
    ['2.50', '2.5'],
    ['1.4500', '1.45'],
  ])('%s is %s', (text, value) => {
    expect(readNumber(text)).toEqual({ value: new Decimal(value) });
  });

  test.each([
    ['1,450', '1450', '1.45'],
    ['1.450', '1.45', '1450'],
    ['12,345', '12345', '12.3450'],
    ['12.345', '12.3450', '12345'],
  ])('%s is %s or %s', (text, first, second) => {
    const read = readNumber(text);
    expect(read).toEqual({ faulty: 'two-ways', readings: [first, second] });
    for (const reading of [first, second]) expect(readNumber(reading).faulty).toBeUndefined();
  });

  test.each([
    ['7,4', '7.4', '7', '4'],
    ['0,45', '0.45', '0', '45'],
    ['0,450', '0.45', '0', '450'],
    ['1450,125', '1450.125', '1450', '125'],
    ['2,0', '2', '2', '0'],
  ])('%s is %s, or %s and %s', (text, one, ...apart) => {
    expect(readNumber(text)).toEqual({ faulty: 'two-ways', readings: [one], apart });
    expect(readNumber(one).faulty).toBeUndefined();
  });

  test.each(["1'450", '1’450', '1.4.5', '1,45,000', '12,34.5', '1,450,00'])(
    '%s is none',
    (text) => {
      expect(readNumber(text)).toEqual({ faulty: 'marks' });
    },
  );

  test.each(['0.1', '1.45', '12.345', '1450', '1450.125', '0.001', '999.999', '12345678.9'])(
    '%s is written so that it can only be read one way',
    (text) => {
      const written = writeNumber(exact(text));
      const read = readNumber(written);
      expect(read.faulty).toBeUndefined();
      expect(read.faulty === undefined && read.value.eq(text)).toBe(true);
    },
  );
});

/** fraction.js counts in whole numbers, so it is exact by another way than ours. */
function sameAs(value: Decimal, fraction: Fraction): boolean {
  const { s, n, d } = fraction;
  return value
    .mul(String(d))
    .toDecimalPlaces(20)
    .eq(`${s < 0n ? '-' : ''}${n}`);
}

describe('a fraction', () => {
  test.each(['1/2', '5/8', '7 5/8', '3 1/3', '0 2/3', '15/16', '102 1/2', '1/10', '22/7'])(
    '%s is exact',
    (text) => {
      const { length } = valuesOf('wall a', `length ${text} in`) as { length: QuantityValue };
      expect(length.unit!.name).toBe('in');
      expect(sameAs(length.low, new Fraction(text))).toBe(true);
    },
  );

  test.each([
    ['½', '1/2'],
    ['¼', '1/4'],
    ['¾', '3/4'],
    ['⅓', '1/3'],
    ['⅔', '2/3'],
    ['⅛', '1/8'],
    ['⅜', '3/8'],
    ['⅝', '5/8'],
    ['⅞', '7/8'],
  ])('%s is %s', (glyph, text) => {
    expect(sameAs(readFraction(glyph)!, new Fraction(text))).toBe(true);
    const mixed = valuesOf('wall a', `length 7${glyph} in`) as { length: QuantityValue };
    expect(sameAs(mixed.length.low, new Fraction(`7 ${text}`))).toBe(true);
  });

  test('a third, three times, is one for any reader', () => {
    expect(readFraction('1/3')!.mul(3).toDecimalPlaces(30).eq(1)).toBe(true);
  });

  test('over nothing is none', () => expect(readFraction('1/0')).toBeUndefined());
});

describe('feet and inches', () => {
  test.each([
    ['6 ft 8 in', '80'],
    ['6ft 8in', '80'],
    ['6 feet 7 5/8 inches', '79 5/8'],
    ['1/2 ft 1/2 in', '6 1/2'],
  ])('%s are %s inches', (text, inches) => {
    const { length } = valuesOf('wall a', `length ${text}`) as { length: QuantityValue };
    expect(length.unit!.name).toBe('ft');
    expect(sameAs(length.low.mul(12), new Fraction(inches))).toBe(true);
  });
});

describe('a range', () => {
  test.each([
    ['60..75%', '60', '75'],
    ['60 .. 75 %', '60', '75'],
    ['60…75%', '60', '75'],
    ['60...75%', '60', '75'],
    ['60..60%', '60', '60'],
    ['1/2..62.5%', '0.5', '62.5'],
  ])('%s goes from %s to %s', (text, low, high) => {
    const { share } = valuesOf('repair a', `salvage ${text}`) as { share: QuantityValue };
    expect([share.low.toString(), share.high?.toString()]).toEqual([low, high]);
    expect(share.unit!.name).toBe('%');
  });
});
