import { copyFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  EXPORT,
  type Exported,
  type ExportParams,
  PAGE,
  PAGE_KINDS,
  PAGES,
  type PageItem,
  type PageParams,
  type PageShown,
  type Refused,
} from '../../shared/protocol/pages';
import { type PaperShown, PREVIEW, type Shown } from '../../shared/protocol/preview';
import { FIRM, JOB } from '../cli/jobs';
import { root } from '../tree';
import { openedJob } from './opened';

const at = openedJob();

const page = (kind: PageParams['page'], options?: PageParams['options']) =>
  at.peer.ask<PageShown & Refused>(PAGE, { uri: at.uri, page: kind, options });
const file = (params: Omit<ExportParams, 'uri'>) =>
  at.peer.ask<Exported & Refused>(EXPORT, { uri: at.uri, ...params });
const textOf = ({ base64 }: Exported) => Buffer.from(base64, 'base64').toString('utf8');
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the list', () => {
  test('names every paper and page, and drawings', async () => {
    const items = await at.peer.ask<PageItem[]>(PAGES, { uri: at.uri });
    expect(items.map(({ kind }) => kind).sort()).toEqual([...PAGE_KINDS, 'drawing'].sort());
    expect(items.find(({ kind }) => kind === 'quote')).toMatchObject({
      title: 'Quote',
      reader: 'client',
      forms: ['pdf', 'html', 'md', 'json'],
    });
  });

  test('is null for a file that is not open, and says why of one that is no job', async () => {
    expect(await at.peer.ask(PAGES, { uri: at.peer.uri('none.perp') })).toBeNull();
    const firm = await at.peer.open('firm.perp', FIRM);
    const items = await at.peer.ask<PageItem[]>(PAGES, { uri: firm });
    expect(new Set(items.map(({ why }) => why))).toEqual(
      new Set(['The file holds no work: no wall, pier or repair.']),
    );
  });
});

describe('a page', () => {
  test('is what stands in a body, and the same as Markdown', async () => {
    const { html, markdown, title, lang, asides } = await page('quote');
    expect(title).toBe('Quote 26-107 · Long garden wall');
    expect(lang).toBe('en-GB');
    expect(html).toContain('<h1>Quote');
    expect(html).not.toMatch(/<html|<head>|<script|<style/);
    expect(html).toContain('data:image/svg+xml,');
    expect(markdown).toContain('# Quote');
    expect(asides).toEqual([]);
  });

  test('follows the text as it stands, and needs no saved file', async () => {
    const before = await page('price');
    await at.peer.edit(at.uri, JOB.replace('length  5 m', 'length  9 m'));
    const after = await page('price');
    expect(after.markdown).not.toBe(before.markdown);
  });

  test('says what is wrong where there is none', async () => {
    expect((await page('match')).refused).toContain('There is nothing to compare');
    expect((await page('invoice', { date: 'soon' })).refused).toContain('soon is no date');
    expect((await page('toString' as 'quote')).refused).toContain('There is no page');
  });

  test('of a draft tells its firm why, beside the paper', async () => {
    await at.peer.edit(at.uri, JOB.replace('length  5 m', 'length  ?'));
    const { asides, markdown } = await page('quote');
    expect(asides[0]).toMatch(/^NOT A QUOTE yet\. /);
    expect(spaced(markdown)).toContain('| **Total** | **not complete** |');
  });

  test('of changes has the work that was sent, where the client has it', async () => {
    const old = { text: JOB.replace('length  5 m', 'length  6 m') };
    const { markdown } = await page('changes', { before: old });
    expect(spaced(markdown)).toMatch(/6 m[\s\S]*5 m|5 m[\s\S]*6 m/);
    const without = await page('changes');
    expect(without.markdown).not.toBe(markdown);
  });

  test('for a client tells no cost and no rate, whatever is asked for', async () => {
    for (const kind of ['quote', 'invoice', 'changes'] as const) {
      const shown = await page(kind, { prices: true, number: 'N-1', date: '2026-02-01' });
      const text = shown.html + shown.markdown;
      for (const secret of ['28.70', '17.30', '£0.97', '239.83', '11.7%', '23.3%', 'walnorth'])
        expect(text, kind).not.toContain(secret);
    }
  });
});

