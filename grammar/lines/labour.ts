/** The gang and what its hours cost. */
import { DAY_LINES } from './hours';
import { MIXER } from './mortar/mix';
import { SOURCE } from './said';
import { counted, type LineKind, line, list, lit, money, quantity, word } from './slots';

export const LABOUR: LineKind = line(
  'labour',
  [],
  'Who works, at what cost to the firm.',
  'labour',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'gang',
        [list('gang', '+', counted('count', 'trade'))],
        'Who works together. The trade with the highest rate lays; order does not matter.',
        'gang 1 bricklayer + 0.5 labourer',
      ),
      line('day', [quantity('hours', 'time')], 'A working day.', 'day 7.5 h', {
        unless: 'the defaults’ day',
      }),
      line(
        'part-day',
        [quantity('days', 'day')],
        'Days are charged in whole multiples of this.',
        'part-day 0.5 day',
        { unless: 'the defaults’ part-day' },
      ),
      MIXER,
      ...DAY_LINES,
      line(
        'trade',
        [money('rate'), lit('per'), word('unit', 'h or day')],
        'A trade by its name, and what an hour of it costs. Any word may stand for the trade.',
        'bricklayer £27.50 per h',
        { open: true, many: true },
      ),
    ],
  },
);
