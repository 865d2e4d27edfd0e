/** What a library of a country holds beside bricks and mixes: bonds, pier plans, limits, currencies. */
import { SOURCE } from './said';
import {
  choice,
  either,
  type LineKind,
  line,
  list,
  lit,
  name,
  newName,
  number,
  optional,
  quantity,
  size,
  text,
  thickness,
} from './slots';

/** Where a row’s first unit begins: `from 3/4 brick`, or `centred` on the course below. */
const startOf = (row: string) =>
  optional(
    either([lit('from'), quantity(`${row}start`, 'bricks')], [choice(`${row}place`, 'centred')]),
  );

const unitsOf = (row: string) =>
  list(
    `${row}units`,
    ',',
    choice('unit', 'stretcher', 'header'),
    optional(either([number('times')], [choice('letter', 'n')])),
  );

/** The face of a course and, where the wall is thicker than a brick, what stands behind it. */
const ROWS = [
  unitsOf(''),
  startOf(''),
  optional(lit('core'), unitsOf('core-'), startOf('core-')),
  optional(lit('back'), unitsOf('back-'), startOf('back-')),
];

const COURSES = [
  line(
    'course',
    ROWS,
    'One course. A number after a unit repeats it; `n` is the number that the wall gives. `from` tells how far from a free end the first whole unit begins; what lies before it is closed by rule (a half by a header or half bat, three quarters by a header and a closer). `centred` puts the units half their own repeat from where those of the course below begin. In a wall thicker than a brick `core` and `back` tell what stands behind the face.',
    'course stretcher, header from 3/4 brick',
    { many: true },
  ),
  line(
    'courses',
    [either([number('times')], [choice('letter', 'n')]), ...ROWS],
    'Several courses alike; with `from`, every second one begins there.',
    'courses n stretcher from 1/2 brick',
    { many: true },
  ),
];

export const BOND: LineKind = line(
  'bond',
  [newName(), optional(text('title'))],
  'A bond: what the face of each course shows, from the lowest course up, over and over.',
  'bond flemish "Flemish bond"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'thick',
        [thickness('thick')],
        'A thickness it can be built in. Over one brick, the courses of that thickness stand under it.',
        'thick 1 brick',
        { many: true, body: COURSES },
      ),
      ...COURSES,
      line(
        'lap',
        [quantity('lap', 'bricks')],
        'How far a brick laps the one below.',
        'lap 1/4 brick',
      ),
      line('n', [number('n')], 'The number taken when a wall gives none.', 'n 3'),
    ],
  },
);

export const PIER_PLAN: LineKind = line(
  'pier-plan',
  [size('size', [2], 'bricks')],
  'What one course of a pier of this size is laid with; two lines for two alternate courses.',
  'pier-plan 1.5 x 1.5 bricks',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'course',
        [
          list(
            'pieces',
            ',',
            choice('piece', 'whole', 'half', 'three-quarter', 'closer'),
            number('count'),
          ),
        ],
        'The pieces of a course.',
        'course whole 4, half 1',
        { many: true },
      ),
    ],
  },
);

export const LIMIT: LineKind = line(
  'limit',
  [newName(), optional(text('title'))],
  'How high a wall that stands free may be, by thickness and exposure.',
  'limit free-standing "Free-standing walls"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'zone',
        [newName(), optional(text('title'))],
        'An exposure that the table knows.',
        'zone zone-1 "Sheltered"',
        { many: true },
      ),
      line(
        'allow',
        [
          name('zone', 'zone'),
          either([quantity('bricks', 'bricks')], [quantity('thick', 'length')]),
          quantity('height', 'length'),
        ],
        'The greatest height for a thickness there.',
        'allow zone-1 1 brick 1450 mm',
        { many: true },
      ),
      line(
        'nominal',
        [quantity('within', 'length')],
        'How far a wall may be from a thickness of the table, which counts its joint in: 8 in for 7 5/8.',
        'nominal 12 mm',
        { unless: 'the thickness as it is' },
      ),
      line(
        'advice',
        [text('text')],
        'What to do above it.',
        'advice "Ask a structural engineer."',
        { many: true },
      ),
    ],
  },
);

export const CURRENCIES: LineKind = line(
  'currencies',
  [],
  'Currencies, their digits and signs.',
  'currencies',
  {
    top: true,
    body: [
      SOURCE,
      line(
        'code',
        [number('digits'), optional(text('sign'))],
        'A currency by its ISO 4217 code: digits after the point, and its sign.',
        'GBP 2 "£"',
        { open: true, many: true },
      ),
    ],
  },
);
