import { describe, expect, test } from 'vitest';
import type { ListValue, MoneyValue, QuantityValue, WordValue } from '../../grammar/read/values';
import { faultsOf, valuesOf } from './reading';

describe('money', () => {
  test.each([
    ['£6.40', '£', '6.4'],
    ['£ 6.40', '£', '6.4'],
    ['$12', '$', '12'],
    ['6.40 €', '€', '6.4'],
    ['6.40€', '€', '6.4'],
    ['GBP 6.40', 'GBP', '6.4'],
    ['6.40 GBP', 'GBP', '6.4'],
    ['£1,450.00', '£', '1450'],
    ['€1.450,00', '€', '1450'],
    ['£0', '£', '0'],
  ])('%s is so much in %s', (text, currency, amount) => {
    const { least } = valuesOf('price', `least ${text}`) as { least: MoneyValue };
    expect([least.currency, least.amount.toString()]).toEqual([currency, amount]);
  });

  test.each(['per h', '/h', '/ h'])('may be a rate: %s', (rate) => {
    const { rate: money, unit } = valuesOf('labour', `bricklayer £27.50 ${rate}`);
    expect((money as MoneyValue).amount.toString()).toBe('27.5');
    expect((unit as WordValue).text).toBe('h');
  });

  test.each(['6.40', 'pounds 6', '£', '£ six', '6.40 pounds'])('%s is none', (text) => {
    const codes = faultsOf(`price\n  least ${text}\n`).map((fault) => fault.code);
    expect(codes).toEqual([expect.stringMatching(/^value-(wrong|missing|spare)$/)]);
  });
});

describe('a range', () => {
  test.each([
    ['£220..£260', '£'],
    ['£220..260', '£'],
    ['£ 220 .. £ 260', '£'],
    ['GBP 220..260', 'GBP'],
    ['220..260 GBP', 'GBP'],
    ['220..260 €', '€'],
  ])('of money: %s', (text, currency) => {
    const { rate } = valuesOf('labour', `bricklayer ${text} per h`) as { rate: MoneyValue };
    expect([rate.currency, rate.amount.toString(), rate.high?.toString()]).toEqual([
      currency,
      '220',
      '260',
    ]);
  });

  test.each(['£260..£220', '£220..€260', '£220..', '£..260'])('of money, not: %s', (text) => {
    expect(faultsOf(`cost skip "Skip" 1 at ${text}\n`)).not.toEqual([]);
  });

  test('is not taken where money is one sum: what was agreed, the least price', () => {
    expect(faultsOf('price\n  least £220..£260\n')).not.toEqual([]);
  });

  test.each([
    ['wall north', 'height 8..11 courses', 'height', true],
    ['wall north', 'length 4..5 m', 'length', undefined],
    ['output', 'facework 40..60 bricks per h', 'amount', undefined],
  ])('in whole ones where nobody lays a part: %s %s', (kind, line, key, whole) => {
    const read = valuesOf(kind, line);
    const value = (read[key] ?? read.courses) as QuantityValue;
    expect(value.high).toBeDefined();
    expect(value.whole || undefined).toBe(whole);
  });
});

test.each(['55 bricks per h', '55 bricks/h', '55 bricks / h'])('an output: %s', (text) => {
  const { amount, unit } = valuesOf('output', `facework ${text}`);
  expect(amount).toMatchObject({ unit: { name: 'brick' } });
  expect(unit).toMatchObject({ text: 'h' });
});

describe('a date', () => {
  const last: readonly (readonly [string, number])[] = [
    ['2026-01', 31],
    ['2026-02', 28],
    ['2024-02', 29],
    ['2000-02', 29],
    ['1900-02', 28],
    ['2026-03', 31],
    ['2026-04', 30],
    ['2026-05', 31],
    ['2026-06', 30],
    ['2026-07', 31],
    ['2026-08', 31],
    ['2026-09', 30],
    ['2026-10', 31],
    ['2026-11', 30],
    ['2026-12', 31],
  ];

  test.each(last)('%s has %d days', (month, days) => {
    const codes = (day: number) => faultsOf(`job\n  date ${month}-${day}\n`).map((f) => f.code);
    expect(codes(days)).toEqual([]);
    expect(codes(days + 1)).toEqual(['date-impossible']);
  });

  test('is a day exactly when the calendar of the language has it', () => {
    for (const year of [1999, 2000, 2023, 2024, 2100])
      for (let month = 1; month <= 12; month++)
        for (let day = 1; day <= 31; day++) {
          const date = new Date(Date.UTC(year, month - 1, day));
          const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
          const there = date.toISOString().startsWith(text);
          expect([text, faultsOf(`job\n  date ${text}`).length === 0]).toEqual([text, there]);
        }
  });
});

