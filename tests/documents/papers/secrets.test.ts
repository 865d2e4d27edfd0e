/** What a paper must never say to whoever it is for, looked for in every form of it. */
import { describe, expect, test } from 'vitest';
import { buyingPaper } from '../../../server/documents/buying/paper';
import { changesPaper } from '../../../server/documents/changes/paper';
import { invoicePaper } from '../../../server/documents/invoice/paper';
import { letterheadOf } from '../../../server/documents/letterhead';
import { KINDS, pageOf } from '../../../server/documents/pages';
import { mortarPage } from '../../../server/documents/pages/mortar';
import type { Paper } from '../../../server/documents/paper';
import { quotePaper, quoteView } from '../../../server/documents/quote';
import { sitePaper } from '../../../server/documents/site/paper';
import { wordsFor } from '../../../server/documents/words';
import { compared } from '../../../server/engine/compare';
import { agreedJob } from '../../../server/engine/life/agreed';
import { allFigures } from '../../../server/engine/views/job-view';
import { showTerm } from '../../../server/engine/views/show';
import type { Job } from '../../../server/engine/workspace/job';
import type { PageKind } from '../../../shared/protocol/pages';
import { useFonts } from '../paper/samples';
import { madeOf, ODD, oddJob, WHOLE_FIRM } from './jobs';
import { formsOf } from './read';

useFonts();

/** In the firm’s file and the jobs, and nobody’s business but the firm’s. */
const RATES = [
  '11.7%', // overhead
  '23.3%', // profit
  '4.9%', // contingency
  '28.70', // a bricklayer
  '17.30', // a labourer
  '£0.97', // a brick
  '6.43', // cement
  '9.21', // lime
  '54.37', // sand
  '239.83', // a cost that the firm puts on every job
  '301.13', // what costs of the job cost
  '157.41',
  '£0.47', // a mile
];
const NAMES = ['walnorth', 'walsouth', 'gatehole', 'secret-red', 'hidden-skip', 'Spoil away'];
const SECRET_FIRM = WHOLE_FIRM.replace('price\n', 'price\n  contingency  4.9%\n');

const head = (job: Job) => letterheadOf(job, wordsFor('en').quote, undefined);
const CLIENTS: Readonly<Record<string, (job: Job) => Paper>> = {
  'quote, by the editor,': (job) => page('quote', job),
  quote: (job) => quotePaper(quoteView(agreedJob(job)), head(job), '1.0'),
  invoice: (job) => invoicePaper(madeOf(job), head(job), undefined, '1.0'),
  changes(job) {
    const other = oddJob(ODD.plain!.replace('5 m', '6 m'), SECRET_FIRM);
    return changesPaper(agreedJob(job), compared(other, agreedJob(job)), head(job), '1.0');
  },
};

/** What may be told: the price, its taxes, stages, what the client deducts or holds back. */
const TOLD =
  /^(job\.(net|tax|price|gross|discounts?(\.\d+)?|rounding|retention|deducted)|stage\.\d+|option\.[a-z]+\.(more|price|more-net|net)|tax\..*|owed\..*|job\.(invoiced|paid|owed)|share\..*)$/;

function moneyInside(job: Job): string[] {
  const texts = allFigures(job)
    .filter(({ key, term }) => !TOLD.test(key) && !term.value.isZero())
    .map(({ term }) => showTerm(term, job.env).replaceAll('\u00a0', ' '));
  const told = [
    ...allFigures(job)
      .filter(({ key }) => TOLD.test(key))
      .map(({ term }) => term),
    ...job.price.discounts.map(({ amount }) => amount),
  ];
  const outside = told.map((term) => showTerm(term, job.env).replaceAll('\u00a0', ' '));
  return [...new Set(texts)].filter((text) => /^£/.test(text) && !outside.includes(text));
}

const JOBS = ['discounts', 'options, one of them accepted'] as const;