describe('a file', () => {
  test('of HTML is a whole page, the same bytes each time', async () => {
    const [one, two] = [
      await file({ page: 'quote', form: 'html' }),
      await file({ page: 'quote', form: 'html' }),
    ];
    expect(one).toEqual(two);
    expect(one).toMatchObject({ name: 'Quote 26-107.html', type: 'text/html' });
    expect(textOf(one)).toMatch(/^<!doctype html>/);
    expect(textOf(one)).toContain("default-src 'none'");
  });

  test('of CSV has every purchase in one table, and the mark where it is wanted', async () => {
    const plain = textOf(await file({ page: 'buying', form: 'csv' }));
    const [head, ...rows] = plain.trim().split('\r\n');
    expect(head).toMatch(/^From,What,/);
    expect(rows).toHaveLength(4); // bricks, cement, lime, sand
    expect(plain).not.toMatch(/GBP/);
    const priced = textOf(
      await file({ page: 'buying', form: 'csv', options: { prices: true, bom: true } }),
    );
    expect(priced.charCodeAt(0)).toBe(0xfeff);
    expect(priced).toContain('GBP');
  });

  test('of JSON is the paper as the command line prints it', async () => {
    const made = JSON.parse(textOf(await file({ page: 'site', form: 'json' })));
    expect(made).toMatchObject({ format: 'perpend-paper', kind: 'site', file: 'job.perp' });
  });

  test('of UBL names what it lacks, and is written where nothing lacks', async () => {
    const options = { number: 'N-7', date: '2026-03-01' };
    const xml = textOf(await file({ page: 'invoice', form: 'xml', options }));
    expect(xml).toContain('<cbc:ID>N-7</cbc:ID>');
    expect(xml).toContain('urn:cen.eu:en16931:2017');
    expect((await file({ page: 'invoice', form: 'xml' })).refused).toMatch(
      /^An electronic invoice needs a number/,
    );
    await at.peer.edit(at.uri, JOB.replace('length  5 m', 'length  ?'));
    expect((await file({ page: 'invoice', form: 'xml', options })).refused).toBeDefined();
  });

  test('of a drawing is SVG or DXF of the view that is asked for', async () => {
    const options = { work: 'walsouth', view: 'front' as const };
    const svg = await file({ page: 'drawing', form: 'svg', options });
    expect(svg.name).toBe('walsouth-front.svg');
    expect(textOf(svg)).toMatch(/^<svg /);
    const dxf = await file({ page: 'drawing', form: 'dxf', options });
    expect(textOf(dxf)).toMatch(/^\s*0\r?\nSECTION/);
    expect(
      (await file({ page: 'drawing', form: 'svg', options: { work: 'x' } })).refused,
    ).toContain('x');
    expect((await file({ page: 'drawing', form: 'pdf' })).refused).toContain('pdf');
  });

  test('never has a name that leads elsewhere', async () => {
    await at.peer.edit(at.uri, JOB.replace('26-107', '"../../etc/a:b"'));
    const { name } = await file({ page: 'quote', form: 'md' });
    expect(name).toBe('Quote ..-..-etc-a-b.md');
  });

  test('is refused in a form that there is not', async () => {
    expect((await file({ page: 'quote', form: 'csv' })).refused).toContain('csv');
    expect((await file({ page: 'quote', form: 'dxf' })).refused).toContain('dxf');
    expect((await file({ page: 'quote', form: 'exe' as 'md' })).refused).toContain('no form exe');
    expect((await file({ page: 'quote', form: 'xml' })).refused).toContain('xml');
  });
});

test('a logo that cannot be used is told, and the paper goes without', async () => {
  const logo = (name: string) => FIRM.replace('  terms ', `  logo "${name}"\n  terms `);
  const firm = await at.peer.open('firm.perp', logo('none.png'));
  const asides = async () => (await page('quote')).asides.join(' ');
  expect(await asides()).toMatch(/The logo none\.png is left out: there is no such file/);
  await at.peer.edit(firm, logo('../../../etc/passwd'));
  expect(await asides()).toMatch(/is left out: it lies outside the open folders/);
  await at.peer.edit(firm, logo('job.perp'));
  expect(await asides()).toMatch(/is left out/);
  await at.peer.edit(firm, FIRM);
});

test('a preview has the logo once it is read, tells what is wrong with one, and reads none at a key', async () => {
  const named = (name: string) => FIRM.replace('  terms ', `  logo "${name}"\n  terms `);
  const asked = { uri: at.uri, line: 0, show: 'quote', room: { width: 100, height: 100 } };
  const shown = async () => (await at.peer.ask<Shown>(PREVIEW, asked)).paper!;
  /** The client is told when it has come, and asks again: here it asks until then. */
  const until = async (is: (paper: PaperShown) => boolean) => {
    for (let i = 0; i < 1200 && !is(await shown()); i++)
      await new Promise((resolve) => setTimeout(resolve, 25));
    return shown();
  };
  copyFileSync(path.join(root, 'client/media/icon.png'), path.join(at.peer.folder, 'sign.png'));
  const firm = await at.peer.open('firm.perp', named('sign.png'));
  const { html } = await until((paper) => paper.html.includes('<img'));
  expect(html).toMatch(/<img src="data:image\/png;base64,/);
  await at.peer.edit(firm, named('none.png'));
  const wrong = await until((paper) => paper.asides.length > 0);
  expect(wrong.asides.join(' ')).toMatch(/The logo none\.png is left out: there is no such file/);
  expect(wrong.html).not.toContain('<img');
  await at.peer.edit(firm, FIRM);
});
