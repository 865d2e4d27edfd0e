/** What has happened to the job, day by day. */
import {
  choice,
  code,
  date,
  either,
  type LineKind,
  line,
  list,
  lit,
  money,
  name,
  number,
  optional,
  quantity,
  text,
  word,
} from './slots';

const amount = [date('date'), money('money')];

const WAS = line(
  'was',
  [
    code('figure'),
    either(
      [money('money')],
      [quantity('value', 'time', 'day', 'bricks', 'pieces', 'area', 'length', 'volume', 'mass')],
      [number('value')],
    ),
  ],
  'What a figure was on that day, by its id: `perpend record` writes these, so that later it can be told what has moved.',
  'was job.cost £1,020.00',
  { many: true },
);

const fixes = { many: true, inColumn: true, body: [WAS] };

export const RECORD: LineKind = line('record', [], 'What has happened, day by day.', 'record', {
  top: true,
  body: [
    line(
      'sent',
      amount,
      'The quote went out at this price, tax in it. It is told when the job later comes to another price.',
      'sent 2026-03-02 £1,450.00',
      fixes,
    ),
    line(
      'accepted',
      [
        date('date'),
        optional(list('options', '', name('option', 'option'))),
        optional(money('money')),
      ],
      'The client said yes, with these options; and at what price, tax in it.',
      'accepted 2026-03-05 caps £1,570.00',
      fixes,
    ),
    line(
      'lost',
      [date('date'), optional(text('why'))],
      'The client said no, and why.',
      'lost 2026-03-05 "Another firm was cheaper"',
    ),
    line(
      'found',
      [date('date'), text('what')],
      'Something turned up: why the quote is revised. It stands in the note of what has changed since the price was sent.',
      'found 2026-03-06 "The footing stops short of the pier."',
      { many: true },
    ),
    line(
      'worked',
      [
        date('date'),
        quantity('people', 'people'),
        quantity('hours', 'time'),
        optional(word('task', 'task')),
        optional(quantity('amount', 'bricks', 'area', 'length', 'pieces')),
      ],
      'Work on site: how many people, hours of each of them, at which task, and how much of it was done. The tasks are those of the output block.',
      'worked 2026-03-09 2 people 7.5 h facework 410 bricks',
      { many: true },
    ),
    line(
      'spent',
      [
        ...amount,
        optional(text('what')),
        optional(lit('for'), choice('for', 'materials', 'labour', 'travel', 'others')),
      ],
      'Money spent, before tax: on what, and for which part of the cost. Without `for` it is for materials.',
      'spent 2026-03-09 £212.40 "sand and cement" for materials',
      { many: true },
    ),
    line(
      'invoiced',
      [...amount, optional(lit('as'), code('number')), optional(text('what'))],
      'An invoice went out: for how much, tax in it, its number, and for what.',
      'invoiced 2026-03-12 £362.50 as 26-041-1 "Deposit"',
      { many: true },
    ),
    line(
      'paid',
      [...amount, optional(lit('deducted'), money('deducted')), optional(text('what'))],
      'Money came in; with `deducted`, what the client kept back of it and paid to the tax office.',
      'paid 2026-03-20 £362.50',
      { many: true },
    ),
    line(
      'retained',
      [...amount, optional(lit('until'), date('until'))],
      'So much of what was invoiced is held back, and until when: it is not owed before it is released.',
      'retained 2026-03-20 £72.50 until 2026-09-16',
      { many: true },
    ),
    line(
      'released',
      amount,
      'So much of what was held back is owed from this day on.',
      'released 2026-09-16 £72.50',
      { many: true },
    ),
  ],
});
