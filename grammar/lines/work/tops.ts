/** What work stands on and ends in: heights, the damp course, copings, caps, footings, and what decides a run. */
import {
  choice,
  either,
  line,
  lit,
  name,
  number,
  optional,
  pieceMaterial,
  quantity,
  size,
  whole,
  word,
} from '../slots';

export const HEIGHT = line(
  'height',
  [either([quantity('courses', 'courses')], [quantity('height', 'length')])],
  'Height in courses, or as a length that is then tried in whole courses. Without the coping.',
  'height 18 courses',
);

const STEPS = [
  either(
    [
      choice('how', 'steps'),
      lit('at'),
      quantity('at', 'length'),
      choice('way', 'down', 'up'),
      quantity('courses', 'courses'),
    ],
    [
      choice('how', 'falls'),
      quantity('fall', 'length'),
      lit('to'),
      choice('side', 'left', 'right'),
    ],
  ),
];

export const TOP = line(
  'top',
  STEPS,
  'Where the top steps, so far from the left end: from there to the right it is so many courses lower or higher. The height is that at the left end. `falls` is a top that falls evenly; a finding offers the steps to lay it in.',
  'top steps at 4 m down 3 courses',
  { many: true, unless: 'a level top' },
);

export const GROUND = line(
  'ground',
  STEPS,
  'Where the ground and the footing step, so far from the left end, in whole courses: where the ground is lower the wall has so many courses more. `falls` is ground that falls evenly; a finding offers the steps to build it in.',
  'ground steps at 3.2 m down 2 courses',
  { many: true, unless: 'level ground' },
);

export const BAND = line(
  'band',
  [
    name('brick', 'brick'),
    lit('courses'),
    whole(number('first')),
    optional(lit('to'), whole(number('last'))),
  ],
  'Courses in another brick, through the whole of the wall and its piers, counted from the ground at the left end.',
  'band engineering courses 8 to 9',
  { many: true, unless: 'none' },
);

export const PLINTH = line(
  'plinth',
  [
    quantity('courses', 'courses'),
    lit('project'),
    quantity('project', 'bricks', 'length'),
    optional(choice('faces', 'front', 'both')),
    optional(lit('in'), name('brick', 'brick')),
  ],
  'The lowest courses thicker than the wall: how many, how far they stand out from the front or from both faces, and in which brick. So many half bricks thicker altogether, laid as stretchers. What throws water off its top is not counted with it.',
  'plinth 3 courses project 1/2 brick front',
  { unless: 'none' },
);

export const CORBEL = line(
  'corbel',
  [
    quantity('courses', 'courses'),
    lit('project'),
    quantity('project', 'length'),
    optional(lit('each')),
  ],
  'The topmost courses, each laid so much further out than the one below it. They are the same bricks, counted with the wall.',
  'corbel 2 courses project 20 mm each',
  { unless: 'none' },
);

/** What is laid in another mix than the work’s own. */
const IN_MIX = optional(lit('mix'), name('mix', 'mix'));

export const DPC = line(
  'dpc',
  [name('brick', 'brick'), quantity('courses', 'courses'), IN_MIX],
  'The lowest courses in another brick, which keeps damp out; with `mix`, laid in a mortar of their own.',
  'dpc engineering 2 courses',
  { unless: 'none' },
);

const ON_EDGE = [choice('kind', 'brick-on-edge', 'brick-on-end'), optional(name('brick', 'brick'))];

export const COPING = line(
  'coping',
  [
    either(
      ON_EDGE,
      [choice('kind', 'precast'), size('size', [2, 3], 'length'), optional(pieceMaterial())],
      [
        choice('kind', 'tiles'),
        optional(quantity('courses', 'courses')),
        optional(pieceMaterial()),
        optional(lit('under'), name('brick', 'brick')),
      ],
      [choice('kind', 'none')],
    ),
    IN_MIX,
  ],
  'What covers the top: bricks on edge or on end, and which; precast lengths (how long and how wide, and how high if it is known), with mortar joints, bought by the piece; or courses of creasing tiles, half lapped, and bricks on edge on them. With `mix`, laid in a mortar of its own.',
  'coping brick-on-edge',
  { unless: 'none' },
);

/** A pier is covered by bricks or by a cap. */
export const PIER_COPING = line(
  'coping',
  [either(ON_EDGE, [choice('kind', 'none')]), IN_MIX],
  'Bricks on edge or on end that cover the pier, and which; with `mix`, laid in a mortar of their own. What covers it in one piece is a `cap`.',
  'coping brick-on-edge',
  { unless: 'none' },
);

export const CAP = line(
  'cap',
  [size('size', [2, 3], 'length'), optional(pieceMaterial())],
  'A cap on top of the pier, how thick if it is known, and which one is bought.',
  'cap 400 x 400 mm',
  { unless: 'none' },
);

export const FOOTING = line(
  'footing',
  [size('size', [2], 'length'), optional(name('mix', 'mix'))],
  'The concrete strip: how wide and how deep, and its mix. Under the whole length; what it shares with the footing of a wall that it meets is counted once.',
  'footing 450 x 225 mm',
  { unless: 'none' },
);

export const FIT = line(
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
