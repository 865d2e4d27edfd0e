/** What papers say, by language. Whole sentences: other grammars put their parts in another order. */
import type { BuyingWords } from './buying';
import type { ChangesWords } from './changes';
import { DE } from './de';
import { EN } from './en';
import { EN_US } from './en-us';
import type { InvoiceWords } from './invoice';
import type { OutcomeWords } from './outcome';
import type { PagesWords } from './pages';
import type { SiteWords } from './site';

export type { BuyingWords } from './buying';
export type { ChangesWords } from './changes';
export type { CompareWords } from './compare';
export { daysLater } from './dates';
export type { InvoiceWords } from './invoice';
export type { JobsWords } from './jobs';
export type { OutcomeWords } from './outcome';
export type { CutsWords, DayWords, MatchWords, MeasureWords, MortarWords } from './pages';
export type { PriceWords } from './price';
export type { RecordedKind, RecordWords } from './record';
export type { SiteWords } from './site';

/** The words of the language itself, whatever the paper. */
export interface Words {
  /** `2 March 2026`; other texts stay as they are. */
  date(date: string): string;
  page(number: number, of: number): string;
  readonly quote: QuoteWords;
  readonly invoice: InvoiceWords;
  readonly buying: BuyingWords;
  readonly site: SiteWords;
  readonly changes: ChangesWords;
  readonly outcome: OutcomeWords;
  readonly pages: PagesWords;
}

export type RoundedPart = 'discounts' | 'tax' | 'parts' | 'stages' | 'retention';

export interface QuoteWords {
  readonly title: string;
  readonly draft: string;
  /** Of one that takes the place of another; and which, by its day in words. */
  readonly revised: string;
  replaces(date: string): string;
  /** Of a job without a title. */
  readonly brickwork: string;
  readonly notAQuote: string;
  /** @param why a sentence of {@link why} */
  nothingOffered(why: string): string;
  readonly why: {
    readonly errors: string;
    readonly usedErrors: string;
    readonly gaps: string;
    readonly noWork: string;
  };
  readonly facts: {
    readonly client: string;
    readonly site: string;
    readonly ref: string;
    readonly date: string;
    readonly validUntil: string;
  };
  readonly work: string;
  readonly also: string;
  /** A piece of work without a title, by its kind; `number` where there are several. */
  workCalled(kind: string, number: number | undefined): string;
  readonly price: string;
  readonly stages: string;
  readonly terms: string;
  readonly what: string;
  readonly when: string;
  readonly amount: string;
  readonly beforeTax: string;
  readonly total: string;
  readonly notComplete: string;
  taxAt(name: string, rate: string): string;
  /** Of one rate among several: what it is on. */
  taxOn(name: string, rate: string, base: string): string;
  noTax(name: string, base: string): string;
  /** What the client owes the tax office himself, and why. */
  taxOwed(reason: string, name: string, rate: string, amount: string): string;
  readonly beforeDiscounts: string;
  discount(title: string, rate: string | undefined): string;
  /** What makes up for a penny in an agreed price. */
  readonly rounding: string;
  heldBack(days: string | undefined): string;
  taxNumber(tax: string, number: string): string;
  /** How the amounts are rounded; nothing where none is. */
  rounded(
    step: string | undefined,
    /** What is rounded to the least coin. */
    coins: readonly RoundedPart[],
    tax: string,
    least: string,
  ): string;
  /** What the client may choose besides. */
  readonly options: string;
  /** An option without a title. */
  optionCalled(number: number): string;
  /** A sentence of one piece of work among several. */
  atWork(title: string, says: string): string;
  readonly option: string;
  readonly more: string;
  readonly priceWith: string;
  /** The first row of that table. */
  readonly asQuoted: string;
  notWith(titles: string): string;
  madeWith(version: string): string;
  logo(firm: string): string;
}

const LANGUAGES: Readonly<Record<string, Words>> = { en: EN, 'en-US': EN_US, de: DE };

/** By a BCP 47 tag: that very language, else the language of it, else English. */
export function wordsFor(lang: string): Words {
  const known = (tag: string) => (Object.hasOwn(LANGUAGES, tag) ? LANGUAGES[tag] : undefined);
  return known(lang) ?? known(lang.split('-')[0]!) ?? EN;
}
