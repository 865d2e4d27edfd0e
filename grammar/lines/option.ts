/** Another way to do a part of the work. */
import { NOTE } from './job';
import { either, type LineKind, line, name, newName, quantity, size, text, word } from './slots';

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
