/**
 * What a client is told, and nothing else. Costs, rates, margins, quantities and the names that a file
 * uses for itself never enter this view, so nothing that prints it can let them out.
 */

import { type BlockFacts, defaultLine, factsOf } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import { usedWithErrors } from '../used';
import { daysLater, inWords } from './dates';
import { type Amount, amounts, rounding } from './money';
import { alsoIncluded, type Included, type QuotedWork, quotedWorks } from './work';

export interface Letterhead {
  readonly name: string;
  readonly address: readonly string[];
  readonly phone: string;
  readonly email: string;
  /** With what it is called: VAT number GB 123. */
  readonly taxNumber: string;
}

export interface QuoteView {
  readonly title: string;
  /** Why this is not a quote yet, in words that give nothing away; nothing when it is one. */
  readonly draft: string | undefined;
  readonly firm: Letterhead | undefined;
  readonly client: readonly string[];
  readonly site: readonly string[];
  readonly ref: string;
  readonly date: string;
  readonly validUntil: string;
  readonly works: readonly QuotedWork[];
  /** What else the price holds, by its titles. */
  readonly also: readonly Included[];
  readonly notes: readonly string[];
  readonly net: Amount;
  readonly tax: Amount | undefined;
  readonly total: Amount;
  readonly stages: readonly Amount[];
  /** How the figures are rounded, in a sentence. */
  readonly rounding: string;
  readonly terms: readonly string[];
  readonly paper: 'A4' | 'Letter';
}

export function quoteView(job: Job): QuoteView {
  const facts = jobFacts(job);
  const texts = (key: string) => facts?.lines(key).map((line) => line.word(key)) ?? [];
  const draft = draftOf(job);
  const date = facts?.line('date')?.word('date') ?? '';
  const firm = firmFacts(job);
  return {
    title: facts?.title || 'Brickwork',
    draft,
    firm: firm && letterhead(firm, job.price.taxName),
    client: texts('client'),
    site: texts('site'),
    ref: facts?.line('ref')?.word('ref') ?? '',
    date: inWords(date),
    validUntil: validUntil(date, facts, job),
    works: quotedWorks(job),
    also: alsoIncluded(job),
    notes: facts?.lines('note').map((line) => line.word('text')) ?? [],
    ...amounts(job, draft !== undefined),
    rounding: rounding(job),
    terms: firm?.lines('terms').map((line) => line.word('text')) ?? [],
    paper: job.env.imperial ? 'Letter' : 'A4',
  };
}

function jobFacts(job: Job): BlockFacts | undefined {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  return block && factsOf(block, job.env);
}

function firmFacts(job: Job): BlockFacts | undefined {
  const block = job.book.blocksOf('firm')[0];
  return block && factsOf(block, job.env);
}

function letterhead(firm: BlockFacts, taxName: string): Letterhead {
  const word = (key: string) => firm.line(key)?.word('text') ?? '';
  const taxNumber = word('tax-number');
  return {
    name: firm.name,
    address: firm.lines('address').map((line) => line.word('text')),
    phone: word('phone'),
    email: word('email'),
    taxNumber: taxNumber && `${taxName} number ${taxNumber}`,
  };
}

/** An error can leave a whole line of work out, so a file with one is no more a quote than a gap makes it. */
function draftOf(job: Job): string | undefined {
  const errors = job.findings.filter((f) => f.severity === 'error').length;
  if (errors) return 'The job file still has errors, so the price may be wrong.';
  if (usedWithErrors(job).length)
    return 'A file that the job uses has errors, so the price may be wrong.';
  if (job.price.total.gaps.length) return 'Parts of the price are still to be worked out.';
  return job.works.length ? undefined : 'No work is described yet.';
}

function validUntil(date: string, facts: BlockFacts | undefined, job: Job): string {
  const line = facts?.line('valid') ?? defaultLine(job.env, 'valid');
  const days = line?.values.days;
  if (days?.kind !== 'quantity') return '';
  const last = daysLater(date, days.low.floor().toNumber());
  return last ? inWords(last) : '';
}
