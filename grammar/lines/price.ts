/** Travel, other costs, and the price. */
import { DRIVING } from './hours';
import { IN_OPTION } from './option';
import { NOTE, SOURCE } from './said';
import {
  choice,
  either,
  type LineKind,
  line,
  lit,
  type MoneySlot,
  money,
  newName,
  number,
  optional,
  type QuantitySlot,
  quantity,
  share,
  text,
  word,
} from './slots';
import { OWN_TAX } from './tax';

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
  { top: true, many: true, body: [SOURCE, NOTE, OWN_TAX, IN_OPTION] },
);

/** A percentage that may not be known exactly. */
const SHARE: QuantitySlot = quantity('share', 'percent');

const MARKED: readonly LineKind[] = [
  line(
    'contingency',
    [SHARE, optional(text('title'))],
    'For what cannot be foreseen: on cost. Overhead and profit are reckoned on both.',
    'contingency 5% "What the old footings hold"',
    { unless: 'none' },
  ),
  line(
    'overhead',
    [SHARE],
    'What running the firm costs, on top of the cost of the job.',
    'overhead 10%',
    { unless: 'the defaults’ overhead' },
  ),
  line(
    'profit',
    [SHARE],
    'A mark-up: on cost, contingency and overhead together. It is not a margin, which is of the price.',
    'profit 20%',
    { unless: 'the defaults’ profit' },
  ),
  line(
    'margin',
    [SHARE],
    'Profit as a part of the price before tax, discounts and rounding: 20% of the price is 25% on cost. It stands in the place of `profit`.',
    'margin 20%',
    { unless: 'profit' },
  ),
  line(
    'least',
    [money('least')],
    'No job is done for less before tax; discounts come off it.',
    'least £180',
    { unless: 'the defaults’ least' },
  ),
  line(
    'round',
    [money('to')],
    'The price before tax and discounts is rounded to a multiple of this, half up.',
    'round £5',
    { unless: 'the defaults’ round' },
  ),
];

const TAKEN_OFF: readonly LineKind[] = [
  line(
    'discount',
    [
      either(
        [{ ...share('share'), range: 'may' } as QuantitySlot],
        [{ ...money('amount'), range: 'may' } as MoneySlot],
      ),
      optional(text('title')),
    ],
    'Taken off the price before tax, and shown on paper.',
    'discount 5% "For a second job"',
    { many: true },
  ),
  line(
    'agreed',
    [money('price'), optional(lit('with'), choice('with', 'tax'))],
    'The price is agreed: before tax, or `with tax`. It is worked backwards: what it leaves, what it earns an hour, and what it would have been.',
    'agreed £1,400.00',
  ),
  line(
    'deducted',
    [
      either(
        [word('scheme', 'scheme')],
        [share('share'), lit('of'), choice('of', 'labour', 'price', 'total'), text('title')],
      ),
    ],
    'Kept back by the client as the firm’s tax: a scheme of the country by its word, or a share of `labour` (the price before tax, without what materials and other costs cost), of the `price` before tax, or of the `total`. It does not change the price.',
    'deducted 20% of labour "Tax deducted at source"',
    { many: true },
  ),
];

const STAGED: readonly LineKind[] = [
  line(
    'stage',
    [text('title'), either([share('share')], [money('amount')], [choice('rest', 'rest')])],
    'A part of the price and when it is paid.',
    'stage "Deposit" 25%',
    { many: true },
  ),
  line(
    'retention',
    [share('share'), optional(lit('for'), quantity('days', 'day'))],
    'Held back of each stage until so long after the work is done.',
    'retention 5% for 180 days',
  ),
];

export const PRICE: LineKind = line('price', [], 'From cost to price.', 'price', {
  top: true,
  body: [SOURCE, ...MARKED, ...TAKEN_OFF, ...STAGED],
});
