/** Which brick is bought: what it has to match, and what else might be bought. */
import {
  fixed,
  type LineKind,
  line,
  list,
  lit,
  name,
  optional,
  quantity,
  size,
  whole,
} from '../../slots';

const MEASURED = line(
  'measured',
  [
    size('size', [3], 'length'),
    optional(lit('of'), fixed(whole(quantity('of', 'bricks')), 'so many were measured')),
  ],
  'A brick that stands there: length, width and height, the mean of so many that were measured. Bricks that are bought are compared with it.',
  'measured 214 x 102 x 66 mm of 10 bricks',
  { unless: 'the size of the brick of the wall' },
);

const MATCH = line(
  'match',
  [name('brick', 'brick')],
  'What is bought where reused bricks fall short.',
  'match harwick-antique',
  { unless: 'the brick of the wall' },
);

const CANDIDATES = line(
  'candidates',
  [list('bricks', ',', name('brick', 'brick'))],
  'Bricks that might be bought: each is compared with what stands there, and they are ranked by the defaults’ match-order. The match line says which it is; the others may stay.',
  'candidates harwick-antique, weathered-multi, pennock-multi',
  { unless: 'none is compared' },
);

export const MATCHING: readonly LineKind[] = [MEASURED, CANDIDATES, MATCH];
