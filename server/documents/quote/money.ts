/** The amounts of a quote, and how they are rounded. */
import { exact } from '../../../shared/exact';
import type { TaxGroup } from '../../engine/price/tax/taxes';
import { showTerm, showValue } from '../../engine/views/show';
import { counted, type Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { fromAll, fromLines, fromTerms } from '../from';
import type { From } from '../paper/model';
import type { QuoteWords, RoundedPart } from '../words';

export interface Amount {
  readonly label: string;
  /** For a reader; nothing while the price is not complete. */
  readonly text: string | undefined;
  /** Its exact value, where its text is told. */
  readonly value?: string;
  readonly from?: From;
}

export interface Amounts {
  /** The price before discounts and what comes off it; none where there are no discounts. */
  readonly off: readonly Amount[];
  readonly net: Amount;
  /** A row for each tax, and what makes up for a penny; none where there is no tax at all. */
  readonly taxes: readonly Amount[];
  readonly total: Amount;
  readonly stages: readonly Amount[];
  /** Why a tax is not charged, in the words for the paper. */
  readonly reasons: readonly Told[];
}

/** A sentence, and where it comes from. */
export interface Told {
  readonly text: string;
  readonly from?: From;
}

/** @param hidden no amount is told, as the price is not one yet */
export function amounts(job: Job, hidden: boolean, words: QuoteWords): Amounts {
  const { price, env } = job;
  const amount = (label: string, term: Term, from = fromTerms(term)): Amount => ({
    label,
    from,
    text: hidden ? undefined : showTerm(term, env),
    value: hidden || term.gaps.length ? undefined : term.value.toFixed(env.money.digits),
  });
  const taxes = taxRows(job, hidden, words).map((said) => amount(...said));
  const rest = price.rounding ? [amount(words.rounding, price.rounding)] : [];
  return {
    off: discounts(job, words).map((said) => amount(...said)),
    net: amount(words.beforeTax, price.price),
    taxes: [...taxes, ...rest],
    total: amount(taxes.length ? words.total : words.price, price.total),
    stages: staged(job, words).map((said) => amount(...said)),
    reasons: hidden ? [] : price.taxes.flatMap((tax) => reasonOf(tax, job, words)),
  };
}

type Said = readonly [string, Term, From?];

function discounts({ price, env }: Job, words: QuoteWords): Said[] {
  if (!price.discounts.length) return [];
  const less = price.discounts.map(({ title, rate, amount }): Said => {
    const label = words.discount(title, rate && showTerm(rate, env));
    const term = counted(title, amount.value.neg(), amount.unit);
    return [label, { ...term, gaps: amount.gaps }, fromTerms(amount)];
  });
  return [[words.beforeDiscounts, price.gross], ...less];
}

/** One rate is of all of the price; of several each says what it is of. */
function taxRows({ price, env }: Job, hidden: boolean, words: QuoteWords): Said[] {
  const { taxes } = price;
  if (taxes.length === 1) return taxes.filter(isCharged).map((tax) => only(tax));
  return taxes.map(({ category, name, rate, base, owed, tax, line }) => {
    // A base is an amount too, and is not told of a price that is none.
    const on = hidden ? '…' : showTerm(base, env);
    const from = fromTax(line, tax);
    if (category === 'E' || category === 'O') return [words.noTax(name, on), tax, from];
    return [words.taxOn(name, showTerm(owed?.rate ?? rate, env), on), tax, from];
  });

  function only({ name, rate, tax, line }: TaxGroup): Said {
    return [words.taxAt(name, showTerm(rate, env)), tax, fromTax(line, tax)];
  }
}

/** The line that says how it is taxed, and what it is on. */
function fromTax(line: TaxGroup['line'], tax: Term): From {
  return fromAll(fromLines(line), fromTerms(tax));
}

function isCharged({ category }: TaxGroup): boolean {
  return category === 'S';
}

function reasonOf({ reason, name, owed, line }: TaxGroup, { env }: Job, words: QuoteWords): Told[] {
  const from = fromLines(line);
  if (!owed) return reason ? [{ text: reason, from }] : [];
  const text = words.taxOwed(reason, name, showTerm(owed.rate, env), showTerm(owed.tax, env));
  return [{ text, from }];
}

function staged({ price, env }: Job, words: QuoteWords): Said[] {
  const { stages, retention } = price;
  const due = stages.map(
    (s): Said => [s.title, s.due, fromAll(fromLines(s.line), fromTerms(s.due))],
  );
  if (!retention) return due;
  const days = retention.days && showTerm(retention.days, env);
  return [
    ...due,
    [
      words.heldBack(days),
      retention.amount,
      fromAll(fromLines(retention.line), fromTerms(retention.amount)),
    ],
  ];
}

/** How the price and its parts are rounded, in a sentence. */
export function rounding({ env, price }: Job, words: QuoteWords): string {
  const least = showValue(exact(`1e-${env.money.digits}`), env.money.code, env);
  const to = price.roundings.find((r) => r.of === 'price')?.to;
  const coins = TOLD.filter((part) => price.roundings.some((r) => r.of === part));
  return words.rounded(to && showTerm(to, env), coins, price.taxName, least);
}

/** In the order in which they come about. */
const TOLD: readonly RoundedPart[] = ['discounts', 'parts', 'tax', 'stages', 'retention'];
