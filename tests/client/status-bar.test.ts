import { describe, expect, test, vi } from 'vitest';
import { barHeard, barText, tooltip } from '../../client/status-bar';
import type { Totals } from '../../shared/protocol';

vi.mock('vscode', () => import('./vscode'));

const TOTALS: Totals = {
  price: '£4,050.00',
  hours: '23.89 h',
  earns: '£59.12',
  leaves: '£564.49',
  paid: '23.89 h',
  missing: [],
  steps: [{ label: 'Cost', text: '£2,555.01' }],
};
const OPEN: Totals = { ...TOTALS, missing: ['the length of north'] };

describe('the one item of the status bar', () => {
  test.each([
    [TOTALS, '£4,050.00 · £59.12/h'],
    [OPEN, '£4,050.00 … · £59.12/h'],
    [{ ...TOTALS, earns: undefined }, '£4,050.00'],
  ])('%#: price and what it earns an hour', (totals, text) => {
    expect(barText(totals)).toBe(text);
  });

  test('is a sentence for who hears it', () => {
    expect(barHeard(OPEN)).toBe(
      'Price of the job £4,050.00, not complete, it earns £59.12 an hour',
    );
  });

  test('says what the second number is made of', () => {
    const { value } = tooltip(TOTALS);
    expect(value).toContain('| Cost | £2,555\\.01 |');
    expect(value).toMatch(
      /It earns £59\\\.12 an hour: wages and the profit it leaves \\\(£564\\\.49\\\)/,
    );
    expect(value).toContain('23\\.89 h');
    expect(value).not.toContain('Not complete');
  });

  test('names of partners are no pictures, links or cells', () => {
    const label = '![x](https://a.example/b.png) | c';
    const { value } = tooltip({ ...TOTALS, steps: [{ label, text: '£1' }] });
    expect(value).toContain('| \\!\\[x\\]\\(https://a\\.example/b\\.png\\) \\| c | £1 |');
  });

  test('says from what to what, and what is missing', () => {
    const ranged = { ...OPEN, range: '£1 to £2', alike: 'In eight of ten jobs alike' };
    const { value } = tooltip(ranged);
    expect(value).toContain('In eight of ten jobs alike: £1 to £2');
    expect(value).toMatch(/Not complete[\s\S]*the length of north/);
  });
});
