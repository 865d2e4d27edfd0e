/** English, as it is written in Britain. */
import type { QuoteWords, Words } from '.';
import { BUYING_EN } from './buying';
import { CHANGES_EN } from './changes';
import { dayOf } from './dates';
import { INVOICE_EN } from './en-invoice';
import { OUTCOME_EN } from './outcome';
import { PAGES_EN } from './pages';
import { SITE_EN } from './site';

export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

const KINDS: Readonly<Record<string, string>> = { wall: 'Wall', pier: 'Pier', repair: 'Repair' };

const ROUNDED = {
  discounts: 'discounts',
  parts: 'what each rate is on',
  stages: 'stages',
  retention: 'what is held back',
};

function listed(names: readonly string[]): string {
  return names.length > 1
    ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
    : (names[0] ?? '');
}

const quote: QuoteWords = {
  title: 'Quote',
  draft: 'Draft',
  revised: 'Revised quote',
  replaces: (date) => `It takes the place of our quote of ${date}.`,
  brickwork: 'Brickwork',
  notAQuote: 'NOT A QUOTE.',
  nothingOffered: (why) => `${why} No amount on this page is offered.`,
  why: {
    errors: 'The job file still has errors, so the price may be wrong.',
    usedErrors: 'A file that the job uses has errors, so the price may be wrong.',
    gaps: 'Parts of the price are still to be worked out.',
    noWork: 'No work is described yet.',
  },
  facts: {
    client: 'For',
    site: 'Site',
    ref: 'Reference',
    date: 'Date',
    validUntil: 'Valid until',
  },
  work: 'What will be done',
  also: 'Also included',
  workCalled(kind, number) {
    const name = KINDS[kind] ?? 'Work';
    return number === undefined ? name : `${name} ${number}`;
  },
  price: 'Price',
  stages: 'Payment in stages',
  terms: 'Terms',
  what: 'What',
  when: 'When',
  amount: 'Amount',
  beforeTax: 'Price before tax',
  total: 'Total',
  notComplete: 'not complete',
  taxAt: (name, rate) => `${name} at ${rate}`,
  taxOn: (name, rate, base) => `${name} at ${rate} on ${base}`,
  noTax: (name, base) => `No ${name} on ${base}`,
  taxOwed: (reason, name, rate, amount) =>
    `${reason ? `${reason}. ` : ''}${name} at ${rate}, ${amount}, is not charged here: you pay it to the tax office.`,
  beforeDiscounts: 'Price before discounts',
  discount: (title, rate) => (rate ? `${title}, ${rate}` : title),
  rounding: 'Rounding',
  heldBack: (days) =>
    days ? `Held back, and paid ${days} after the work is done` : 'Held back until it is released',
  taxNumber: (tax, number) => `${tax} number ${number}`,
  rounded(step, coins, tax, least) {
    const called = { ...ROUNDED, tax };
    const cents = listed(coins.map((part) => called[part]));
    const before = coins.includes('discounts') ? 'discounts' : 'tax';
    const parts = [
      step && `the price before ${before} to the nearest ${step}`,
      cents && `${cents} to the nearest ${least}`,
    ].filter(Boolean);
    return parts.length ? `Rounded: ${parts.join(', ')}, halves up.` : '';
  },
  options: 'You can also choose',
  optionCalled: (number) => `Option ${number}`,
  atWork: (title, says) => `${title}: ${says}`,
  option: 'Choice',
  more: 'Difference',
  priceWith: 'Price with it',
  asQuoted: 'As quoted above',
  notWith: (titles) => `Not together with: ${titles}.`,
  madeWith: (version) => `Made with Perpend ${version}.`,
  logo: (firm) => `The sign of ${firm}`,
};

export const EN: Words = {
  date(date) {
    const found = dayOf(date);
    return found ? `${found.day} ${MONTHS[found.month - 1]} ${found.year}` : date;
  },
  page: (number, of) => `Page ${number} of ${of}`,
  quote,
  invoice: INVOICE_EN,
  buying: BUYING_EN,
  site: SITE_EN,
  changes: CHANGES_EN,
  outcome: OUTCOME_EN,
  pages: PAGES_EN,
};
