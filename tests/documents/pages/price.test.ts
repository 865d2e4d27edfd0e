/** The page of a price: its steps add up by hand, and are the figures that the engine has under their ids. */
import { describe, expect, test } from 'vitest';
import { markdownOf } from '../../../server/documents/paper';
import { allFigures } from '../../../server/engine/views/job-view';
import type { Job } from '../../../server/engine/workspace/job';
import { ODD, oddJob } from '../papers/jobs';
import { figureIn, pageFor, rowsOf, tableNamed } from './read';

const figure = (job: Job, id: string) =>
  Number(allFigures(job).find(({ key }) => key === id)!.term.value);

describe('from cost to price', () => {
  test('each step is the figure of its name', () => {
    const job = oddJob(ODD.plain!);
    const steps = tableNamed(pageFor(job, 'price'), 'price');
    const ids: [string | RegExp, string][] = [
      ['Materials', 'job.materials'],
      [/^Labour, /, 'job.labour'],
      [/^Travel, /, 'job.travel'],
      ['Other costs', 'job.others'],
      ['Cost', 'job.cost'],
      ['Overhead 11.7%', 'job.overhead'],
      ['Profit 23.3%', 'job.profit'],
      ['Price before tax', 'job.net'],
      ['VAT 20%', 'job.tax'],
      ['Price', 'job.price'],
    ];
    for (const [label, id] of ids) expect(figureIn(steps, label), id).toBe(figure(job, id));
  });

  test.each(['plain', 'several taxes', 'discounts', 'agreed with tax'])(
    'of a job with %s every sum comes out',
    (name) => {
      const steps = tableNamed(pageFor(oddJob(ODD[name]!), 'price'), 'price');
      const values = steps.rows.map(({ cells, role }) => ({
        label: cells[0]!.text,
        value: Number(cells[1]!.value),
        role,
      }));
      let sum = 0;
      for (const { label, value, role } of values) {
        // A total is what stands above it, to the penny; it goes on from there.
        if (role) expect(sum, label).toBeCloseTo(value, 6);
        sum = role ? value : sum + value;
      }
      expect(values.at(-1)!.role).toBe('grand');
    },
  );

  test('a price agreed says what it would have been', () => {
    const page = pageFor(oddJob(ODD['agreed with tax']!), 'price');
    const rows = rowsOf(tableNamed(page, 'leaves'));
    expect(rows.map(([label]) => label)).toContain('Worked out, before tax');
    expect(rowsOf(tableNamed(page, 'price')).map(([label]) => label)).toContain(
      'To the price agreed',
    );
  });

  test('what it leaves is its share of the price before tax, in a hundred', () => {
    const job = oddJob(ODD.plain!);
    const page = pageFor(job, 'price');
    const [[, profit, share] = []] = rowsOf(tableNamed(page, 'leaves'));
    const left = figureIn(tableNamed(page, 'leaves'), 'Profit');
    const percent = Math.round((left / figure(job, 'job.net')) * 1000) / 10;
    expect(share).toBe(`${percent}% of the price before tax`);
    expect(profit).toMatch(/^£/);
  });
});

test('stages add up to the price', () => {
  const job = oddJob(ODD.plain!);
  const rows = tableNamed(pageFor(job, 'price'), 'stages').rows;
  const sum = rows.reduce((all, { cells }) => all + Number(cells[1]!.value), 0);
  expect(sum).toBeCloseTo(figure(job, 'job.price'), 6);
});

test('parts of the work add up to the price before tax', () => {
  const job = oddJob(ODD.plain!);
  const { rows } = tableNamed(pageFor(job, 'price'), 'works');
  const sum = (column: number) =>
    rows.reduce((all, { cells }) => all + Number(cells[column]!.value), 0);
  expect(rows).toHaveLength(2);
  expect(sum(2)).toBeCloseTo(figure(job, 'job.net'), 6);
  // What the job as a whole costs, such as travel, is nobody’s own.
  const own = [figure(job, 'job.materials'), figure(job, 'job.labour')];
  expect(sum(1)).toBeLessThanOrEqual(own[0]! + own[1]! + 0.01);
});

test('a job with ranges says between what its price lies', () => {
  const job = oddJob(ODD.ranges!);
  const text = markdownOf(pageFor(job, 'price')).replaceAll('\u00a0', ' ');
  expect(text).toMatch(/In eight of ten jobs alike the price is £[\d,.]+ to £[\d,.]+\./);
  expect(markdownOf(pageFor(oddJob(ODD.plain!), 'price'))).not.toContain('jobs alike');
});

test('a price that lacks something says so first, and a cost not known is a question mark', () => {
  const page = pageFor(oddJob(ODD.gaps!), 'price');
  const [, , warning] = page.parts;
  expect(warning).toMatchObject({ part: 'warning', strong: 'NOT COMPLETE.' });
  expect(rowsOf(tableNamed(page, 'price')).at(-1)![1]).not.toBe('£0.00');
});

describe('options', () => {
  const job = oddJob(ODD['options, one of them accepted']!);

  test('stand side by side, with what each comes to', () => {
    const rows = tableNamed(pageFor(job, 'price'), 'options').rows;
    expect(rows).toHaveLength(job.options.priced.length);
    for (const [i, { price, more }] of job.options.priced.entries()) {
      const { cells } = rows[i]!;
      expect(Number(cells[3]!.value)).toBe(Number(price.total.value));
      expect(Number(cells[1]!.value)).toBe(Number(more.net.value));
    }
    expect(rows.some(({ cells }) => cells[4]!.text.includes('accepted'))).toBe(true);
  });

  test('are in the price where they are taken, and those that are none are refused', () => {
    const [{ name, price }] = job.options.priced as [(typeof job.options.priced)[number]];
    const page = pageFor(job, 'price', { with: [name] });
    expect(figureIn(tableNamed(page, 'price'), 'Price')).toBe(Number(price.total.value));
    expect(markdownOf(page)).toContain(`With the options taken: ${name}`);
    expect(() => pageFor(job, 'price', { with: ['nothing'] })).toThrow('no option nothing');
  });
});
