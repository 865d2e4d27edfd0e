/** What is bought: bricks, mixes and materials. */
import { GAUGE_LINE, JOINT_LINE } from './laid';
import { LOOK } from './look';
import { BULKING, MIX_LINES } from './mortar/mix';
import { SOURCE } from './said';
import {
  either,
  type LineKind,
  line,
  lit,
  money,
  name,
  newName,
  number,
  optional,
  quantity,
  share,
  size,
  text,
  whole,
  word,
} from './slots';
import { DENSITY, IS, MASS } from './weights';

const PRICE = line(
  'price',
  [
    money('money'),
    either([lit('each')], [lit('per'), number('per')], [lit('per'), word('pack', 'pack')]),
  ],
  'What it costs: each, per 1000, or per pack. Priced per pack it is bought in whole packs.',
  'price £0.92 each',
);

/** Whom it is bought from, as the buying list parts it. */
const MERCHANT = line(
  'merchant',
  [text('merchant')],
  'Whom it is bought from: the buying list has a part for each.',
  'merchant "Harbour Builders’ Merchants"',
);

export const BRICK: LineKind = line(
  'brick',
  [newName(), optional(text('title'))],
  'A brick or block.',
  'brick harwick-red "Harwick red facing"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'size',
        [size('size', [3], 'length')],
        'Work size: length, width, height.',
        'size 215 x 102.5 x 65 mm',
      ),
      line(
        'frog',
        [share('share')],
        'How much of its volume the frog is; laid frog up it fills with mortar.',
        'frog 7%',
        { unless: '0%' },
      ),
      JOINT_LINE,
      GAUGE_LINE,
      DENSITY,
      MASS,
      line(
        'tolerance',
        [either([name('class', 'tolerance')], [size('size', [3], 'length')])],
        'How far bricks may be from their work size: a class by its name, or length, width and height as the maker declares.',
        'tolerance T2',
        { unless: 'not known' },
      ),
      PRICE,
      MERCHANT,
      line('pack', [whole(number('pack'))], 'How many come in a pack.', 'pack 452'),
      ...LOOK,
      line('waste', [share('share')], 'Broken or turned away.', 'waste 5%', {
        unless: 'the defaults’ brick-waste',
      }),
    ],
  },
);

export const MIX: LineKind = line(
  'mix',
  [newName(), optional(text('title'))],
  'A mortar or concrete, by volume.',
  'mix general "Cement : lime : sand"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      ...MIX_LINES,
      MERCHANT,
      line('joint', [quantity('joint', 'length')], 'The joint it is laid at.', 'joint 10 mm'),
      line('waste', [share('share')], 'Lost or left over.', 'waste 10%', {
        unless: 'the defaults’ mortar-waste',
      }),
      line(
        'dry-volume',
        [number('factor')],
        'Volume of loose dry materials that make one volume of it.',
        'dry-volume 1.33',
        { unless: 'the defaults’ dry-volume' },
      ),
    ],
  },
);

export const MATERIAL: LineKind = line(
  'material',
  [newName(), optional(text('title'))],
  'Something a mix is made of, or that is bought by the piece.',
  'material cement',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'pack',
        [
          quantity('content', 'mass', 'volume'),
          word('pack', 'pack'),
          optional(lit('at'), money('price')),
        ],
        'How it is sold, and at what price. Of several packs with a price, the cheapest set that is enough is bought.',
        'pack 25 kg bag at £6.40',
        { many: true },
      ),
      line(
        'loose',
        [quantity('density', 'density')],
        'Bulk density as it is batched.',
        'loose 1440 kg/m3',
      ),
      MERCHANT,
      BULKING,
      DENSITY,
      MASS,
      IS,
      line(
        'size',
        [size('size', [3], 'length')],
        'Size of one that is laid, such as a tile: length, width, thickness.',
        'size 265 x 165 x 11 mm',
      ),
      line(
        'price',
        [
          money('money'),
          either([lit('each')], [lit('per'), word('pack', 'unit of weight or volume')]),
        ],
        'Price of one, or per kg, t, l or m3 bought loose. Where packs have a price too, the cheaper is bought.',
        'price £18.50 each',
      ),
    ],
  },
);
