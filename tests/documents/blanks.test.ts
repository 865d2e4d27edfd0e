/** What is still to be filled in stands on no paper, and whoever makes one is told. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { buyerOf, sellerOf } from '../../server/documents/invoice/parties';
import { pageOf } from '../../server/documents/pages';
import { markdownOf, type Paper } from '../../server/documents/paper';
import { pdfOf } from '../../server/documents/paper/heavy';
import { bodyOf } from '../../server/documents/paper/html';
import { paperJson } from '../../server/documents/paper/json';
import type { PageKind, PageOptions } from '../../shared/protocol/pages';
import { inside } from '../cli/inside';
import { folderOf } from '../cli/perpend';
import { jobOf } from '../engine/world';
import { fonts, inFile, useFonts } from './paper/samples';
import { pdfText } from './papers/read';

useFonts();

const FIRM = `perpend 1
use uk
firm "? Zzfirm"
  address     "? Zzstreet"
  town        "? Zztown"
  postcode    "SX9 4QD"
  phone       ?
  email       "? Zzmail"
  tax-number  "? Zznumber"
  account     "? Zzaccount"
  terms       "? Zzterms"
  terms       "Payment within 14 days."
`;
const JOB = `perpend 1
use "firm.perp"
job "Skip and wall"
  client "P. Oakes"
  client "? Zzclient"
  site   "? Zzsite"
cost skip "Skip" 1 at £1000
`;

const files = { 'firm.perp': FIRM };

function made(
  kind: PageKind,
  text = JOB,
  options: PageOptions = { number: 'N-1', date: '2026-03-12' },
) {
  const page = pageOf(jobOf(text, files), kind, { version: '0', options });
  if (typeof page === 'string') throw new Error(page);
  return page;
}

const textOf = (paper: Paper) =>
  [markdownOf(paper), bodyOf(paper), paperJson(paper, 'job.perp'), paper.running, paper.title].join(
    '\n',
  );

const OF_FIRM =
  'Still to be filled in, and so left out: firm, address, town, phone, email, tax-number, account, terms (firm.perp).';
const OF_JOB = 'Still to be filled in, and so left out: client, site (job.perp).';

describe('a paper for the client', () => {
  test.each<PageKind>(['quote', 'invoice', 'changes'])(
    '%s leaves out what is not filled in, and tells the firm',
    (kind) => {
      const { paper, asides } = made(kind);
      const text = textOf(paper);
      expect(text).not.toMatch(/Zz/);
      expect(text).not.toContain('?');
      expect(text).toContain('SX9 4QD');
      expect(asides).toContain(OF_FIRM);
      expect(asides).toContain(OF_JOB);
    },
  );

  test('has no row for what nobody has named', () => {
    const { paper } = made('quote');
    const facts = paper.parts.find((part) => part.part === 'facts');
    expect(facts?.part === 'facts' && facts.rows.map(({ label, lines }) => [label, lines])).toEqual(
      [['For', ['P. Oakes']]],
    );
    expect(markdownOf(paper)).not.toContain('****');
    expect(bodyOf(paper)).not.toContain('class="firm"');
    expect(markdownOf(paper)).toContain('Payment within 14 days.');
  });

  test('tells of a line of the firm’s that nobody can read, which no price hangs on', () => {
    const firm = FIRM.replace('town        "? Zztown"', 'town "Marston "Low" End"');
    const page = pageOf(jobOf(JOB, { 'firm.perp': firm }), 'quote', { version: '0', options: {} });
    if (typeof page === 'string') throw new Error(page);
    expect(page.asides).toContain(
      'A line cannot be read, and so is left out: town "Marston "Low" End" (firm.perp).',
    );
    expect(textOf(page.paper)).not.toContain('Marston');
  });

  test('a tax number that is not known yet is none', () => {
    expect(made('quote').asides.join()).toContain('gives no tax-number');
    expect(made('invoice').asides.join()).toContain('gives no tax-number');
  });

  test('is a PDF without a name at its head, and of no author', () => {
    const { paper } = made('quote');
    const [first] = pdfText(paper).trimStart().split('\n');
    expect(first!.trim()).toBe('SX9 4QD');
    const file = inFile(pdfOf(paper, fonts()).bytes, 'blanks.pdf');
    const about = execFileSync('pdfinfo', ['-struct-text', file], { encoding: 'utf8' });
    expect(about).not.toMatch(/Zz/);
    expect(execFileSync('pdfinfo', [file], { encoding: 'utf8' })).not.toMatch(/^Author/m);
  });
});

describe('an invoice', () => {
  test('names nobody who is not named', () => {
    const job = jobOf(JOB, files);
    expect(sellerOf(job)).toMatchObject({
      name: '',
      address: [],
      town: '',
      phone: '',
      taxNumber: '',
    });
    expect(buyerOf(job)).toMatchObject({ name: 'P. Oakes', address: [] });
  });

  test('the first line is the name, though it is still to be filled in', () => {
    const job = jobOf(
      JOB.replace('"P. Oakes"', '?').replace('"? Zzclient"', '"4 Kiln Row"'),
      files,
    );
    expect(buyerOf(job)).toMatchObject({ name: '', address: ['4 Kiln Row'] });
  });

  test('an electronic one is not made, and says what it needs', () => {
    const job = jobOf(JOB, files);
    const options = { number: 'N-1', date: '2026-03-12' };
    const page = pageOf(job, 'invoice', { version: '0', options, form: 'xml' });
    expect(page).toContain('who sends it');
    expect(page).toContain('the firm’s tax number');
  });
});

describe('at a terminal', () => {
  const cwd = folderOf({ 'firm.perp': FIRM, 'job.perp': JOB });

  test.each([
    ['quote', ['quote', 'job.perp', '--as', 'md']],
    ['invoice', ['invoice', 'job.perp', '--number', 'N-1', '--date', '2026-03-12', '--as', 'md']],
  ])('%s says the same beside the paper', (_, words) => {
    const { out, err } = inside(words, { cwd });
    expect(out).not.toMatch(/Zz/);
    expect(err).toContain(`perpend: ${OF_FIRM}\n`);
    expect(err).toContain(`perpend: ${OF_JOB}\n`);
  });

  test('the price is headed by those who are named', () => {
    const { out } = inside(['price', 'job.perp'], { cwd });
    expect(out).toContain('P. Oakes\n');
    expect(out).not.toMatch(/P\. Oakes,/);
  });

  test('who answers a template’s question with a question mark names nobody, and is told', () => {
    const made = ['new', 'garden-wall', '--out', 'new.perp', '--set', 'job client=?'];
    expect(inside(made, { cwd }).code).toBe(0);
    expect(readFileSync(path.join(cwd, 'new.perp'), 'utf8')).toMatch(/^ {2}client +\?$/m);
    const { out, err } = inside(['quote', 'new.perp', '--as', 'md'], { cwd });
    expect(out).not.toMatch(/\?/);
    expect(err).toContain('Still to be filled in, and so left out: client (new.perp).');
  });
});