describe.each(Object.keys(CLIENTS))('%s, for a client,', (kind) => {
  test.each(JOBS)('of a job with %s holds no cost, rate, profit or name of the file', (name) => {
    const job = oddJob(ODD[name]!, SECRET_FIRM);
    const inside = moneyInside(agreedJob(job));
    expect(inside.length).toBeGreaterThan(8);
    const paper = CLIENTS[kind]!(job);
    const { html, markdown, pdf } = formsOf(paper);
    for (const [form, text] of Object.entries({ html, markdown, pdf })) {
      const found = [...RATES, ...NAMES, ...inside].filter((secret) => holds(text!, secret));
      expect(found, form).toEqual([]);
      expect(text).not.toMatch(/overhead|contingency|margin|mark-up|labour|gang\b|profit/i);
      // The same search finds what is told.
      const total = kind === 'invoice' ? madeOf(job).invoice.totals.due : price(job);
      expect(holds(text!, `£${grouped(total.toFixed(2))}`), form).toBe(true);
    }
  });
});

const price = (job: Job) => agreedJob(job).price.total.value;
const grouped = (figure: string) => figure.replace(/(?<=\d)(?=(\d{3})+\.)/g, ',');

/** Not as a part of a longer figure. */
function holds(text: string, secret: string): boolean {
  const plain = secret.replaceAll('\u00a0', ' ');
  for (let at = text.indexOf(plain); at >= 0; at = text.indexOf(plain, at + 1))
    if (
      !/[\d.,]\d?$/.test(text.slice(0, at).slice(-1)) &&
      !/^\d/.test(text.slice(at + plain.length))
    )
      return true;
  return false;
}

const FOR_SITE: Readonly<Record<string, (job: Job) => Paper>> = {
  'the site sheet': (job) => sitePaper(job, head(job), '1.0'),
  'a buying list': (job) => buyingPaper(job, head(job), { prices: false, as: 'read' }, '1.0'),
  'the cut list': (job) => page('cuts', job),
  'the timetable': (job) => page('day', job),
  mortar: (job) => page('mortar', job),
};

/** As the editor makes it. */
function page(kind: PageKind, job: Job): Paper {
  const made = pageOf(job, kind, { version: '1.0' });
  return typeof made === 'string' ? mortarPage(job, undefined, '1.0') : made.paper;
}

test('whoever may read each paper and page is told above, or is the firm itself', () => {
  const known = ['quote', 'invoice', 'changes', 'site', 'buying', 'cuts', 'day', 'mortar'];
  const others = KINDS.filter(({ reader }) => reader !== 'firm').map(({ kind }) => kind);
  expect(others.sort()).toEqual(known.sort());
});

test('every page for the firm alone says so at its foot, where it holds costs', () => {
  const job = oddJob(ODD.plain!, SECRET_FIRM);
  for (const { kind, reader } of KINDS) {
    if (reader !== 'firm' || kind === 'match') continue;
    const made = pageOf(job, kind, { version: '1.0' });
    expect(typeof made === 'string' ? made : made.paper.foot, kind).toContain('For the firm alone');
  }
});

describe.each(Object.keys(FOR_SITE))('%s', (kind) => {
  test.each(['several taxes', 'ranges', 'errors'])(
    'of a job with %s holds no money at all',
    (name) => {
      const job = oddJob(ODD[name]!, SECRET_FIRM);
      for (const [form, text] of Object.entries(formsOf(FOR_SITE[kind]!(job)))) {
        expect(text.match(/.{0,20}[£$€].{0,20}|\bGBP\b/), form).toBeNull();
        expect(
          RATES.filter((rate) => holds(text, rate)),
          form,
        ).toEqual([]);
      }
    },
  );

  test('the same search finds money where it is', () => {
    const job = oddJob(ODD.plain!, SECRET_FIRM);
    const forms = Object.values(
      formsOf(buyingPaper(job, undefined, { prices: true, as: 'read' }, '1.0')),
    );
    for (const text of forms) expect(text).toMatch(/646\.44/);
  });
});
