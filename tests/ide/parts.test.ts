/** A job as a tree: every part is what the price says, under an id that stays. */
import { describe, expect, test } from 'vitest';
import { type JobPart, partsOf, partTold } from '../../server/engine/ide/parts';
import { allFigures } from '../../server/engine/views/job-view';
import { showTerm } from '../../server/engine/views/show';
import { FIRM, job, spaced } from './ask';

const HEAD = 'perpend 1\njob "Orchard wall"\nuse "firm.perp"\n';
const WALL = 'wall north "North side"\n  brick red\n  length 1790 mm\n  height 8 courses\n';
const TEXT = `${HEAD}${WALL}cost skip "Skip" 1 at £240\ncost permit "Permit" 1 at £60\n`;

function tree(text: string): readonly JobPart[] {
  return partsOf(job(text))!.parts;
}

function all(parts: readonly JobPart[]): JobPart[] {
  return parts.flatMap((part) => [part, ...all(part.children)]);
}

function part(text: string, id: string): JobPart | undefined {
  return all(tree(text)).find((each) => each.id === id);
}

const ids = (text: string) => all(tree(text)).map(({ id }) => id);

describe('what stands in the tree', () => {
  test('a file that is no job has none', () => {
    expect(partsOf(job('perpend 1\nuse uk\n'))).toBeUndefined();
  });

  test('the title of the job, its price, and whether it is whole', () => {
    const whole = job(TEXT);
    const found = partsOf(whole)!;
    expect(found).toMatchObject({ title: 'Orchard wall', complete: true });
    expect(found.price).toBe(showTerm(whole.price.total, whole.env));
  });

  test.each([
    ['work', ['work', 'costs', 'price']],
    ['a line to be measured', ['work', 'costs', 'price', 'find-out', 'stops']],
  ])('groups of %s', (_, groups) => {
    const text = groups.includes('stops') ? TEXT.replace('1790 mm', '?') : TEXT;
    expect(tree(text).map(({ id }) => id)).toEqual(groups);
  });

  test('a piece of work says its amount, hours and money', () => {
    // 8 courses of 8 bricks: 1790 mm is 8 bricks of 215 and their joints but one.
    const { text, label, kind, draws } = part(TEXT, 'work/north')!;
    expect([label, kind, draws]).toEqual(['North side', 'wall', 'north']);
    expect(spaced(text)).toMatch(/^£[\d,.]+ · 64 bricks · 1\.07 h$/);
  });

  test('under it are its figures, and they are those of the job', () => {
    const now = job(TEXT);
    const figures = new Map(allFigures(now).map(({ key, term }) => [key, term]));
    const rows = part(TEXT, 'work/north')!.children;
    expect(rows.map(({ figure }) => figure)).toEqual(
      expect.arrayContaining(['north.bricks', 'north.mortar', 'north.hours', 'north.price']),
    );
    for (const { figure, text } of rows)
      expect(text, figure).toBe(showTerm(figures.get(figure!)!, now.env));
  });

  test('what is bought stands under materials with amount and cost', () => {
    expect(spaced(part(TEXT, 'costs/buy/red')!.text)).toBe('64 bricks · £64.00');
    expect(part(TEXT, 'costs/materials')!.children.map(({ id }) => id)).toContain('costs/buy/red');
  });

  test('other costs are told one by one where there are several, each by its line', () => {
    const rows = part(TEXT, 'costs/others')!.children;
    expect(rows.map(({ label, text }) => [label, text])).toEqual([
      ['Skip', '£240.00'],
      ['Permit', '£60.00'],
    ]);
    expect(rows.map(({ at }) => at?.line)).toEqual([7, 8]);
    const one = TEXT.replace(/cost permit.*\n/, '');
    expect(part(one, 'costs/others')!.children).toEqual([]);
  });

  test('the price is its last step, and what is nothing is left out', () => {
    const steps = part(TEXT, 'price')!.children;
    expect(steps.map(({ id }) => id)).toEqual(expect.arrayContaining(['price/net', 'price/price']));
    expect(steps.map(({ text }) => text)).not.toContain('£0.00');
    expect(part(TEXT, 'price')!.text).toBe(part(TEXT, 'price/price')!.text);
  });

  test('what a job earns an hour is a step of its own', () => {
    const { term } = allFigures(job(TEXT)).find(({ key }) => key === 'job.earns')!;
    expect(part(TEXT, 'price/earns')!.text).toBe(showTerm(term, job(TEXT).env));
  });
});

