/**
 * What a client is told, and nothing else. Costs, rates, margins, quantities and the names that a file
 * uses for itself never enter this view, so nothing that prints it can let them out.
 */

import { type BlockFacts, defaultLine, factsOf } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import { firmFacts, languageOf } from '../letterhead';
import { usedWithErrors } from '../used';
import { daysLater, type QuoteWords, wordsFor } from '../words';
import { type Amounts, amounts, rounding } from './money';
import { type QuotedOption, quotedOptions } from './options';
import { replacedQuote } from './replaced';
import { alsoIncluded, type Included, type QuotedWork, quotedWorks } from './work';

export interface QuoteView extends Amounts {
  readonly title: string;
  /** Why this is not a quote yet, in words that give nothing away; nothing when it is one. */
  readonly draft: string | undefined;
  readonly client: readonly string[];
  readonly site: readonly string[];
  readonly ref: string;
  /** `2026-03-02`; empty where the job names none. */
  readonly date: string;
  /** `2026-04-01`; empty where no date is known. */
  readonly validUntil: string;
  readonly works: readonly QuotedWork[];
  /** What else the price holds, by its titles. */
  readonly also: readonly Included[];
  readonly notes: readonly string[];
  /** How the figures are rounded, in a sentence. */
  readonly rounding: string;
  readonly terms: readonly string[];
  /** What the client may choose besides. */
  readonly options: readonly QuotedOption[];
  /** `2026-03-02`: the day of the quote that this one takes the place of; empty where there is none. */
  readonly replaces: string;
  readonly size: 'A4' | 'Letter';
  /** BCP 47. */
  readonly lang: string;
}

export function quoteView(job: Job): QuoteView {
  const lang = languageOf(job);
  const { quote: words } = wordsFor(lang);
  const facts = jobFacts(job);
  const texts = (key: string) => facts?.lines(key).map((line) => line.word(key)) ?? [];
  const draft = draftOf(job, words);
  const date = facts?.line('date')?.word('date') ?? '';
  return {
    title: facts?.title || words.brickwork,
    draft,
    client: texts('client'),
    site: texts('site'),
    ref: facts?.line('ref')?.word('ref') ?? '',
    date,
    validUntil: validUntil(date, facts, job),
    works: quotedWorks(job, words),
    also: alsoIncluded(job),
    notes: facts?.lines('note').map((line) => line.word('text')) ?? [],
    ...amounts(job, draft !== undefined, words),
    rounding: rounding(job, words),
    options: quotedOptions(job, draft !== undefined, words),
    replaces: replacedQuote(job, date),
    terms:
      firmFacts(job)
        ?.lines('terms')
        .map((line) => line.word('text')) ?? [],
    size: job.env.imperial ? 'Letter' : 'A4',
    lang,
  };
}

function jobFacts(job: Job): BlockFacts | undefined {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  return block && factsOf(block, job.env);
}

/** An error can leave a whole line of work out, so a file with one is no more a quote than a gap makes it. */
function draftOf(job: Job, { why }: QuoteWords): string | undefined {
  const errors = job.findings.filter((f) => f.severity === 'error').length;
  if (errors) return why.errors;
  if (usedWithErrors(job).length) return why.usedErrors;
  if (job.price.total.gaps.length) return why.gaps;
  return job.works.length ? undefined : why.noWork;
}

/** The last day that the quote stands. */
function validUntil(date: string, facts: BlockFacts | undefined, job: Job): string {
  const line = facts?.line('valid') ?? defaultLine(job.env, 'valid');
  const days = line?.values.days;
  if (days?.kind !== 'quantity') return '';
  return daysLater(date, days.low.floor().toNumber()) ?? '';
}
