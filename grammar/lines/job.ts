/** The job itself. */
import { NOTE } from './said';
import { code, date, type LineKind, line, optional, quantity, text, toFill, word } from './slots';
import { TAX } from './tax';

export const JOB: LineKind = line(
  'job',
  [optional(text('title'))],
  'The job: for whom, where, when.',
  'job "Orchard boundary wall"',
  {
    top: true,
    body: [
      line('ref', [code('ref')], 'Your reference for the job.', 'ref 26-041'),
      line('client', [toFill('client')], 'Who asked for the work.', 'client "P. Oakes"', {
        many: true,
      }),
      line('site', [toFill('site')], 'Where the work is.', 'site "Orchard Lane"', { many: true }),
      line('date', [date('date')], 'The day of the quote.', 'date 2026-03-02'),
      line('valid', [quantity('days', 'day')], 'How long the quote stands.', 'valid 30 days', {
        unless: 'the defaults’ valid',
      }),
      TAX,
      line(
        'currency',
        [word('currency', 'currency')],
        'The currency of every price in the job, by its ISO 4217 code.',
        'currency EUR',
        { unless: 'the defaults’ currency' },
      ),
      NOTE,
    ],
  },
);
