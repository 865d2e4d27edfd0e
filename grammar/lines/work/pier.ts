/** Piers in a wall, and piers that stand alone. */
import { BRICK_LINE, GAUGE_LINE, JOINT_LINE, MIX_LINE } from '../laid';
import { NOTE } from '../said';
import {
  choice,
  either,
  fixed,
  type LineKind,
  line,
  name,
  newName,
  number,
  optional,
  quantity,
  size,
  text,
  whole,
} from '../slots';
import { BATS } from './bats';
import { SITE } from './site';
import { TOLD } from './told';
import { CAP, DPC, FIT, HEIGHT, PIER_COPING } from './tops';

export const PIER_SIZE = line(
  'size',
  [
    fixed(
      size('size', [2], 'bricks', 'length'),
      'a pier has one size, and another is another pier',
    ),
  ],
  'Size on plan: along the wall, then across it.',
  'size 1.5 x 1.5 bricks',
);

export const CORE = line(
  'core',
  [
    either(
      [choice('fill', 'concrete'), optional(name('mix', 'mix'))],
      [choice('fill', 'bricks', 'halves', 'bats', 'hollow')],
    ),
  ],
  'What is inside, where no face shows it: the faces are then closed with whole bricks round it. `halves` are half bats, `bats` broken bricks that are to hand and bought for nothing, `concrete` is filled as the courses rise, `hollow` is left open.',
  'core halves',
  { unless: 'bonded through, by the pier-plan of its size' },
);

export const WALL_PIER = line(
  'pier',
  [newName(), optional(text('title'))],
  'A pier of the wall: at an end, beside an opening or between. It stands in the line of the wall, which butts against it; with `projects` it is attached, and bonded into the wall.',
  'pier hanging',
  {
    many: true,
    body: [
      line(
        'at',
        [
          either(
            [name('opening', 'opening'), choice('side', 'left', 'right')],
            [choice('end', 'left', 'right'), optional(quantity('distance', 'length'))],
          ),
        ],
        'At an end of the wall, on one side of an opening, or so far from an end to its nearer side.',
        'at left 2.4 m',
      ),
      PIER_SIZE,
      line(
        'projects',
        [choice('side', 'front', 'back', 'both')],
        'An attached pier: what its size is deeper than the wall stands out on this side. It is bonded into the wall course by course.',
        'projects back',
        { unless: 'in the line of the wall' },
      ),
      CORE,
      HEIGHT,
      CAP,
      PIER_COPING,
      FIT,
      NOTE,
    ],
  },
);

export const PIER: LineKind = line(
  'pier',
  [newName(), optional(text('title'))],
  'A pier that stands alone, or several alike.',
  'pier gate "Gate piers"',
  {
    top: true,
    many: true,
    body: [
      line('number', [whole(number('number'))], 'How many alike.', 'number 2', { unless: '1' }),
      BRICK_LINE,
      MIX_LINE,
      PIER_SIZE,
      CORE,
      HEIGHT,
      JOINT_LINE,
      GAUGE_LINE,
      DPC,
      CAP,
      PIER_COPING,
      line(
        'footing',
        [size('size', [3], 'length'), optional(name('mix', 'mix'))],
        'The concrete pad: length, width, depth, and its mix.',
        'footing 600 x 600 x 300 mm',
        { unless: 'none' },
      ),
      ...SITE,
      BATS,
      FIT,
      ...TOLD,
    ],
  },
);
