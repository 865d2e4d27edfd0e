/** Piers in a wall, and piers that stand alone. */
import { BRICK_LINE, GAUGE_LINE, JOINT_LINE, MIX_LINE, NOTE } from '../job';
import {
  choice,
  either,
  type LineKind,
  line,
  name,
  newName,
  number,
  optional,
  size,
  text,
  whole,
} from '../slots';
import { CAP, COPING, DPC, FIT, HEIGHT } from './tops';

export const PIER_SIZE = line(
  'size',
  [size('size', [2], 'bricks', 'length')],
  'Size on plan: along the wall, then across it.',
  'size 1.5 x 1.5 bricks',
);

export const WALL_PIER = line(
  'pier',
  [newName(), optional(text('title'))],
  'A pier in the line of the wall, at an end or beside an opening.',
  'pier hanging',
  {
    many: true,
    body: [
      line(
        'at',
        [
          either(
            [name('opening', 'opening'), choice('side', 'left', 'right')],
            [choice('end', 'left', 'right')],
          ),
        ],
        'At an end of the wall, or on one side of an opening.',
        'at gate left',
      ),
      PIER_SIZE,
      HEIGHT,
      CAP,
      COPING,
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
      HEIGHT,
      JOINT_LINE,
      GAUGE_LINE,
      DPC,
      CAP,
      COPING,
      line(
        'footing',
        [size('size', [3], 'length'), optional(name('mix', 'mix'))],
        'The concrete pad: length, width, depth, and its mix.',
        'footing 600 x 600 x 300 mm',
        { unless: 'none' },
      ),
      FIT,
      NOTE,
    ],
  },
);
