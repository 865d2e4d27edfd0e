/** When a gang works, and what of its day goes on other things than the work. */
import { clock, type LineKind, line, lit, quantity } from './slots';

const SET_UP = line(
  'set-up',
  [quantity('time', 'time'), lit('per'), lit('day')],
  'Setting up of a morning: tools out, mixer, lines, boards.',
  'set-up 30 min per day',
  { unless: 'the defaults’ set-up' },
);

const CLEAR_UP = line(
  'clear-up',
  [quantity('time', 'time'), lit('per'), lit('day')],
  'Cleaning down of an evening: mixer washed, work covered, site swept.',
  'clear-up 30 min per day',
  { unless: 'the defaults’ clear-up' },
);

/** Lines of `labour` that make the timetable of a day. */
export const DAY_LINES: readonly LineKind[] = [
  SET_UP,
  CLEAR_UP,
  line('start', [clock('at')], 'When the day starts.', 'start 08:00', {
    unless: 'the defaults’ start',
  }),
  line(
    'break',
    [quantity('time', 'time'), lit('at'), clock('at')],
    'A break that is not paid, and when it is taken.',
    'break 30 min at 12:30',
    { many: true, unless: 'no breaks in the timetable' },
  ),
];

export const DRIVING = line(
  'time',
  [quantity('time', 'time'), lit('per'), lit('day')],
  'Driving there and back that is part of the paid day.',
  'time 40 min per day',
  { unless: 'none: driving is the gang’s own time' },
);
