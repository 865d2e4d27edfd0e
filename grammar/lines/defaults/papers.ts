/** How figures and papers are written, by whose law, and how long they run. */

import { choice, type LineKind, line, list, lit, quantity, share, text, word } from '../slots';
import { TAX } from '../tax';

export const PAPER_DEFAULTS: readonly LineKind[] = [
  line(
    'units',
    [choice('units', 'metric', 'imperial')],
    'The units that results are shown in.',
    'units metric',
  ),
  line(
    'figures',
    [text('sample')],
    'How numbers and money are written for a reader, by a sample.',
    'figures "£1,234.56"',
  ),
  line(
    'language',
    [choice('language', 'en-GB', 'en-US', 'de-DE')],
    'The language of papers, by its tag (BCP 47).',
    'language en-GB',
  ),
  line(
    'currency',
    [word('currency', 'currency')],
    'The currency, by its ISO 4217 code.',
    'currency GBP',
  ),
  line(
    'country',
    [word('country', 'country')],
    'The country of firms and clients who do not say, by its ISO 3166 code.',
    'country GB',
  ),
  TAX,
  line(
    'reverse-charge',
    [text('words')],
    'What a paper says where the client owes the tax to the state: the words that the country’s law asks for.',
    'reverse-charge "Reverse charge: customer to pay the VAT to HMRC"',
  ),
  line(
    'deduction',
    [
      word('scheme', 'scheme'),
      share('share'),
      lit('of'),
      choice('of', 'labour', 'price', 'total'),
      text('title'),
    ],
    'What a client of the country may have to keep back from payment and pay as the firm’s tax. A job says `deducted` and its word.',
    'deduction cis 20% of labour "CIS tax deducted"',
    { many: true },
  ),
  line(
    'money-words',
    [word('language', 'language'), list('words', ',', text('word'))],
    'What money is called in a sentence of a language. A copy for a partner firm leaves out a text that says one of them, by the lines of all files.',
    'money-words en "pound", "pounds", "quid"',
    { many: true },
  ),
  line('valid', [quantity('days', 'day')], 'How long a quote stands.', 'valid 30 days'),
  line(
    'payment',
    [quantity('days', 'day')],
    'How long after an invoice it is to be paid.',
    'payment 30 days',
  ),
];
