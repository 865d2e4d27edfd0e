import { describe, expect, test } from 'vitest';
import { totalsOf } from '../../server/engine/ide/totals';
import { figureItems, workingFor } from '../../server/engine/ide/working';
import { allFigures } from '../../server/engine/views/job-view';
import { FIRM, job, spaced } from './ask';

const TEXT =
  'perpend 1\njob "Orchard"\nuse "firm.perp"\nwall n\n  brick red\n  length 1790 mm\n  height 8 courses\n';

describe('figures to choose from', () => {
  const items = figureItems(job(TEXT));

  test('are all there are, each once', () => {
    expect(items.map((i) => i.id).sort()).toEqual(
      allFigures(job(TEXT))
        .map((f) => f.key)
        .sort(),
    );
  });

  test('the price first', () => {
    expect(items[0]).toMatchObject({ id: 'job.price', label: 'Price', group: 'The job' });
  });

  test('are grouped by what they belong to, each group in one piece', () => {
    expect(items.find((i) => i.id === 'n.bricks')).toMatchObject({
      group: 'wall n',
      text: '64\u00a0bricks',
    });
    const groups = items.map((i) => i.group).filter((g, i, all) => g !== all[i - 1]);
    expect(new Set(groups).size).toBe(groups.length);
  });
});

describe('the working of a figure', () => {
  test('is read out to the lines it came from', () => {
    const text = spaced(workingFor(job(TEXT), 'cost.red')!.markdown);
    // 64 bricks at £1.
    expect(text).toContain('# Harwick red, cost: £64.00');
    expect(text).toMatch(/# Harwick red, cost: £64\.00\n\nTo buy\n\n= 64 bricks × £1\.00/);
    expect(text).toContain('`price £1 each` firm.perp:7');
  });

  test('goes by every step to the price', () => {
    const text = spaced(workingFor(job(TEXT), 'job.price')!.markdown);
    for (const label of ['Materials', 'Labour', 'Tax', 'Cost'])
      expect(text).toContain(`### ${label}: `);
    expect(text).toContain('`tax 20% "VAT"`');
  });

  test('says what is missing', () => {
    const text = workingFor(job(TEXT.replace('1790 mm', '?')), 'n.bricks')!.markdown;
    expect(text).toContain('- Missing: the length of n is not known');
  });

  test('links places where the editor gives links', () => {
    const text = workingFor(
      job(TEXT),
      'cost.red',
      (t, p) => `[${t}](x:${p.file}#${p.line})`,
    )!.markdown;
    expect(text).toContain('[firm.perp:7](x:/jobs/firm.perp#6)');
  });

  test('a sum that is part of several has one section', () => {
    const text = workingFor(job(TEXT), 'job.price')!.markdown;
    const sections = text.split('\n').filter((line) => line.startsWith('### '));
    expect(sections.filter((line) => line.startsWith('### Bricks in the wall'))).toHaveLength(1);
  });

  test('a fact has a page too', () => {
    expect(workingFor(job(TEXT), 'n.courses')!.markdown).toContain('`height 8 courses` job.perp:7');
  });

  test('there is none for a figure that the job has not', () => {
    expect(workingFor(job(TEXT), 'nobody.bricks')).toBeUndefined();
  });

  test('every figure has one, and it is finite', () => {
    for (const { id } of figureItems(job(TEXT)))
      expect(workingFor(job(TEXT), id)!.markdown.split('\n').length).toBeLessThan(620);
  });
});

describe('totals', () => {
  test('are those of the job', () => {
    const one = job(TEXT);
    const totals = totalsOf(one)!;
    expect(totals.price).toMatch(/^£[\d,]+\.\d\d$/);
    expect(totals.missing).toEqual([]);
    expect(totals.range).toBeUndefined();
    expect(totals.steps.map((s) => s.label)).toEqual(
      expect.arrayContaining(['Materials', 'Labour', 'Cost', 'Price before tax', 'Tax']),
    );
  });

  test('say what is missing', () => {
    expect(totalsOf(job(TEXT.replace('1790 mm', '?')))!.missing).toEqual([
      'the length of n is not known',
    ]);
  });

  test('there are none for a firm’s file', () => {
    expect(totalsOf(job(FIRM))).toBeUndefined();
  });

  test('have two ends when the work holds a range', () => {
    const repair = `${TEXT}repair r\n  in n\n  repoint 2..3 m2\noutput\n  repoint 1 m2 per h\n`;
    const totals = totalsOf(job(repair))!;
    const ends = totals.range!.split(' to ').map((t) => Number(t.slice(1).replaceAll(',', '')));
    const middle = Number(totals.price.slice(1).replaceAll(',', ''));
    expect(ends[0]!).toBeLessThanOrEqual(middle);
    expect(ends[1]!).toBeGreaterThanOrEqual(middle);
    expect(ends[0]!).toBeLessThan(ends[1]!);
  });
});
