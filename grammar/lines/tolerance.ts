/** How far bricks may be from their work size, as a standard's class gives it. */
import { SOURCE } from './said';
import { type LineKind, line, lit, newName, number, optional, quantity, text } from './slots';

export const TOLERANCE: LineKind = line(
  'tolerance',
  [newName(), optional(text('title'))],
  'A class of size tolerance: how far the mean of some bricks may be from their work size.',
  'tolerance T2 "EN 771-1, category T2"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'root',
        [number('factor')],
        'So many times the root of the size, both in mm, to a whole mm.',
        'root 0.25',
      ),
      line(
        'at-least',
        [quantity('least', 'length')],
        'However small the size, no less than this.',
        'at-least 2 mm',
      ),
      line(
        'up-to',
        [quantity('size', 'length'), lit('within'), quantity('within', 'length')],
        'Sizes up to this may be so far off. The lines go from the smallest size to the largest.',
        'up-to 3 in within 1/16 in',
        { many: true },
      ),
      line(
        'range',
        [number('factor')],
        'How far apart the largest and the smallest of a delivery may be: so many times the root of the size, in mm.',
        'range 0.30',
      ),
    ],
  },
);
