/** What an invoice says of its taxes: each row, which tax a line bears, and why there is none to pay. */
import { HUNDRED, roundTo } from '../../../shared/exact';
import { showTerm, showValue } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { fromAll, fromLines, fromTerms } from '../from';
import type { From, Part } from '../paper/model';
import type { InvoiceWords, QuoteWords } from '../words';
import type { Invoice, Tax, TaxGroup } from './types';

/** A row of tax: what it is, and on how much. */
export function taxSaid({ category, rate, base }: TaxGroup, job: Job, words: InvoiceWords): string {
  const { env } = job;
  const on = showValue(base, env.money.code, env);
  const name = taxName({ category, rate }, job);
  return category === 'S' || category === 'Z'
    ? words.taxAt(name, showValue(rate, '%', env), on)
    : words.noTax(name, on);
}

/** The line that says how it is taxed, and what is asked for. */
export function fromTax({ category, rate }: Tax, { price }: Job, asked: From | undefined): From {
  const of = price.taxes.find((t) => t.category === category && t.rate.value.eq(rate));
  return fromAll(fromLines(of?.line), fromTerms(of?.rate), asked);
}

function taxName({ category, rate }: Tax, { price }: Job): string {
  const of = price.taxes.find((t) => t.category === category && t.rate.value.eq(rate));
  return of?.name ?? price.taxName;
}

/** A stage, and a discount, is a row for each tax: of several alike each says which. */
export function rowSaid(
  called: string,
  { category, rate }: Tax,
  all: readonly string[],
  job: Job,
  words: InvoiceWords,
): string {
  if (all.filter((name) => name === called).length === 1) return called;
  const at = category === 'S' || category === 'Z' ? showValue(rate, '%', job.env) : undefined;
  return words.lineAt(called, taxName({ category, rate }, job), at);
}

/** Why there is no tax to pay: words that the law of the country asks for, and what the client owes himself. */
export function reasons(
  { taxes, digits }: Invoice,
  { env, price }: Job,
  words: QuoteWords,
): Part[] {
  const said = taxes.flatMap(({ category, reason, base }) => {
    const owing = price.taxes.filter(({ owed }) => owed);
    const [first] = owing;
    const same = owing.every(({ owed }) => owed!.rate.value.eq(first!.owed!.rate.value));
    if (category !== 'AE' || !first?.owed || !same) return reason ? [reason] : [];
    const { rate } = first.owed;
    const amount = roundTo(base.mul(rate.value).div(HUNDRED), digits);
    const told = showValue(amount, env.money.code, env);
    return [words.taxOwed(reason, first.name, showTerm(rate, env), told)];
  });
  const from = fromLines(...price.taxes.filter(({ reason }) => reason).map(({ line }) => line));
  return [...new Set(said)].map((text) => ({ part: 'words', text, from }));
}
