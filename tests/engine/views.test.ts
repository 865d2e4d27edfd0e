import { describe, expect, test } from 'vitest';
import { type allFigures, jobView } from '../../server/engine/views/job-view';
import { workingOf } from '../../server/engine/views/working';
import { Decimal } from '../../shared/exact';
import type { WorkingView } from '../../shared/views';
import { FIRM } from '../findings/tells';
import { exampleJob, JOBS } from './examples';
import { jobOf } from './world';

const sumOf = (values: readonly string[]) =>
  values.reduce((total, value) => total.plus(value), new Decimal(0)).toFixed();

/** What kinds of value a view is made of; an object of a class of the engine's own is named by it. */
function kindsIn(value: unknown, found = new Set<string>()): Set<string> {
  if (value === undefined) return found;
  const plain = typeof value === 'object' && value !== null;
  const name = plain ? Object.getPrototypeOf(value).constructor.name.toLowerCase() : typeof value;
  found.add(name);
  if (plain) for (const each of Object.values(value)) kindsIn(each, found);
  return found;
}

describe('the view of a job', () => {
  test.each(JOBS)('of %s is plain data, its ids each once', (name) => {
    const view = jobView(exampleJob(name));
    expect(kindsIn(view)).toEqual(new Set(['array', 'boolean', 'number', 'object', 'string']));
    const ids = [...view.blocks.flatMap((b) => b.figures), ...view.totals].map((f) => f.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('job.price');
  });

  test('of a mix that a material goes into twice has each of the two once', () => {
    const doses = ['50', '20']
      .map((ml) => `  dose plasticiser ${ml} ml per 50 kg cement\n`)
      .join('');
    const text = `perpend 1\nuse "firm.perp"\nmaterial plasticiser\n  pack 5 l bottle at £9\nmix ours\n  parts cement 1, sand 5\n${doses}wall w\n  brick red\n  mix ours\n  joint 10 mm\n  stands held\n  length 4490 mm\n  height 12 courses\n`;
    const { totals } = jobView(jobOf(text, { 'firm.perp': FIRM }));
    const of = (id: string) => Number(totals.find((f) => f.id === id)?.value);
    const [first, second] = [of('mix.ours.plasticiser'), of('mix.ours.plasticiser.2')];
    expect(second / first).toBeCloseTo(0.4, 9);
    expect(of('need.plasticiser')).toBeCloseTo(first + second, 9);
    expect(new Set(totals.map((f) => f.id)).size).toBe(totals.length);
  });

  test.each(JOBS)(
    'of %s: the parts of the price add up to it, and those of the cost too',
    (name) => {
      const job = exampleJob(name);
      const view = jobView(job);
      const parts = (key: string) =>
        sumOf(view.blocks.map((b) => b.figures.find((f) => f.id === `${b.name}.${key}`)!.value));
      expect(parts('price')).toBe(job.price.price.value.toFixed());
      expect(parts('cost')).toBe(job.price.materials.value.plus(job.price.labour.value).toFixed());
    },
  );

  test.each(JOBS)('of %s: what is printed adds up, line by line', (name) => {
    const { price } = exampleJob(name);
    const of = (key: string) => price.figures.find((f) => f.key === key)!.term.value;
    expect(sumOf(price.purchases.map((p) => p.cost.value.toFixed()))).toBe(
      of('materials').toFixed(),
    );
    const direct = ['materials', 'labour', 'travel', 'others'].map((key) => of(key).toFixed());
    expect(sumOf(direct)).toBe(of('cost').toFixed());
    expect(of('net').plus(of('tax')).toFixed()).toBe(of('price').toFixed());
    for (const p of price.purchases) expect(p.cost.value.decimalPlaces()).toBeLessThanOrEqual(2);
    if (price.stages.length)
      expect(sumOf(price.stages.map((s) => s.amount.value.toFixed()))).toBe(of('price').toFixed());
  });

  test('is in the figures of its country', () => {
    const totals = jobView(exampleJob('de-mauer/job.perp')).totals;
    expect(totals.find((f) => f.id === 'job.price')!.text).toMatch(
      /^\d{1,3}(\.\d{3})*,\d\d\u00a0€$/,
    );
    const street = jobView(exampleJob('us-wall/job.perp'));
    expect(street.totals.find((f) => f.id === 'job.price')!.text).toMatch(
      /^\$\d{1,3}(,\d{3})*\.\d\d$/,
    );
    expect(street.blocks[0]!.figures.find((f) => f.id === 'street.area')!.unit).toBe('ft2');
  });

  test.each([
    ['JPY', 0],
    ['GBP', 2],
    ['KWD', 3],
  ])('in %s has %d digits after the point', (code, digits) => {
    const text = `perpend 1
use uk
defaults
  currency ${code}
  tax 8.37%
  round ${code} 0
  least ${code} 0
cost a "A" 3 at ${code} 333
cost b "B" 1 at ${code} 12
wall w
  stands held
`;
    const { price } = jobOf(text);
    const tax = new Decimal(1011).times('0.0837').toDecimalPlaces(digits);
    expect(price.tax.value.toFixed()).toBe(tax.toFixed());
    expect(price.total.value.decimalPlaces()).toBeLessThanOrEqual(digits);
  });
});

describe('a long working', () => {
  const walls = Array.from(
    { length: 300 },
    (_, i) =>
      `wall w${i}\n  brick red\n  stands held\n  length ${1115 + i * 225} mm\n  height 4 courses\n`,
  );
  const job = jobOf(`perpend 1\nuse "firm.perp"\n${walls.join('')}`, { 'firm.perp': FIRM });

  const count = (view: WorkingView): number =>
    1 + view.parts.reduce((n, part) => n + count(part), 0);

  test('is told in full once, and does not grow with how often each part comes up', () => {
    const distinct = new Set<unknown>();
    const walk = (term: ReturnType<typeof allFigures>[number]['term']): void => {
      if (distinct.has(term)) return;
      distinct.add(term);
      for (const arg of term.args) walk(arg);
    };
    walk(job.price.total);
    const nodes = count(workingOf(job.price.total, job.env));
    expect(nodes).toBeLessThan(2000 + 8 * distinct.size);
    const text = JSON.stringify(workingOf(job.price.total, job.env));
    for (const i of [0, 150, 299]) expect(text).toContain(`length ${1115 + i * 225} mm`);
  });
});
