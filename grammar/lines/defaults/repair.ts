/** What repairs are reckoned by where a job says nothing: how deep, how heavy, how much of it is lost. */
import {
  choice,
  type LineKind,
  line,
  list,
  lit,
  number,
  pieceMaterial,
  quantity,
  share,
  text,
} from '../slots';

export const REPAIR_DEFAULTS: readonly LineKind[] = [
  line(
    'rake-depth',
    [number('times')],
    'How deep joints are raked for pointing, in widths of the joint.',
    'rake-depth 2',
  ),
  line(
    'cleaning-loss',
    [share('share')],
    'Of bricks that are cleaned for reuse, how many break or chip at it.',
    'cleaning-loss 5%',
  ),
  line(
    'waste-bulking',
    [quantity('share', 'percent')],
    'How much more room broken work takes up loose than it did standing.',
    'waste-bulking 50%',
  ),
  line(
    'mortar-density',
    [quantity('density', 'density')],
    'What set mortar weighs.',
    'mortar-density 2000 kg/m3',
  ),
  line(
    'crack-stitch',
    [
      pieceMaterial(),
      quantity('length', 'length'),
      lit('every'),
      quantity('apart', 'length'),
      lit('raked'),
      quantity('depth', 'length'),
    ],
    'The bars that a crack is stitched with, how long each is, how far apart along the crack, and how deep their beds are raked.',
    'crack-stitch stitch-bar 1 m every 450 mm raked 35 mm',
  ),
  line(
    'make-good',
    [quantity('thick', 'length')],
    'How thick a surface is made good, where its line does not say.',
    'make-good 15 mm',
  ),
  line(
    'match-order',
    [list('by', ',', choice('by', 'gauge', 'size', 'price'))],
    'What candidates for a match are ranked by, the weightiest first: whether they keep the gauge, how near their size is, what the shortfall costs.',
    'match-order gauge, size, price',
  ),
  line(
    'match-say',
    [text('say')],
    'What a client is told of every match.',
    'match-say "Colour is matched by eye."',
  ),
];
