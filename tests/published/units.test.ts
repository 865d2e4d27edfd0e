/** Units by their definitions: the international yard and pound agreement of 1959. Products as js-quantities prints them. */
import { describe, expect, test } from 'vitest';
import { exact } from '../../shared/exact';
import { toBase, UNITS, unitNamed } from '../../shared/units';
import { figure, jobOf } from '../examples/engine';

const base = (amount: string, unit: string) => toBase(exact(amount), unitNamed(unit)!).toFixed();

describe('by definition', () => {
  test.each([
    ['1', 'in', '25.4'],
    ['1', 'ft', '304.8'],
    ['1', 'yd', '914.4'],
    ['1', 'mile', '1609344'],
    ['7.625', 'in', '193.675'],
    ['1', 'ft2', '0.09290304'],
    // Cubic feet and yards, in litres.
    ['1', 'ft3', '28.316846592'],
    ['1', 'yd3', '764.554857984'],
    ['1', 'lb', '0.45359237'],
    ['94', 'lb', '42.63768278'],
    ['1', 'ton', '907.18474'],
  ])('%s %s', (amount, unit, expected) => expect(base(amount, unit)).toBe(expected));
});

test('a density is a mass in a volume', () => {
  const density = base('1', 'lb/ft3');
  const ratio = exact(base('1', 'lb')).div(exact(base('1', 'ft3')).div(1000));
  expect(exact(density).sub(ratio).abs().lt('1e-30')).toBe(true);
});

test('every unit is one thing by every name it has', () => {
  const names = UNITS.flatMap((u) => [u.name, ...u.also]);
  expect(new Set(names).size).toBe(names.length);
  for (const u of UNITS) for (const name of [u.name, ...u.also]) expect(unitNamed(name)).toBe(u);
});

test('a job in feet is the same job in metres', () => {
  const job = (length: string) =>
    jobOf(`use uk\n\nwall w\n  length ${length}\n  height 12 courses\n`);
  expect(figure(job('10 ft'), 'w.bricks')).toBe(figure(job('3048 mm'), 'w.bricks'));
  expect(figure(job('10 ft'), 'w.mortar')).toBe(figure(job('3048 mm'), 'w.mortar'));
});
