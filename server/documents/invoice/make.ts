/** An invoice from a job: of what the client agreed to, at the price the client holds. */
import { agreedJob } from '../../engine/life/agreed';
import { wordOf } from '../../engine/resolve/book';
import { defaultLine } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import { firmFacts, languageOf } from '../letterhead';
import { quotedWorks } from '../quote/work';
import { daysLater, wordsFor } from '../words';
import { type Asked, type Billed, billed } from './billed';
import { moneyOf } from './lines';
import { buyerOf, jobLines, sellerOf } from './parties';
import type { Invoice } from './types';

export interface Made {
  readonly invoice: Invoice;
  readonly billed: Billed;
  /** The job that was agreed. */
  readonly job: Job;
}

function titleOf(job: Job): string {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  return wordOf(block?.read.heading?.values.title);
}

/** @returns a sentence where there is nothing to invoice */
export function invoiceOf(given: Job, asked: Asked): Made | string {
  const found = billed(given, asked);
  if (typeof found === 'string') return found;
  const job = agreedJob(given);
  const words = wordsFor(languageOf(job));
  const sold = quotedWorks(job, words.quote);
  const title = titleOf(job) || words.quote.brickwork;
  const part = [found.title || words.invoice.part, title].join(': ');
  const firm = firmFacts(job);
  const days = firm?.line('payment') ?? defaultLine(job.env, 'payment');
  const within = days?.values.days;
  const payment = within?.kind === 'quantity' ? within.low.floor().toNumber() : undefined;
  const [ref = ''] = jobLines(job, 'ref');
  const invoice: Invoice = {
    number: found.number,
    issued: found.date,
    due: (payment !== undefined && daysLater(found.date, payment)) || '',
    terms: payment === undefined ? '' : words.invoice.within(payment),
    reference: ref,
    notes: [],
    currency: job.env.money.code,
    digits: job.env.money.digits,
    seller: sellerOf(job),
    buyer: buyerOf(job),
    ...moneyOf(job, found, sold, part),
    account: firm?.line('account')?.word('text') ?? '',
  };
  return { invoice, billed: found, job };
}
