/** What stands out of the top of work. */
import { type LineKind, line, lit, number, pieceMaterial, quantity } from '../slots';

export const TOP_DEFAULTS: readonly LineKind[] = [
  line(
    'coping-overhang',
    [quantity('length', 'length')],
    'How far a cap or coping reaches over each face.',
    'coping-overhang 45 mm',
  ),
  line(
    'cap-step',
    [quantity('length', 'length')],
    'Caps are asked for in whole multiples of this.',
    'cap-step 5 mm',
  ),
  line(
    'corbels',
    [
      lit('height'),
      number('height'),
      lit('and'),
      lit('width'),
      number('width'),
      lit('and'),
      lit('wall'),
      number('wall'),
    ],
    'How far courses may be laid out: each no more than this share of the brick’s height and of its width, all of them together no more than this share of the wall’s thickness.',
    'corbels height 1/2 and width 1/3 and wall 1/2',
  ),
];

export const CREASING: LineKind = line(
  'creasing',
  [pieceMaterial(), quantity('courses', 'courses'), lit('out'), quantity('out', 'length')],
  'The tiles of a tile creasing, how many courses of them, and how far at least they stand out over each face.',
  'creasing creasing-tile 2 courses out 25 mm',
);
