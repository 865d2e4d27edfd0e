/** Travel, other costs, and the price. */
import { DRIVING } from './hours';
import { NOTE, SOURCE } from './job';
import {
  choice,
  either,
  type LineKind,
  line,
  lit,
  money,
  newName,
  number,
  optional,
  quantity,
  share,
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
