/** Which papers and pages there are, and that each of them can be written in every form it says. */
import { describe, expect, test } from 'vitest';
import { KINDS, pageOf, pagesOf } from '../../../server/documents/pages';
import { htmlOf, markdownOf, tablesOf } from '../../../server/documents/paper';
import { PAGE_KINDS, PAPER_KINDS } from '../../../shared/protocol/pages';
import { jobOf } from '../../engine/world';
import { ODD, oddJob } from '../papers/jobs';
import { htmlText } from '../papers/read';

/** What a fault looks like where a value should stand. */
const FAULT = /\bNaN\b|undefined|\bnull\b|\[object|Infinity|\{\{/;

test('every kind that the protocol names is there, once', () => {
  expect(KINDS.map(({ kind }) => kind).sort()).toEqual([...PAGE_KINDS].sort());
});

test('of a job each has a title, what it holds, and forms; of a firm’s file none is there', () => {
  const of = (text: string) => pagesOf(jobOf(text));
  const items = pagesOf(oddJob(ODD.plain!));
  expect(items.map(({ kind }) => kind)).toEqual([...KINDS.map(({ kind }) => kind), 'drawing']);
  for (const { title, about, forms } of items) {
    expect(title).toMatch(/^[A-Z]/);
    expect(about).toMatch(/\.$/);
    expect(forms.length).toBeGreaterThan(1);
  }
  expect(items.find(({ kind }) => kind === 'quote')!.why).toBeUndefined();
  expect(items.find(({ kind }) => kind === 'match')!.why).toContain('nothing to compare');
  expect(of('').every(({ why }) => why === 'The file is empty.')).toBe(true);
  expect(of('firm "A"\n').every(({ why }) => why?.includes('holds no work'))).toBe(true);
});

test('pieces of work are told where a page can be of one alone', () => {
  const items = pagesOf(oddJob(ODD.plain!));
  const works = (kind: string) =>
    items.find((each) => each.kind === kind)!.works.map(({ name }) => name);
  expect(works('cuts')).toEqual(['walnorth', 'walsouth']);
  expect(works('drawing')).toEqual(['walnorth', 'walsouth']);
  expect(works('quote')).toEqual([]);
});

/** Papers have tests of their own, of every odd job. */
const PAGES = KINDS.map(({ kind }) => kind).filter((kind) => !PAPER_KINDS.some((p) => p === kind));
const SOME = [
  'plain',
  'ranges',
  'gaps',
  'errors',
  'no firm, no client, no title',
  'other alphabets',
];
const JOBS = new Map(SOME.map((name) => [name, oddJob(ODD[name]!)]));

describe.each(PAGES)('%s', (kind) => {
  test.each(SOME)('of a job with %s is written whole, or says why not', (name) => {
    const made = pageOf(JOBS.get(name)!, kind, { version: '1' });
    if (typeof made === 'string') {
      expect(made).toMatch(/^[A-Z].*\.$/s);
      return;
    }
    for (const text of [htmlText(made.paper), markdownOf(made.paper)]) {
      expect(text).not.toMatch(FAULT);
      expect(text.length).toBeGreaterThan(40);
    }
    expect(htmlOf(made.paper)).not.toContain('<script');
    for (const { columns, rows } of tablesOf(made.paper.parts))
      for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
  });
});

test.each(['1e9', '-3', 'NaN', '9'.repeat(400), '1.'])(
  'an invoice over %s is refused',
  (amount) => {
    const made = pageOf(oddJob(ODD.plain!), 'invoice', { version: '1', options: { amount } });
    expect(made).toContain('is no amount');
  },
);
