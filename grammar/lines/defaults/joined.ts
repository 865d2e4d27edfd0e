/** What parts work, and what ties it to other work. */
import { type LineKind, line, lit, optional, pieceMaterial, quantity, size } from '../slots';

export const WALL_TIES: LineKind = line(
  'wall-ties',
  [
    pieceMaterial(),
    size('spacing', [2], 'length'),
    optional(lit('reveals'), quantity('reveals', 'length')),
  ],
  'The ties between two skins: how far apart along the wall and in height, and how far apart up the reveal of an opening.',
  'wall-ties wall-tie 900 x 450 mm reveals 300 mm',
);

export const MOVEMENT_DEFAULTS: readonly LineKind[] = [
  line(
    'movement-spacing',
    [
      quantity('spacing', 'length'),
      optional(lit('free'), quantity('free', 'length')),
      optional(lit('corner'), quantity('corner', 'length')),
    ],
    'The longest wall without a movement joint; a wall that stands free; and from a corner to the first joint.',
    'movement-spacing 12 m free 6 m corner 6 m',
  ),
  line(
    'movement-width',
    [quantity('width', 'length')],
    'How wide a movement joint is.',
    'movement-width 10 mm',
  ),
  line(
    'movement-ties',
    [pieceMaterial(), quantity('apart', 'length')],
    'The ties across a movement joint, and how far apart in height.',
    'movement-ties movement-tie 300 mm',
  ),
  line(
    'movement-filler',
    [pieceMaterial()],
    'What a movement joint is filled with.',
    'movement-filler joint-filler',
  ),
];

export const MEETING_DEFAULTS: readonly LineKind[] = [
  line(
    'tee-ties',
    [pieceMaterial(), quantity('apart', 'length')],
    'The ties from a wall into the face of another that it meets, and how far apart in height.',
    'tee-ties starter-tie 300 mm',
  ),
  line(
    'block-courses',
    [quantity('courses', 'courses')],
    'Courses to a block where a wall is block-bonded into standing work.',
    'block-courses 3 courses',
  ),
];
