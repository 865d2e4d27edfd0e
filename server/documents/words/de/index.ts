/** Deutsch. */
import type { Words } from '..';
import { dayOf } from '../dates';
import { BUYING_DE } from './buying';
import { CHANGES_DE } from './changes';
import { INVOICE_DE } from './invoice';
import { OUTCOME_DE } from './outcome';
import { PAGES_DE } from './pages';
import { QUOTE_DE } from './quote';
import { SITE_DE } from './site';

const MONTHS = [
  'Januar',
  'Februar',
  'März',
  'April',
  'Mai',
  'Juni',
  'Juli',
  'August',
  'September',
  'Oktober',
  'November',
  'Dezember',
];

export const DE: Words = {
  date(date) {
    const found = dayOf(date);
    return found ? `${found.day}. ${MONTHS[found.month - 1]} ${found.year}` : date;
  },
  page: (number, of) => `Seite ${number} von ${of}`,
  quote: QUOTE_DE,
  invoice: INVOICE_DE,
  buying: BUYING_DE,
  site: SITE_DE,
  changes: CHANGES_DE,
  outcome: OUTCOME_DE,
  pages: PAGES_DE,
};
