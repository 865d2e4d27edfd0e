/** The page of a firm’s jobs: what it adds up, worked by hand. */
import { describe, expect, test } from 'vitest';
import { jobsPage } from '../../../server/documents/pages/jobs';
import { markdownOf } from '../../../server/documents/paper';
import { overviewOf } from '../../../server/engine/firm/overview';
import { filed, jobWith, settingsOf } from '../../firm/folder';
import { rowsOf, tableNamed } from './read';

const pageOf = (texts: readonly string[], all = false) => {
  const files = Object.fromEntries(texts.map((text, i) => [`job-${i}.perp`, text]));
  const found = overviewOf(filed(files), settingsOf(files), '2026-04-10');
  const named = (file: string) => file.split('/').at(-1)!;
  return jobsPage(found, { lang: 'en-GB', version: '1', all, named });
};
const OUT = jobWith(['sent 2026-03-01 £1,200.00']);
const OWED = jobWith([
  'sent 2026-03-02 £600.00',
  'accepted 2026-03-03',
  'invoiced 2026-03-31 £600.00 as A-1',
  'paid 2026-04-01 £250.00',
]);

describe('jobs together', () => {
  const page = pageOf([OUT, OUT, OWED]);

  test('stand by their state, with what they come to', () => {
    expect(rowsOf(tableNamed(page, 'states'))).toEqual([
      ['Out', '2', '£2,400.00', ''],
      ['Won, all invoiced', '1', '£600.00', ''],
    ]);
    expect(rowsOf(tableNamed(page, 'out')).map((row) => row.slice(1))).toEqual([
      ['1 March 2026', '40', '£1,200.00'], // 30 days left of March, 10 of April
      ['1 March 2026', '40', '£1,200.00'],
    ]);
  });

  test('owe what is invoiced and not paid', () => {
    const paid = new Map(rowsOf(tableNamed(page, 'paid')).map(([what, amount]) => [what, amount]));
    expect(paid.get('Owed')).toBe('£350.00'); // 600 − 250
    const [row] = rowsOf(tableNamed(page, 'owed'));
    expect(row!.at(-1)).toBe('£350.00');
    expect(row![2]).toBe('10');
  });

  test('turn over by the day of the invoice and of the payment', () => {
    const by = (name: string) => rowsOf(tableNamed(page, name)).map((row) => [row[0], row.at(-1)]);
    const quarter = '1 January 2026 to 31 March 2026';
    expect(by('By the day of the invoice').map(([when]) => when)).toEqual([quarter]);
    expect(markdownOf(page).replaceAll('\u00a0', ' ')).toMatch(
      /1 April 2026 to 30 June 2026.*£250\.00/,
    );
  });

  test('of many only the first are listed, unless all are asked for', () => {
    const many = Array.from({ length: 25 }, () => OUT);
    expect(rowsOf(tableNamed(pageOf(many), 'out'))).toHaveLength(20);
    expect(markdownOf(pageOf(many))).toContain('And 5 more');
    expect(rowsOf(tableNamed(pageOf(many, true), 'out'))).toHaveLength(25);
  });

  test('none at all is a page too', () => {
    expect(markdownOf(pageOf([]))).toContain('0 jobs, as of 10 April 2026');
  });
});
