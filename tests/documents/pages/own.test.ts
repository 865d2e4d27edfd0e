/** Pages for whoever does the job: each is what the engine works out, in its own words, and right where it can be counted by hand. */
import { describe, expect, test } from 'vitest';
import { markdownOf, tablesOf } from '../../../server/documents/paper';
import { timetableOf } from '../../../server/engine/views/timetable';
import type { Job } from '../../../server/engine/workspace/job';
import { jobOf } from '../../engine/world';
import { ODD, oddJob } from '../papers/jobs';
import { pageFor, rowsOf, tableNamed } from './read';

const plain = oddJob(ODD.plain!);
const text = (
  job: Job,
  ...asked: [Parameters<typeof pageFor>[1], Parameters<typeof pageFor>[2]?]
) =>
  markdownOf(pageFor(job, ...asked))
    .replaceAll('\u00a0', ' ')
    .replace(/\\(.)/g, '$1');

describe('to measure', () => {
  test('a line with a question mark stands with its place and what waits for it', () => {
    const job = jobOf('perpend 1\nuse uk\nwall a\n  length ?\n  height 6 courses\n');
    const [[line, where, waits] = []] = rowsOf(tableNamed(pageFor(job, 'measure'), 'to-measure'));
    expect([line, where]).toEqual(['length ?', 'job.perp:4']);
    expect(waits).toMatch(/^a\.\w+, .* and \d+ more$/);
  });

  test('ranges stand by their share, and the rest makes a hundred', () => {
    const job = oddJob(ODD.ranges!);
    const rows = rowsOf(tableNamed(pageFor(job, 'measure'), 'ranges'));
    const shares = rows.map((row) => Number.parseInt(row[2]!, 10));
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(rows).toHaveLength(job.spread!.ranges.length);
    const [, rest = '0'] = /The other (\d+)%/.exec(text(job, 'measure')) ?? [];
    const all = shares.reduce((sum, share) => sum + share, 0) + Number(rest);
    expect(all).toBeGreaterThan(95);
    expect(all).toBeLessThanOrEqual(101);
  });

  test('where nothing is open, it says so', () => {
    expect(
      text(jobOf('perpend 1\nuse uk\nwall a\n  length 3 m\n  height 6 courses\n'), 'measure'),
    ).toMatch(/Nothing is left to measure|To find out on site/);
  });
});

describe('the cut list', () => {
  test('has every piece that is cut, and can be of one piece of work', () => {
    const all = tablesOf(pageFor(plain, 'cuts').parts);
    const one = tablesOf(pageFor(plain, 'cuts', { work: 'walsouth' }).parts);
    const places = (name?: string) =>
      plain.works
        .filter((work) => name === undefined || work.name === name)
        .flatMap((work) => work.facts.cuts?.() ?? [])
        .reduce((sum, part) => sum + part.places.length, 0);
    const rows = (tables: typeof all) => tables.reduce((sum, table) => sum + table.rows.length, 0);
    expect(rows(all)).toBe(places());
    expect(rows(one)).toBe(places('walsouth'));
    expect(rows(one)).toBeLessThan(rows(all));
    expect(() => pageFor(plain, 'cuts', { work: 'nowhere' })).toThrow('walnorth, walsouth');
  });
});

describe('the timetable', () => {
  test('has each task at its time, from the time that is said', () => {
    const page = pageFor(plain, 'day', { start: '07:15' });
    const [first] = tablesOf(page.parts);
    const days = timetableOf(plain, 7 * 60 + 15);
    expect(tablesOf(page.parts)).toHaveLength(days.length);
    expect(rowsOf(first!)[0]![0]).toBe('07:15');
    expect(first!.rows).toHaveLength(days[0]!.entries.length);
  });

  test.each(['25:00', '8', 'noon', '12:60'])('%s is no time of day', (start) => {
    expect(() => pageFor(plain, 'day', { start })).toThrow(start);
  });
});