describe('a text', () => {
  test.each([
    ['"North boundary"', 'North boundary'],
    ['“North boundary”', 'North boundary'],
    ['„Nordmauer“', 'Nordmauer'],
    ['"6\\" pipe"', '6" pipe'],
    ['"C:\\\\jobs"', 'C:\\jobs'],
    ['"C:\\jobs"', 'C:\\jobs'],
    ['"a # in it"', 'a # in it'],
    ['""', ''],
    ['"nul \u0000, half of a pair \ud800"', 'nul \u0000, half of a pair \ud800'],
  ])('%s', (written, text) => {
    expect(valuesOf('firm "x"', `phone ${written}`)).toMatchObject({ text: { text } });
  });
});

describe('a name', () => {
  test.each([
    'north',
    'harwick-red',
    'Ostwand',
    'mür',
    'стена',
    'wall2',
    'x-1',
    'xa',
    'm²x',
    'o’neill',
  ])('%s is one word', (name) => {
    expect(valuesOf('wall a', `brick ${name}`)).toMatchObject({ brick: { text: name } });
  });
});

test('`x` before a digit is the sign of a size, so no name', () => {
  expect(faultsOf('wall a\n  brick x1\n').map((fault) => fault.code)).toEqual(['value-wrong']);
});

describe('a list', () => {
  test('of parts', () => {
    const { parts } = valuesOf('mix a', 'parts cement 1 , lime 1/2,sand 6') as { parts: ListValue };
    const said = parts.of.map((part) => [part.material, part.parts]);
    expect(said).toMatchObject([
      [{ text: 'cement' }, {}],
      [{ text: 'lime' }, {}],
      [{ text: 'sand' }, {}],
    ]);
  });

  test('of a gang', () => {
    const { gang } = valuesOf('labour', 'gang 1 bricklayer+0.5 labourer') as { gang: ListValue };
    expect(gang.of).toMatchObject([
      { countOf: { text: 'bricklayer' } },
      { countOf: { text: 'labourer' } },
    ]);
  });

  test('of courses, where a word after it is no part of it', () => {
    const { units } = valuesOf('bond a', 'course stretcher 2, header from 3/4 brick') as {
      units: ListValue;
    };
    expect(units.of).toMatchObject([{ unit: { text: 'stretcher' } }, { unit: { text: 'header' } }]);
    expect(units.of[1]!.letter).toBeUndefined();
  });
});

test('what is still to be measured is so in a quantity, a size and money', () => {
  expect(valuesOf('wall a', 'length ?')).toMatchObject({ length: { kind: 'unknown' } });
  expect(valuesOf('wall a', 'footing ?')).toMatchObject({ size: { kind: 'unknown' } });
  expect(valuesOf('price', 'least ?')).toMatchObject({ least: { kind: 'unknown' } });
});

test('it may have its unit, which tells what it is', () => {
  expect(valuesOf('wall a', 'length ? m')).toMatchObject({ length: { kind: 'unknown' } });
  expect(valuesOf('repair a', 'repoint ? m2 raked 20 mm')).toMatchObject({
    area: { kind: 'unknown' },
    depth: { kind: 'quantity' },
  });
  expect(valuesOf('repair a', 'repoint ? m raked 20 mm')).toMatchObject({
    joints: { kind: 'unknown' },
  });
  expect(valuesOf('repair a', 'rebuild ? m x ? courses')).toMatchObject({
    length: { kind: 'unknown' },
    courses: { kind: 'unknown' },
  });
  // A name may follow, which the unit is not.
  expect(valuesOf('repair a', 'rebed ? pieces')).toMatchObject({ pieces: { kind: 'unknown' } });
  expect(valuesOf('repair a', 'rebed ? pieces')).not.toHaveProperty('material');
  expect(valuesOf('repair a', 'rebed ? pieces slab')).toMatchObject({
    pieces: { kind: 'unknown' },
    material: { text: 'slab' },
  });
  expect(valuesOf('repair a', 'rebed ? slab')).toMatchObject({ material: { text: 'slab' } });
});
