/** What has happened to the job, day by day. */
import { date, type LineKind, line, list, money, name, optional, quantity, text } from './slots';

const amount = [date('date'), money('money')];

export const RECORD: LineKind = line('record', [], 'What has happened, day by day.', 'record', {
  top: true,
  later: 'the record: the price that was sent, and estimate against what happened',
  body: [
    line('sent', amount, 'The quote went out at this price.', 'sent 2026-03-02 £1,450.00', {
      many: true,
    }),
    line(
      'accepted',
      [date('date'), optional(list('options', '', name('option', 'option')))],
      'The client said yes, with these options.',
      'accepted 2026-03-05 caps',
      { many: true },
    ),
    line(
      'worked',
      [
        date('date'),
        quantity('people', 'people'),
        quantity('hours', 'time'),
        optional(quantity('bricks', 'bricks')),
      ],
      'A day on site: people, hours, bricks laid.',
      'worked 2026-03-09 2 people 7.5 h 410 bricks',
      { many: true },
    ),
    line(
      'spent',
      [...amount, optional(text('what'))],
      'Money spent.',
      'spent 2026-03-09 £212.40 "sand and cement"',
      { many: true },
    ),
    line('invoiced', amount, 'An invoice went out.', 'invoiced 2026-03-12 £1,450.00', {
      many: true,
    }),
    line('paid', amount, 'Money came in.', 'paid 2026-03-20 £362.50', { many: true }),
  ],
});
