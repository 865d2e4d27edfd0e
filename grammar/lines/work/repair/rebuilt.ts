/** What is taken down and built again, and what of it can be used again. */
import { either, type LineKind, line, lit, optional, ranged, whole } from '../../slots';

const REBUILD: LineKind = line(
  'rebuild',
  [
    either(
      [
        ranged('length', 'length'),
        optional(lit('x'), either([ranged('courses', 'courses')], [ranged('height', 'length')])),
      ],
      [ranged('courses', 'courses')],
      [whole(ranged('bricks', 'bricks'))],
    ),
  ],
  'Take down, clean and build again. Of a wall how long and how high: a length alone is as high as the wall it is in, courses alone are as long, its topmost ones, with its openings left out. Of a pier its topmost courses, or so much of its height. Or so many bricks.',
  'rebuild 1.35 m x 9 courses',
);

const SALVAGE: LineKind = line(
  'salvage',
  [either([{ ...ranged('share', 'percent'), most: 1 }], [whole(ranged('bricks', 'bricks'))])],
  'How much of what comes down is laid again once it is cleaned: a share of it, or so many bricks.',
  'salvage 60..75%',
  { unless: '0%' },
);

const HALVES: LineKind = line(
  'halves',
  [
    either(
      [{ ...ranged('share', 'percent'), most: 1 }],
      [whole({ ...ranged('count', 'number'), bare: true })],
    ),
  ],
  'How many of the bricks that come down leave a half worth keeping: a share of them, or so many halves. They are laid where no face shows, behind the face or in the core of a pier, and two of them save a brick.',
  'halves 10%',
  { unless: 'none' },
);

export const TAKEN_DOWN: readonly LineKind[] = [REBUILD, SALVAGE, HALVES];
