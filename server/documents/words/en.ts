/** English, as it is written in Britain. */
import type { QuoteWords, Words } from '.';
import { BUYING_EN } from './buying';
import { CHANGES_EN } from './changes';
import { dayOf } from './dates';
import { INVOICE_EN } from './en-invoice';
import { OUTCOME_EN } from './outcome';
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

const quote: QuoteWords = {
  title: 'Quote',
  draft: 'Draft',
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
  rounded(step, tax, stages, least, discounted) {
    const cents = [tax, stages ? 'stages' : undefined].filter(Boolean).join(' and ');
    const parts = [
      step && `the price before ${discounted ? 'discounts' : 'tax'} to the nearest ${step}`,
      cents && `${cents} to the nearest ${least}`,
    ].filter(Boolean);
    return parts.length ? `Rounded: ${parts.join(', ')}, halves up.` : '';
  },
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
};
