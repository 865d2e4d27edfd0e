/** Travel, other costs, the price, options, and the record of the job. */
import { DRIVING } from './hours';
import { NOTE, SOURCE } from './job';
import {
  choice,
  date,
  either,
  type LineKind,
  line,
  list,
  lit,
  money,
  name,
  newName,
  number,
  optional,
  quantity,
  share,
  size,
  text,
  word,
} from './slots';

export const TRAVEL: LineKind = line(
  'travel',
  [],
  'Getting there, every day of the work.',
  'travel',
  {
    top: true,
    body: [
      SOURCE,
      line(
        'run',
        [
          number('runs'),
          lit('x'),
          { ...quantity('distance', 'length'), most: 1e10 },
          lit('per'),
          lit('day'),
          lit('at'),
          money('rate'),
          lit('per'),
          word('unit', 'unit of distance'),
        ],
        'So many runs of so far a day, at so much a mile or kilometre.',
        'run 2 x 38 miles per day at £0.45 per mile',
        { many: true },
      ),
      DRIVING,
      line(
        'charge',
        [text('title'), money('money'), lit('per'), word('unit', 'day or job')],
        'A charge on the way: a zone, a toll, parking.',
        'charge "Clean-air zone" £12.50 per day',
        { many: true },
      ),
    ],
  },
);

export const COST: LineKind = line(
  'cost',
  [
    newName(),
    text('title'),
    either(
      [number('count'), lit('at'), money('each'), optional(lit('per'), word('per', 'day'))],
      [
        lit('at'),
        money('each'),
        lit('per'),
        either([quantity('content', 'mass', 'volume')], [word('unit', 'unit of weight or volume')]),
        lit('of'),
        choice('of', 'waste'),
      ],
    ),
  ],
  'Anything else that is paid for: hire, a skip, a permit. `per day` multiplies by the days of the work. `at £45 per t of waste` is paid for what repairs take away; `at £240 per 3 m3 of waste` for whole loads of so much.',
  'cost skip "Skip hire" 1 at £240',
  { top: true, many: true, body: [SOURCE, NOTE] },
);

export const PRICE: LineKind = line('price', [], 'From cost to price.', 'price', {
  top: true,
  body: [
    SOURCE,
    line(
      'overhead',
      [{ ...quantity('share', 'percent'), range: 'may' }],
      'What running the firm costs, on top of the cost of the job.',
      'overhead 10%',
      { unless: 'the defaults’ overhead' },
    ),
    line(
      'profit',
      [{ ...quantity('share', 'percent'), range: 'may' }],
      'On cost and overhead together.',
      'profit 20%',
      { unless: 'the defaults’ profit' },
    ),
    line('least', [money('least')], 'No job is done for less.', 'least £180', {
      unless: 'the defaults’ least',
    }),
    line(
      'round',
      [money('to')],
      'The price before tax is rounded to a multiple of this, half up.',
      'round £5',
      { unless: 'the defaults’ round' },
    ),
    line(
      'stage',
      [text('title'), either([share('share')], [money('amount')], [choice('rest', 'rest')])],
      'A part of the price and when it is paid.',
      'stage "Deposit" 25%',
      { many: true },
    ),
  ],
});

export const OPTION: LineKind = line(
  'option',
  [newName(), text('title')],
  'Another way to do a part of the work.',
  'option caps "Precast caps on both piers"',
  {
    top: true,
    many: true,
    later: 'options and what they do to the price',
    body: [
      line(
        'change',
        [
          name('what', 'wall', 'pier', 'repair'),
          word('line', 'line'),
          either(
            [size('size', [2, 3], 'length')],
            [quantity('value', 'length', 'courses', 'bricks', 'area', 'percent')],
            [word('word', 'word')],
          ),
        ],
        'A line of the job with another value.',
        'change hanging cap 400 x 400 mm',
        { many: true },
      ),
      NOTE,
    ],
  },
);

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
