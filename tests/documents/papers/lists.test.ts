/** The buying list by merchant, and the site sheet. */
import { describe, expect, test } from 'vitest';
import { buyingPaper } from '../../../server/documents/buying/paper';
import { csvOf, tablesOf } from '../../../server/documents/paper';
import type { Part } from '../../../server/documents/paper/model';
import { sitePaper } from '../../../server/documents/site/paper';
import {
  type Mark,
  type Paper as SheetSize,
  textWidth,
} from '../../../server/engine/drawing/sheet/paper';
import { heading } from '../../../server/engine/drawing/sheet/sheet';
import { ODD, oddJob, WHOLE_FIRM } from './jobs';
import { markdownText } from './read';

type Text = Extract<Mark, { kind: 'text' }>;

const YARD = 'Oddmouth Builders’ Yard';
const MERCHANTS = WHOLE_FIRM.replace('material cement\n', `material cement\n  merchant "${YARD}"\n`)
  .replace('material sand\n', `material sand\n  merchant "${YARD}"\n`)
  .replace('brick secret-red "Oddmouth red facing"\n', '$&  merchant "The brickworks, Ltd"\n');

const job = oddJob(ODD.plain!, MERCHANTS);
const listOf = (as: 'read' | 'sheets' | 'rows', prices = false) =>
  buyingPaper(job, undefined, { prices, as }, '1');

describe('a buying list', () => {
  test('has a part for each merchant, and last what nobody is named for', () => {
    const { parts } = listOf('read');
    const titles = parts.flatMap(function deep(part): string[] {
      if (part.part === 'together') return part.parts.flatMap(deep);
      return part.part === 'heading' && part.level === 2 ? [part.text] : [];
    });
    expect(titles).toEqual(['The brickworks, Ltd', YARD, 'To be bought']);
  });

  test('holds whole packs, and what each of them holds', () => {
    const text = markdownText(listOf('read')).replaceAll('\u00a0', ' ');
    expect(text).toContain('| Cement | 50.8 kg | 3 bags | 25 kg |');
    expect(text).toContain('| Building sand | 338.7 kg | 1 bag | 850 kg |');
    expect(text).toMatch(/\| Oddmouth red facing \| 548 bricks \| 581 bricks \| {2}\|/);
  });

  test('as rows says from whom in each, figures bare and their units beside them', () => {
    const [table, ...others] = tablesOf(listOf('rows', true).parts);
    expect(others).toEqual([]);
    expect(csvOf(table!).split('\r\n')).toEqual([
      'From,What,Needed,Unit,To buy,Unit,Each holds,Unit,Cost before tax,Currency',
      '"The brickworks, Ltd",Oddmouth red facing,548,bricks,581,bricks,,,563.57,GBP',
      `${YARD},Cement,50.8,kg,3,bag,25,kg,19.29,GBP`,
      `${YARD},Building sand,338.664,kg,1,bag,850,kg,54.37,GBP`,
      ',Hydrated lime,21.167,kg,1,bag,25,kg,9.21,GBP',
      '',
    ]);
  });

  test('as sheets has one for each merchant, to send alone', () => {
    const tables = tablesOf(listOf('sheets').parts);
    expect(tables.map(({ name }) => name)).toEqual(['The brickworks, Ltd', YARD, 'To be bought']);
    for (const { columns } of tables) expect(columns[0]!.title).toBe('What');
  });

  test('that is not whole says so, and what is not known is no nought', () => {
    const open = buyingPaper(oddJob(ODD.gaps!), undefined, { prices: true, as: 'read' }, '1');
    expect(markdownText(open)).toContain('NOT THE WHOLE LIST.');
    const none = oddJob(ODD['no firm, no client, no title']!);
    const text = markdownText(buyingPaper(none, undefined, { prices: true, as: 'read' }, '1'));
    expect(text).toMatch(/\| \? \|/);
  });

  test('the packs add up to no less than is needed', () => {
    for (const { needed, bought, left } of job.price.purchases) {
      if (!left) continue;
      const held = needed.value.add(left.value);
      expect(held.gte(needed.value)).toBe(true);
      expect(bought.value.isInteger()).toBe(true);
    }
  });
});

describe('a site sheet', () => {
  const drawingsIn = (parts: readonly Part[]): string[] =>
    parts.flatMap((part) => {
      if (part.part === 'together') return drawingsIn(part.parts);
      return part.part === 'drawing' ? [part.sheet.title] : [];
    });

  test('has drawings, rods, cuts, mortar, days and cautions with whose word counts', () => {
    const paper = sitePaper(oddJob(ODD.plain!), undefined, '1');
    const text = markdownText(paper);
    for (const what of ['## Take care', '## Mortar', '## Order of work', '### Cuts', '| Day 1 |'])
      expect(text).toContain(what);
    expect(text).toMatch(/Ask: .*From: /);
    const titles = drawingsIn(paper.parts);
    for (const what of ['Wall along the lane', 'plans', 'gauge rod'])
      expect(titles.some((title) => title.includes(what))).toBe(true);
  });

  test('draws a gauge rod that shows the same only once', () => {
    const twice = `${ODD.plain}\nwall third "Third"\n  brick secret-red\n  length 2240 mm\n  height 8 courses\n`;
    const paper = sitePaper(oddJob(twice), undefined, '1');
    const rods = drawingsIn(paper.parts).filter((title) => title.includes('gauge rod'));
    expect(rods).toHaveLength(2);
    expect(markdownText(paper)).toContain('Gauge rod: the same as for Wall.');
  });

  test('every drawing ends below what is drawn, and goes on a page', () => {
    const paper = sitePaper(oddJob(ODD.plain!), undefined, '1');
    const sheets = paper.parts.flatMap(function deep(part): {
      height: number;
      width: number;
      marks: readonly object[];
    }[] {
      if (part.part === 'together') return part.parts.flatMap(deep);
      return part.part === 'drawing' ? [part.sheet] : [];
    });
    expect(sheets.length).toBeGreaterThan(4);
    for (const { height, width, marks } of sheets) {
      const lowest = Math.max(
        ...marks.map((m) => ('y' in m ? Number(m.y) + ('height' in m ? Number(m.height) : 0) : 0)),
      );
      expect(lowest).toBeLessThanOrEqual(height + 1e-6);
      expect(height - lowest).toBeLessThan(12);
      expect([width, height <= 225]).toEqual([174, true]);
    }
  });

  test('a title of any length leaves room for the scale, and keeps its end', () => {
    const paper: SheetSize = { width: 174, height: 128, margin: 1 };
    for (const long of [0, 20, 40, 900]) {
      const title = `${'Wall '.repeat(long / 5)}Lane: plans (sheet 1 of 2)`;
      const [name, scale] = heading(title, 'Scale 1:10. Sizes in millimetres.', paper) as Text[];
      const ends = 1 + textWidth(name!.text, name!.size) * 0.85;
      expect(ends).toBeLessThan(173 - textWidth(scale!.text, scale!.size) * 0.8);
      expect(name!.text).toMatch(/plans \(sheet 1 of 2\)$/);
      expect(name!.text.includes('…')).toBe(long > 40);
    }
  });

  test('that is not whole says what is to be measured', () => {
    expect(markdownText(sitePaper(oddJob(ODD.gaps!), undefined, '1'))).toContain('NOT WHOLE YET.');
  });
});