describe('mortar', () => {
  test('a mix stands with its batches, and what is left with what it would lay', () => {
    const page = pageFor(plain, 'mortar');
    const left = rowsOf(tableNamed(page, 'left'));
    const bought = plain.price.purchases.filter(({ left: rest }) => rest && !rest.gaps.length);
    expect(left.slice(0, bought.length).map(([title]) => title)).toEqual(
      bought.map(({ title }) => title),
    );
    expect(left.at(-1)![0]).toMatch(/^That would make /);
    expect(left.at(-1)![2]).toMatch(/^lays [\d,]+ bricks/);
  });
});

const MATCH = `perpend 1
use uk
job "Yard wall"
brick plain "Plain red"
  size   215 x 102.5 x 65 mm
  joint  10 mm
  price  £1 each
brick tall "Tall antique"
  size   215 x 102.5 x 67 mm
  joint  10 mm
  price  £2 each
repair frost "Frost damage"
  brick       plain
  mix         general
  measured    215 x 102.5 x 66 mm of 10 bricks
  gauge       4 courses 304 mm
  match       plain
  candidates  tall, plain
  rebuild     1.35 m x 9 courses
`;

describe('bricks that match', () => {
  const job = jobOf(MATCH);

  test('each stands with by how much it differs, worked by hand', () => {
    const rows = rowsOf(tableNamed(pageFor(job, 'match'), 'frost'));
    const of = (name: string) => rows.find(([title]) => title!.includes(name))!;
    // 65 and 67 mm beside 66 mm; the gauge of 76 mm leaves 11 and 9 mm for the bed.
    expect(of('Plain red').slice(1, 3)).toEqual(['0, 0, −1 mm', '11 mm']);
    expect(of('Tall antique').slice(1, 3)).toEqual(['0, 0, +1 mm', '9 mm']);
  });

  test('of a job without a repair it says why there is none', () => {
    expect(() => pageFor(plain, 'match')).toThrow('There is nothing to compare');
  });
});

const RECORDED = `${ODD.plain}
record
  sent      2026-02-01 £2,000.00
  accepted  2026-02-09
  worked    2026-03-02 2 people 7.5 h facework 410 bricks
  worked    2026-03-02 1 people 3 h pointing
  spent     2026-03-03 £212.40 "sand and cement" for materials
  invoiced  2026-03-20 £600.00 as 26-1 "With the order"
  paid      2026-03-28 £500.00
`;

describe('the record', () => {
  test('stands day by day, and what is owed is reckoned by hand', () => {
    const page = pageFor(oddJob(RECORDED), 'record');
    const rows = rowsOf(tableNamed(page, 'record'));
    expect(rows.map(([, what]) => what)).toEqual([
      'Quote sent',
      'Accepted',
      'Worked',
      'Worked',
      'Spent',
      'Invoiced',
      'Paid',
    ]);
    expect(rows[2]).toEqual(['2 March 2026', 'Worked', '2 people, 15 h, facework, 410 bricks', '']);
    expect(rows[3]![2]).toMatch(/^1 person, 3 h/);
    expect(rows[5]).toEqual([
      '20 March 2026',
      'Invoiced',
      'Invoice 26-1, With the order',
      '£600.00',
    ]);
    const owed = new Map(rowsOf(tableNamed(page, 'paid')).map(([a, b]) => [a, b]));
    expect(owed.get('Owed')).toBe('£100.00'); // 600 − 500
    expect(owed.get('Still to invoice')).toBe('£1,400.00'); // 2,000 − 600
  });

  test('without one it says so', () => {
    expect(text(plain, 'record')).toContain('Nothing is recorded yet.');
  });

  test('a result is one so far, until all of the price is invoiced', () => {
    const soFar = pageFor(oddJob(RECORDED), 'result');
    expect(soFar.title).toMatch(/^Result so far/);
    expect(markdownOf(soFar)).toContain('Not all of the price is invoiced yet');
    const whole = RECORDED.replace('£600.00 as', '£2,000.00 as');
    const done = pageFor(oddJob(whole), 'result');
    expect(done.title).toMatch(/^Result (?!so far)/);
    expect(markdownOf(done)).not.toContain('Not all of the price');
  });
});
