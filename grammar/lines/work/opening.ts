/** Gaps in a wall. */
import { NOTE } from '../job';
import { choice, line, newName, optional, quantity, size, text } from '../slots';

export const OPENING = line(
  'opening',
  [newName(), optional(text('title'))],
  'A gap: a gateway to the top of the wall, or a window between two courses.',
  'opening gate',
  {
    many: true,
    body: [
      line(
        'from',
        [choice('side', 'left', 'right'), quantity('distance', 'length')],
        'Where it begins, from one end of the wall.',
        'from left 2.7 m',
      ),
      line(
        'width',
        [quantity('width', 'length')],
        'Clear width between the reveals.',
        'width 1022.5 mm',
      ),
      line('sill', [quantity('courses', 'courses')], 'Courses below it.', 'sill 6 courses', {
        unless: '0 courses',
      }),
      line(
        'height',
        [quantity('courses', 'courses')],
        'How many courses high it is.',
        'height 12 courses',
        {
          unless: 'to the top of the wall',
        },
      ),
      line(
        'lintel',
        [size('size', [2, 3], 'length')],
        'What carries the work above.',
        'lintel 100 x 65 mm',
        {
          later: 'lintels and their bearing',
        },
      ),
      NOTE,
    ],
  },
);
