/**
 * What a client is told, and nothing else. Costs, rates, margins, quantities and the names that a file
 * uses for itself never enter this view, so nothing that prints it can let them out.
 */

import type { Place } from '../../../shared/span';
import { recordOf } from '../../engine/life/record';
import { type BlockFacts, defaultLine, factsOf } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import { fromBlock, fromLines, fromOwn, ownFacts } from '../from';
import { firmFacts, languageOf } from '../letterhead';
import type { From } from '../paper/model';
import { usedWithErrors } from '../used';
import { daysLater, type QuoteWords, wordsFor } from '../words';
import { type Amounts, amounts, rounding, type Told } from './money';
import { type QuotedOption, quotedOptions } from './options';
import { replacedQuote } from './replaced';
import { alsoIncluded, type Included, type QuotedWork, quotedWorks } from './work';

export interface QuoteView extends Amounts {
  readonly title: string;
  /** Why this is not a quote yet, in words that give nothing away; nothing when it is one. */
  readonly draft: string | undefined;
  readonly client: readonly string[];
  readonly site: readonly string[];
  /** Where what it says of the job comes from. */
  readonly from: Readonly<
    Record<'title' | 'draft' | 'client' | 'site' | 'ref' | 'date' | 'valid' | 'replaces', From>
  >;
  readonly ref: string;
  /** `2026-03-02`; empty where the job names none. */
  readonly date: string;
  /** `2026-04-01`; empty where no date is known. */
  readonly validUntil: string;
  readonly works: readonly QuotedWork[];
  /** What else the price holds, by its titles. */
  readonly also: readonly Included[];
  readonly notes: readonly Told[];
  /** How the figures are rounded, in a sentence. */
  readonly rounding: string;
  readonly terms: readonly Told[];
  /** What the client may choose besides. */
  readonly options: readonly QuotedOption[];
  /** `2026-03-02`: the day of the quote that this one takes the place of; empty where there is none. */
  readonly replaces: string;
  readonly size: 'A4' | 'Letter';
  /** BCP 47. */
  readonly lang: string;
}

/** What a client may know of the job’s price: nothing of cost, overhead and profit is in it. */
export function quoteView(job: Job): QuoteView {
  const lang = languageOf(job);
  const { quote: words } = wordsFor(lang);
  const facts = jobFacts(job);
  // What is still to be filled in is left out.
  const texts = (key: string) => facts?.lines(key).flatMap((line) => line.word(key) || []) ?? [];
  const draft = draftOf(job, words);
  const date = facts?.line('date')?.word('date') ?? '';
  const replaces = replacedQuote(job, date);
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
    notes: toldIn(facts, 'note'),
    from: fromsOf(job, replaces),
    ...amounts(job, draft !== undefined, words),
    rounding: rounding(job, words),
    options: quotedOptions(job, draft !== undefined, words),
    replaces,
    terms: toldIn(firmFacts(job), 'terms'),
    size: job.env.imperial ? 'Letter' : 'A4',
    lang,
  };
}

function toldIn(facts: BlockFacts | undefined, key: string): Told[] {
  const lines = facts?.lines(key) ?? [];
  const told = lines.map((line) => ({ text: line.word('text'), from: fromLines(line) }));
  return told.filter(({ text }) => text);
}

function fromsOf(job: Job, replaces: string): QuoteView['from'] {
  const own = (key: string) => fromOwn(job, key);
  const valid = () => fromLines(ownFacts(job)?.line('valid') ?? defaultLine(job.env, 'valid'))();
  return {
    title: fromBlock(ownFacts(job)?.block),
    draft: () => whyDraft(job),
    client: own('client'),
    site: own('site'),
    ref: own('ref'),
    date: own('date'),
    valid,
    replaces: () => fromLines(recordOf(job).sent.findLast((of) => of.date === replaces)?.line)(),
  };
}

/** What keeps it from being a quote: the first error, else what the price lacks. */
function whyDraft({ findings, price }: Job): readonly Place[] {
  const error = findings.find(({ severity }) => severity === 'error');
  if (error) return [error.place];
  return price.total.gaps.flatMap(({ origin }) => (origin ? origin.block.place(origin.span) : []));
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
