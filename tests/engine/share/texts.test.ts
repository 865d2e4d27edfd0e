/** Money and names in texts: found in whatever way they are written, and other numbers left alone. */
import { expect, test } from 'vitest';
import { cleaned, digitsOf, moneyWord, namesIn } from '../../../server/engine/share/texts';
import { exact } from '../../../shared/exact';
import { took } from '../../harness/took';

const hidden = {
  codes: new Set(['GBP', 'EUR', 'USD']),
  moneyWord: moneyWord(['pound', 'pounds', 'quid', 'ein Taler']),
  amounts: new Set([...digitsOf(exact('1450')), ...digitsOf(exact('0.92'))]),
  names: namesIn("Quillbank Growers' Society").sort((a, b) => b.length - a.length),
};

test.each([
  '£1,450.00',
  '1450 £',
  '£ 12',
  '£12k',
  '1450',
  '1,450.00',
  '1.450,00',
  '1 450',
  'bricks at 0.92 each',
  'bricks at 92p',
  'for 450 GBP',
  'EUR 450',
  '450eur',
  'eight hundred pounds',
  'fifty quid',
  '50QUID',
  'für ein  Taler',
  '$50',
  '£\u200b50',
  '６５ £',
  '٣٠٠ £',
  '2133.75 all told',
])('“%s” is money', (text) => {
  expect(cleaned(text, hidden)).not.toBe(text);
  expect(cleaned(text, hidden)).toContain('…');
  expect(cleaned(text, hidden)).not.toMatch(/\d{2}/);
});

test.each([
  '2 courses of blue engineering brick',
  'Harwick red, 65 mm',
  'Call 01632 960 731 first',
  'BS EN 771-1, table 13',
  '215 x 102.5 x 65 mm',
  'Gate 1010 mm wide, from the left',
  'Grange wall',
  'Compound wall',
])('“%s” is none', (text) => {
  expect(cleaned(text, hidden)).toBe(text);
});

test('a client’s name goes, whole and by its words', () => {
  expect(cleaned("Wall for QUILLBANK growers' society", hidden)).toBe('Wall for …');
  expect(cleaned('The Quillbank side', hidden)).toBe('The … side');
  expect(cleaned('Quillbanks', hidden)).toBe('Quillbanks');
});

test('a text of digits and signs without end takes no time', () => {
  const long = `${'1,'.repeat(200_000)}${'£ '.repeat(50_000)}`;
  expect(took(() => cleaned(long, hidden), 2)).toBeLessThan(2000);
});
