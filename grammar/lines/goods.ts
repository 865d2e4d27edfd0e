/** Bricks, mixes, materials, and the people: what a firm's file holds. */

import { DAY_LINES } from './hours';
import { BRICK_LINE, GAUGE_LINE, JOINT_LINE, SOURCE } from './job';
import { LOOK } from './look';
import { BULKING, MIX_LINES, MIXER } from './mortar/mix';
import {
  counted,
  either,
  type LineKind,
  line,
  list,
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

export const LABOUR: LineKind = line(
  'labour',
  [],
  'Who works, at what cost to the firm.',
  'labour',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'gang',
        [list('gang', '+', counted('count', 'trade'))],
        'Who works together. The trade with the highest rate lays; order does not matter.',
        'gang 1 bricklayer + 0.5 labourer',
      ),
      line('day', [quantity('hours', 'time')], 'A working day.', 'day 7.5 h', {
        unless: 'the defaults’ day',
      }),
      line(
        'part-day',
        [quantity('days', 'day')],
        'Days are charged in whole multiples of this.',
        'part-day 0.5 day',
        { unless: 'the defaults’ part-day' },
      ),
      MIXER,
      ...DAY_LINES,
      line(
        'trade',
        [money('rate'), lit('per'), word('unit', 'h or day')],
        'A trade by its name, and what an hour of it costs. Any word may stand for the trade.',
        'bricklayer £27.50 per h',
        { open: true, many: true },
      ),
    ],
  },
);

const perHour = (key: string, what: string, example: string): LineKind =>
  line(
    key,
    [
      quantity('amount', 'bricks', 'area', 'length', 'volume', 'pieces', 'courses'),
      lit('per'),
      word('unit', 'h or day'),
    ],
    what,
    example,
  );

export const OUTPUT: LineKind = line(
  'output',
  [],
  'What one of the gang’s laying trade does in an hour or a day.',
  'output',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      perHour(
        'facework',
        'Bricks laid in a wall, or so much of its face or of its volume.',
        'facework 55 bricks per h',
      ),
      perHour('blockwork', 'Backing skins laid.', 'blockwork 1.2 m2 per h'),
      perHour('pier-work', 'Bricks laid in a pier.', 'pier-work 40 bricks per h'),
      perHour('coping', 'Bricks laid on edge.', 'coping 45 bricks per h'),
      perHour('cap', 'Caps bedded.', 'cap 3 pieces per h'),
      perHour('precast', 'Lengths of precast coping bedded.', 'precast 4 pieces per h'),
      perHour('tiles', 'Creasing tiles laid under a coping.', 'tiles 60 pieces per h'),
      perHour('head', 'Soldiers and bricks on edge laid over an opening.', 'head 30 bricks per h'),
      perHour(
        'subsill',
        'Bricks laid on edge at the foot of an opening.',
        'subsill 30 bricks per h',
      ),
      perHour('arch', 'Bricks turned in an arch.', 'arch 15 bricks per h'),
      perHour('centre', 'Centres for arches set up and struck.', 'centre 1 piece per h'),
      perHour('lintel', 'Lintels bedded.', 'lintel 2 pieces per h'),
      perHour('core', 'Concrete placed in the core of a pier.', 'core 0.5 m3 per h'),
      perHour('footing', 'Concrete dug for and placed.', 'footing 0.3 m3 per h'),
      perHour(
        'take-down',
        'Bricks taken down; of a wall, or so much of its face or of its volume.',
        'take-down 80 bricks per h',
      ),
      perHour('clean', 'Bricks cleaned for reuse.', 'clean 70 bricks per h'),
      perHour('cut-out', 'Single bricks cut out and replaced.', 'cut-out 5 bricks per h'),
      perHour('repoint', 'Joints raked out and pointed, by area of face.', 'repoint 1.1 m2 per h'),
      perHour(
        'repoint-joints',
        'Joints raked out and pointed, by their length.',
        'repoint-joints 6 m per h',
      ),
      perHour('rebed', 'Copings lifted, cleaned and bedded again, by length.', 'rebed 2 m per h'),
      perHour(
        'rebed-pieces',
        'Copings and caps lifted, cleaned and bedded again, by the piece.',
        'rebed-pieces 2 pieces per h',
      ),
      perHour(
        'replace',
        'Copings and caps taken off and new ones bedded.',
        'replace 2 pieces per h',
      ),
      perHour('stitch', 'Bars set in raked beds across a crack.', 'stitch 2 pieces per h'),
      perHour('make-good', 'Surfaces made good.', 'make-good 1 m2 per h'),
      perHour(
        'load-out',
        'Bricks bought, unloaded and stacked out where they are laid, by one of the gang.',
        'load-out 400 bricks per h',
      ),
    ],
  },
);

/** The same lines as those of {@link OUTPUT}: how much of each task one pair of hands keeps going. */
export const SERVING: LineKind = line(
  'serving',
  [],
  'How much of a task one who serves keeps going in an hour or a day: mixing, carrying, stacking. The slower of laying and serving sets the pace.',
  'serving',
  {
    top: true,
    many: true,
    body: OUTPUT.body!.map((kind) =>
      kind === SOURCE ? kind : { ...kind, means: `Served: ${lowered(kind.means)}` },
    ),
  },
);

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

export { BRICK_LINE };
