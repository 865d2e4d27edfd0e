/** Other ways to do the work, or more of it, as a client chooses among them: in words, and with what each adds to the price. */
import type { Work } from '../../engine/brickwork/work';
import type { PricedOption } from '../../engine/life/priced';
import { wordOf } from '../../engine/resolve/book';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { fromBlock, fromTerms } from '../from';
import type { From } from '../paper/model';
import type { QuoteWords } from '../words';
import type { Amount } from './money';
import { saysOf, titleOf } from './work';

export interface QuotedOption {
  readonly title: string;
  /** What is done with it and not without, each piece of work under its title; then the firm’s notes. */
  readonly says: readonly string[];
  readonly notes: readonly string[];
  /** Tax in them: what it adds to the price, and the price of the whole job with it. */
  readonly more: Amount;
  readonly price: Amount;
  readonly from: From;
  /** Titles of those that cannot be taken with it. */
  readonly notWith: readonly string[];
}

/** None of a job that options were taken of: those are its work by now. */
export function quotedOptions(job: Job, hidden: boolean, words: QuoteWords): QuotedOption[] {
  if (job.taken.size) return [];
  const all = job.options.priced;
  const titles = new Map(all.map((each, i) => [each.name, titleIn(each, i, words)]));
  return all.map((each) => {
    const title = titles.get(each.name)!;
    return {
      title,
      says: saidWith(each, job, words),
      notes: each.notes,
      more: amount(title, each.more.total, hidden || brokenBy(each, job), job, true),
      price: amount(title, each.price.total, hidden || brokenBy(each, job), job),
      from: fromBlock(each.block),
      notWith: each.excludes.flatMap((name) => titles.get(name) ?? []),
    };
  });
}

/** A name without a title is the file’s own. */
function titleIn({ block }: PricedOption, i: number, words: QuoteWords): string {
  return wordOf(block.read.heading?.values.title) || words.optionCalled(i + 1);
}

/** An option that brings errors up has no price either. */
function brokenBy(option: PricedOption, job: Job): boolean {
  const errorsOf = (of: Job) => of.findings.filter((f) => f.severity === 'error').length;
  return errorsOf(option.job) > errorsOf(job);
}

function amount(label: string, term: Term, hidden: boolean, { env }: Job, signed = false): Amount {
  if (hidden || term.gaps.length) return { label, text: undefined };
  const plus = signed && term.value.gt(0) ? '+' : '';
  return {
    label,
    text: `${plus}${showTerm(term, env)}`,
    from: fromTerms(term),
    value: term.value.toFixed(env.money.digits),
  };
}

/** Sentences that the job without it does not say. */
function saidWith({ job: other }: PricedOption, job: Job, words: QuoteWords): string[] {
  return other.works.flatMap((work) => {
    const before = job.works.find((each) => same(each, work));
    const said = before ? [...saysOf(before, job), ...before.notes] : [];
    const fresh = [...saysOf(work, other), ...work.notes].filter((text) => !said.includes(text));
    const title = titleOf(work, other.works, words);
    return fresh.map((text) => (other.works.length > 1 ? words.atWork(title, text) : text));
  });
}

function same(a: Work, b: Work): boolean {
  return a.kind === b.kind && a.name === b.name;
}