describe('what is open', () => {
  const open = TEXT.replace('1790 mm', '?');

  test('a line with a question mark is to be found out, and says how much waits for it', () => {
    const found = part(open, 'find-out/line/length ?')!;
    expect(found).toMatchObject({ kind: 'unmeasured', at: { line: 5 } });
    expect(spaced(found.text)).toMatch(/^\d+ figures wait$/);
    expect(found.more).toContain('north.bricks');
  });

  test('it stops the price: the tree says so, and no amount looks whole', () => {
    expect(partsOf(job(open))).toMatchObject({ complete: false });
    expect(part(open, 'work/north')!.text).toMatch(/ …$/);
    expect(part(open, 'price/price')).toMatchObject({
      text: expect.stringMatching(/ …$/),
      heard: expect.stringMatching(/, not complete$/),
    });
    expect(part(open, 'price/price')!.lacks!.length).toBeGreaterThan(0);
  });

  test('an error of the file stops it too, at its line', () => {
    const text = TEXT.replace('length', 'lenght');
    const errors = tree(text).find(({ id }) => id === 'stops')!.children;
    expect(errors[0]).toMatchObject({ kind: 'error', at: { line: 5 } });
    expect(errors[0]!.label).toContain('lenght');
  });

  test('a range says its share of the spread', () => {
    const ranged = TEXT.replace('1790 mm', '1790..3590 mm');
    const found = all(tree(ranged)).filter(({ kind }) => kind === 'range');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ label: 'length 1790..3590 mm', at: { line: 5 } });
    expect(found[0]!.text).toBe('100% of the spread');
  });
});

describe('ids', () => {
  test('are each there once, whatever is in the job', () => {
    const twice = `${TEXT}wall south\n  brick red\n  length ?\n  height ?\nwall east\n  brick red\n  length ?\n  height ?\n`;
    expect(new Set(ids(twice)).size).toBe(ids(twice).length);
  });

  test.each([
    ['copied', `${HEAD}${WALL}${WALL.replace('1790', '2240')}`],
    [
      'without a name',
      `${HEAD}wall\n  length 3 m\nwall\n  length 2 m\npier\npier\nrepair\nrepair\n`,
    ],
    ['of several kinds with one name', `${HEAD}wall a\n  length 3 m\npier a\nrepair a\n`],
  ])('are told apart in work that is %s', (_, text) => {
    const each = ids(text);
    expect(each.filter((id, i) => each.indexOf(id) !== i)).toEqual([]);
  });

  test('work that was copied shows its own amounts, and leads to no figure of the first', () => {
    const rows = tree(`${HEAD}${WALL}${WALL.replace('1790', '2240')}`)[0]!.children;
    // 8 courses of 8 bricks and of 10.
    expect(rows.map(({ text }) => /\d+ bricks/.exec(spaced(text))?.[0])).toEqual([
      '64 bricks',
      '80 bricks',
    ]);
    expect(rows.map(({ figure }) => figure)).toEqual(['north.price', undefined]);
  });

  test('stay when a number changes, and when another piece of work comes before', () => {
    expect(ids(TEXT.replace('1790', '3590'))).toEqual(ids(TEXT));
    const before = 'wall east\n  brick red\n  length 1790 mm\n  height 8 courses\n';
    const more = ids(TEXT.replace('wall north', `${before}wall north`));
    expect(more).toEqual(expect.arrayContaining(ids(TEXT)));
  });

  test('names that are everybody’s own are only names', () => {
    const text = TEXT.replaceAll('north', 'constructor');
    expect(part(text, 'work/constructor')!.text).toContain('bricks');
  });
});

describe('for a reader who hears it', () => {
  test.each(all(tree(TEXT)).map(({ id, heard, label }) => [id, heard, label]))(
    '%s is a sentence',
    (_, heard, label) => {
      expect(heard).toContain(label);
      expect(heard).not.toMatch(/[·…]/);
    },
  );
});

describe('lines', () => {
  test('a figure leads to the job’s own line where one counts', () => {
    expect(part(TEXT, 'work/north/bricks')!.at).toMatchObject({ line: expect.any(Number) });
    expect(part(TEXT, 'costs/others/1')!.at?.file).toMatch(/job\.perp$|main/);
    expect(part(TEXT, 'work/north')!.at).toMatchObject({ line: 3 });
  });

  test('what the firm’s file decides leads there', () => {
    const at = part(TEXT, 'costs/labour')!.at!;
    expect(at.file).toContain('firm.perp');
    expect(FIRM.split('\n')[at.line]).toMatch(/bricklayer|labourer|gang/);
  });
});

describe('the working of a part', () => {
  test('is the sum, short, without a link', () => {
    const told = spaced(partTold(job(TEXT), 'cost.red')!.markdown);
    expect(told).toContain('64 bricks × £1.00');
    expect(told.split('\n').length).toBeLessThanOrEqual(16);
    expect(told).not.toContain('](');
  });

  test('of no figure there is none', () => {
    expect(partTold(job(TEXT), 'north.nothing')).toBeUndefined();
    expect(partTold(job(TEXT), '__proto__')).toBeUndefined();
  });
});

test('a job of thousands of walls is cut short, and says so', () => {
  const walls = Array.from({ length: 260 }, (_, i) =>
    WALL.replace('north "North side"', `w${i}`).replace('8 courses', '1 course'),
  );
  const work = tree(`${HEAD}${walls.join('')}`)[0]!;
  expect(work.text).toBe('260');
  expect(work.children).toHaveLength(251);
  expect(work.children.at(-1)!.label).toBe('and 10 more');
});
