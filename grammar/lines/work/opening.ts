/** Gaps in a wall, what spans them and what lies at their foot. */
import { NOTE } from '../said';
import {
  choice,
  either,
  line,
  lit,
  name,
  newName,
  number,
  optional,
  pieceMaterial,
  quantity,
  size,
  text,
  whole,
  word,
} from '../slots';
import { FIT } from './tops';

const RINGS = optional(lit('rings'), whole(number('rings')));

/** For what is laid in another brick than the wall’s own. Not after a number: “2 brick” is a length. */
const IN_BRICK = optional(lit('brick'), name('brick', 'brick'));

const HEAD = line(
  'head',
  [
    either(
      [choice('kind', 'soldier', 'brick-on-edge'), IN_BRICK],
      [choice('kind', 'segmental'), IN_BRICK, lit('rise'), quantity('rise', 'length'), RINGS],
      [choice('kind', 'semicircular'), IN_BRICK, RINGS],
    ),
  ],
  'What the brickwork over it begins with: a course of soldiers (bricks on end) or of bricks on edge, over the lintel where there is one; or a rough arch in rings half a brick deep, which springs from the height of the opening. In the wall’s own brick, or in the one that is named.',
  'head segmental rise 115 mm rings 2',
  { unless: 'the courses of the wall' },
);

const LINTEL = line(
  'lintel',
  [either([size('size', [2, 3], 'length')], [choice('kind', 'angle')]), optional(pieceMaterial())],
  'What carries the work above: how wide, how high and, where it is bought by length, how long; or a steel angle, whose leg lies in a bed joint. And which one is bought.',
  'lintel 100 x 65 mm',
  { unless: 'none' },
);

const OPENING_FIT = line(
  'fit',
  [word('run', 'run of an opening'), ...FIT.takes.slice(1)],
  'How something over or under the opening that does not work is made to: head and subsill (bricks that do not fill their length), head-height and lintel-height (no whole courses: cut), arch (joints that gape: its bricks cut to wedges, or joints as they come). A way out of a finding writes it.',
  'fit arch cut',
  { many: true },
);

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
        'How many courses high it is; under an arch, up to the springing.',
        'height 12 courses',
        {
          unless: 'to the top of the wall',
        },
      ),
      HEAD,
      LINTEL,
      line(
        'bearing',
        [quantity('bearing', 'length')],
        'How far the lintel reaches over each reveal.',
        'bearing 150 mm',
        { unless: 'the defaults’ bearing' },
      ),
      line(
        'centre',
        [pieceMaterial()],
        'The centre that its arch is turned on, bought or hired by the piece.',
        'centre arch-centre',
        { unless: 'one that the firm has' },
      ),
      line(
        'subsill',
        [choice('kind', 'brick-on-edge'), IN_BRICK],
        'Bricks on edge along its foot, between the reveals. They stand in the opening and take of its height.',
        'subsill brick-on-edge',
        { unless: 'none' },
      ),
      OPENING_FIT,
      NOTE,
    ],
  },
);
