/**
 * Units against their definitions, by arithmetic in whole numbers. The yard is 0.9144 m and the avoirdupois
 * pound 0.45359237 kg exactly: the agreement of 1959 among the standards laboratories of the United States,
 * the United Kingdom, Canada, Australia, New Zealand and South Africa, as NIST publishes it in Special
 * Publication 811, Guide for the Use of the International System of Units, appendix B.
 */
import { describe, expect, test } from 'vitest';
import type { QuantityValue, SizeValue } from '../../grammar/read/values';
import { Decimal } from '../../shared/exact';
import { fromBase, toBase, UNITS, unitNamed } from '../../shared/units';
import { valuesOf } from './reading';

/** Ten-thousandths of a millimetre in a yard; parts of it must come out whole. */
const YARD = 9_144_000n;
const FOOT = YARD / 3n;
const INCH = FOOT / 12n;
const MILE = YARD * 1760n;

/** `value` × 10^-`places`, exactly. */
function scaled(value: bigint, places: number): Decimal {
  return new Decimal(value.toString()).mul(new Decimal(10).pow(-places));
}

function factor(name: string): Decimal {
  const unit = unitNamed(name);
  if (!unit) throw new Error(`There is no unit ${name}.`);
  return unit.factor;
}

describe('an imperial unit', () => {
  test('the parts of the yard come out whole', () => {
    expect([FOOT * 3n, INCH * 36n]).toEqual([YARD, YARD]);
  });

  test.each([
    ['in', scaled(INCH, 4)],
    ['ft', scaled(FOOT, 4)],
    ['yd', scaled(YARD, 4)],
    ['mile', scaled(MILE, 4)],
    ['ft2', scaled(FOOT ** 2n, 14)],
    ['ft3', scaled(FOOT ** 3n, 18)],
    ['yd3', scaled(YARD ** 3n, 18)],
    ['lb', scaled(45_359_237n, 8)],
    ['ton', scaled(45_359_237n * 2000n, 8)],
  ])('%s is exact', (name, value) => {
    expect(factor(name).eq(value)).toBe(true);
  });

  test('a pound to the cubic foot is the pound over the cubic foot', () => {
    const pound = scaled(45_359_237n, 8);
    const cubicMetres = scaled(FOOT ** 3n, 21);
    expect(factor('lb/ft3').mul(cubicMetres).toSignificantDigits(35).eq(pound)).toBe(true);
  });

  test('NIST SP 811: 7.625 in, 1 ft3 and 94 lb', () => {
    expect(toBase(new Decimal('7.625'), unitNamed('in')!).toString()).toBe('193.675');
    expect(toBase(new Decimal(1), unitNamed('ft3')!).div(1000).toString()).toBe('0.028316846592');
    expect(toBase(new Decimal(94), unitNamed('lb')!).toString()).toBe('42.63768278');
  });
});

describe('a metric unit', () => {
  test.each([
    ['mm', 1],
    ['cm', 10],
    ['m', 1e3],
    ['km', 1e6],
    ['m2', 1],
    ['l', 1],
    ['m3', 1e3],
    ['kg', 1],
    ['t', 1e3],
    ['kg/m3', 1],
  ])('%s is %d of its base', (name, value) => expect(factor(name).eq(value)).toBe(true));

  test('sixty minutes are an hour, a thousand grams a kilogram', () => {
    expect(factor('min').mul(60).toDecimalPlaces(30).eq(factor('h'))).toBe(true);
    expect(factor('g').mul(1000).eq(factor('kg'))).toBe(true);
    expect(factor('%').mul(100).eq(1)).toBe(true);
  });
});

describe('the table of units', () => {
  test('gives no name to two units', () => {
    const names = UNITS.flatMap((unit) => [unit.name, ...unit.also]);
    expect(names).toEqual([...new Set(names)]);
  });

  test('finds each unit by each of its names', () => {
    for (const unit of UNITS)
      for (const name of [unit.name, ...unit.also]) expect(unitNamed(name)).toBe(unit);
  });

  test('goes there and back', () => {
    for (const unit of UNITS) {
      const back = fromBase(toBase(new Decimal('12.5'), unit), unit);
      expect(back.toDecimalPlaces(30).eq('12.5')).toBe(true);
    }
  });
});

describe('a quantity with its unit', () => {
  test.each([
    ['7.4 m', '7400'],
    ['7.4m', '7400'],
    ['740 CM', '7400'],
    ['24 ft', '7315.2'],
    ['24 Feet', '7315.2'],
    ['7 5/8 in', '193.675'],
  ])('%s is %s mm', (text, millimetres) => {
    const { length } = valuesOf('wall a', `length ${text}`) as { length: QuantityValue };
    expect(toBase(length.low, length.unit!).toString()).toBe(millimetres);
  });

  test.each([
    ['450 x 225 mm', ['450 mm', '225 mm']],
    ['450x225mm', ['450 mm', '225 mm']],
    ['450 × 225 mm', ['450 mm', '225 mm']],
    ['450*225 mm', ['450 mm', '225 mm']],
    ['1 ft x 225 mm', ['1 ft', '225 mm']],
    ['17 3/4 x 9 in', ['17.75 in', '9 in']],
  ])('%s are two sides', (text, sides) => {
    const { size } = valuesOf('wall a', `footing ${text}`) as { size: SizeValue };
    expect(size.sides.map((side) => `${side.value} ${side.unit.name}`)).toEqual(sides);
  });
});
