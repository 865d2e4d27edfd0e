/** Every paper of jobs that are awkward to write: each is written whole, in each form, and the same each time. */
import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { buyingPaper } from '../../../server/documents/buying/paper';
import { changesPaper } from '../../../server/documents/changes/paper';
import { invoiceOf } from '../../../server/documents/invoice/make';
import { invoicePaper } from '../../../server/documents/invoice/paper';
import { letterheadOf } from '../../../server/documents/letterhead';
import { outcomePaper } from '../../../server/documents/outcome/paper';
import { htmlOf, type Paper } from '../../../server/documents/paper';
import { pdfOf } from '../../../server/documents/paper/heavy';
import { quotePaper, quoteView } from '../../../server/documents/quote';
import { sitePaper } from '../../../server/documents/site/paper';
import { wordsFor } from '../../../server/documents/words';
import { compared } from '../../../server/engine/compare';
import type { Job } from '../../../server/engine/workspace/job';
import { fonts, inFile, useFonts } from '../paper/samples';
import { ODD, oddJob } from './jobs';
import { htmlText, markdownText, pdfText } from './read';

useFonts();

const before = oddJob(ODD.plain!);
const head = (job: Job) => letterheadOf(job, wordsFor('en').quote, undefined);
const PAPERS: Readonly<Record<string, (job: Job) => Paper | undefined>> = {
  quote: (job) => quotePaper(quoteView(job), head(job), '1'),
  invoice(job) {
    const made = invoiceOf(job, { number: 'N-1', date: '2026-03-01' });
    return typeof made === 'string' ? undefined : invoicePaper(made, head(job), undefined, '1');
  },
  buying: (job) => buyingPaper(job, head(job), { prices: true, as: 'read' }, '1'),
  site: (job) => sitePaper(job, head(job), '1'),
  changes: (job) => changesPaper(job, compared(before, job), head(job), '1'),
  'changes without what was sent': (job) => changesPaper(job, undefined, head(job), '1'),
  result: (job) => outcomePaper(job, head(job), '1'),
};

/** What a fault looks like where a value should stand. */
const FAULT = /\bNaN\b|undefined|\bnull\b|\[object|Infinity|\{\{/;

describe.each(Object.keys(PAPERS))('%s', (kind) => {
  test.each(Object.keys(ODD))('of a job with %s is written', (name) => {
    const paper = PAPERS[kind]!(oddJob(ODD[name]!));
    if (!paper) return expect(name).toMatch(/no title|gaps/);
    const texts = [htmlText(paper), markdownText(paper)];
    for (const text of texts) {
      expect(text).not.toMatch(FAULT);
      expect(text.length).toBeGreaterThan(100);
    }
    expect(htmlOf(paper)).not.toContain('<script>alert');
    return undefined;
  });

  test('is the same each time', () => {
    const again = () => htmlOf(PAPERS[kind]!(oddJob(ODD['several taxes']!))!);
    expect(again()).toBe(again());
  });

  test.each(['other alphabets', 'long texts', 'discounts'])(
    'of a job with %s is a sound PDF',
    (name) => {
      const paper = PAPERS[kind]!(oddJob(ODD[name]!))!;
      const { bytes, missing } = pdfOf(paper, fonts());
      expect(missing).toEqual([]);
      const said = execFileSync('qpdf', ['--check', inFile(bytes, 'odd.pdf')], {
        encoding: 'utf8',
      });
      expect(said).toContain('No syntax or stream encoding errors');
      if (name === 'other alphabets' && kind !== 'invoice')
        expect(pdfText(paper)).toContain('Łódź, Ελλάδα, Київ');
    },
  );
});
