/** What is put on the cost, and how days are charged. */
import { clock, type LineKind, line, lit, money, quantity } from '../slots';

export const PRICE_DEFAULTS: readonly LineKind[] = [
  line('overhead', [quantity('share', 'percent')], 'Overhead on cost.', 'overhead 0%'),
  line('profit', [quantity('share', 'percent')], 'Profit on cost and overhead.', 'profit 0%'),
  line('round', [money('to')], 'The price is rounded to a multiple of this.', 'round £1'),
  line('least', [money('least')], 'The least price.', 'least £0'),
];

export const DAY_DEFAULTS: readonly LineKind[] = [
  line('day', [quantity('hours', 'time')], 'A working day.', 'day 7.5 h'),
  line(
    'part-day',
    [quantity('days', 'day')],
    'Days are charged in whole multiples of this.',
    'part-day 0.5 day',
  ),
  line(
    'set-up',
    [quantity('time', 'time'), lit('per'), lit('day')],
    'Setting up of a morning.',
    'set-up 0 min per day',
  ),
  line(
    'clear-up',
    [quantity('time', 'time'), lit('per'), lit('day')],
    'Cleaning down of an evening.',
    'clear-up 0 min per day',
  ),
  line('start', [clock('at')], 'When the day starts.', 'start 08:00'),
];
