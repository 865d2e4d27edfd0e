/** What is built and mended: walls with their openings and piers, piers that stand alone, repairs. */
import {
  BOND_LINE,
  BRICK_LINE,
  EXPOSURE_LINE,
  GAUGE_LINE,
  JOINT_LINE,
  MIX_LINE,
  NOTE,
  THICK_LINE,
} from './job';
import {
  choice,
  either,
  type LineKind,
  line,
  lit,
  name,
  newName,
  number,
  optional,
  quantity,
  ranged,
  size,
  text,
  whole,
  word,
} from './slots';

const HEIGHT = line(
  'height',
  [either([quantity('courses', 'courses')], [quantity('height', 'length')])],
  'Height in courses, or as a length that is then tried in whole courses. Without the coping.',
  'height 18 courses',
);
const DPC = line(
  'dpc',
  [name('brick', 'brick'), quantity('courses', 'courses')],
  'The lowest courses in another brick, which keeps damp out.',
  'dpc engineering 2 courses',
  { unless: 'none' },
);
const COPING = line(
  'coping',
  [
    either(
      [choice('kind', 'brick-on-edge', 'none')],
      [choice('kind', 'brick-on-end', 'precast', 'tiles')],
    ),
  ],
  'What covers the top.',
  'coping brick-on-edge',
  { unless: 'none' },
);
const CAP = line(
  'cap',
  [size('size', [2], 'length'), optional(name('material', 'material'))],
  'A cap on top of the pier, and which one is bought.',
  'cap 400 x 400 mm',
  { unless: 'none' },
);
const FOOTING = line(
  'footing',
  [size('size', [2], 'length'), optional(name('mix', 'mix'))],
  'The concrete strip: how wide and how deep, and its mix. Under the whole length.',
  'footing 450 x 225 mm',
  { unless: 'none' },
);
const FIT = line(
  'fit',
  [
    word('run', 'run'),
    either(
      [choice('how', 'joints', 'half-bond')],
      [
        choice('how', 'cut'),
        optional(quantity('cut', 'length')),
        optional(lit('at'), choice('where', 'left', 'right', 'middle')),
      ],
    ),
  ],
  'How a run that does not work in whole bricks is made to: joints opened or closed, broken bond, or a cut and where. A way out of a finding writes it. Runs are named as the findings name them: coping, height, and run-1, run-2, … for the stretches of a wall, counted from the left, those under a window too.',
  'fit run-1 cut 75 mm at left',
  { many: true },
);
const PIER_SIZE = line(
  'size',
  [size('size', [2], 'bricks', 'length')],
  'Size on plan: along the wall, then across it.',
  'size 1.5 x 1.5 bricks',
);

const OPENING = line(
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

const WALL_PIER = line(
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

export const WALL: LineKind = line(
  'wall',
  [newName(), optional(text('title'))],
  'A straight wall.',
  'wall north "North boundary"',
  {
    top: true,
    many: true,
    body: [
      BRICK_LINE,
      MIX_LINE,
      BOND_LINE,
      THICK_LINE,
      line(
        'length',
        [quantity('length', 'length')],
        'Overall length, piers and openings included.',
        'length 7.4 m',
      ),
      HEIGHT,
      line(
        'left',
        [choice('end', 'stopped', 'toothed', 'butted')],
        'How the left end stops: free, bonded into standing work, or against something with a plain joint.',
        'left stopped',
        { unless: 'the defaults’ left' },
      ),
      line(
        'right',
        [choice('end', 'stopped', 'toothed', 'butted')],
        'How the right end stops.',
        'right toothed',
        { unless: 'the defaults’ right' },
      ),
      line(
        'stands',
        [choice('how', 'free', 'held', 'retaining')],
        'Whether it stands free, is held by a building, or holds back soil.',
        'stands free',
        { unless: 'the defaults’ stands' },
      ),
      JOINT_LINE,
      GAUGE_LINE,
      DPC,
      COPING,
      FOOTING,
      EXPOSURE_LINE,
      FIT,
      NOTE,
      OPENING,
      WALL_PIER,
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

export const REPAIR: LineKind = line(
  'repair',
  [newName(), optional(text('title'))],
  'Mending of work that stands.',
  'repair frost "Frost-damaged length by the gate"',
  {
    top: true,
    many: true,
    body: [
      line(
        'in',
        [name('wall', 'wall')],
        'The wall it is in: its brick, bond, thickness and mix are taken.',
        'in north',
      ),
      BRICK_LINE,
      MIX_LINE,
      BOND_LINE,
      THICK_LINE,
      line(
        'rebuild',
        [
          quantity('length', 'length'),
          lit('x'),
          either([quantity('courses', 'courses')], [quantity('height', 'length')]),
        ],
        'Take down, clean and build again: how long, how high.',
        'rebuild 1.35 m x 9 courses',
      ),
      line(
        'salvage',
        [{ ...ranged('share', 'percent'), most: 1 }],
        'How much of what comes down can be laid again.',
        'salvage 60..75%',
        { unless: '0%' },
      ),
      line(
        'cut-out',
        [whole(ranged('bricks', 'bricks'))],
        'Single bricks cut out and replaced.',
        'cut-out 3 bricks',
        { unless: 'none' },
      ),
      line(
        'repoint',
        [ranged('area', 'area'), optional(lit('raked'), quantity('depth', 'length'))],
        'Joints raked out and pointed: the area of wall face, and how deep.',
        'repoint 2.4 m2 raked 20 mm',
        { unless: 'none' },
      ),
      line(
        'recope',
        [ranged('length', 'length')],
        'Brick-on-edge coping taken off and laid again.',
        'recope 1.35 m',
        { unless: 'none' },
      ),
      line(
        'match',
        [name('brick', 'brick')],
        'What is bought where reused bricks fall short.',
        'match harwick-antique',
        { unless: 'the brick of the wall' },
      ),
      GAUGE_LINE,
      JOINT_LINE,
      NOTE,
    ],
  },
);
