/** Lines of a mix: what goes into it, how it is bought ready, how long it can be worked. */
import {
  counted,
  either,
  type LineKind,
  line,
  list,
  lit,
  looseMaterial,
  money,
  name,
  number,
  optional,
  quantity,
  word,
} from '../slots';

const BATCH = line(
  'batch',
  [
    list(
      'batch',
      ',',
      either([quantity('amount', 'mass', 'volume')], [counted('count', 'measure')]),
      looseMaterial(),
    ),
  ],
  'Its materials as they are put into the mixer, in place of parts: by weight, by volume, by the bag of the material, or by a measure of the `measures`.',
  'batch 1 bag sand, 6 trowels cement',
);

const READY = line(
  'ready',
  [
    quantity('content', 'mass', 'volume'),
    word('pack', 'pack'),
    lit('makes'),
    quantity('yield', 'volume'),
    optional(lit('at'), money('price')),
  ],
  'Bought ready to use, dry in bags or wet: what a pack makes of it. Its parts then only tell what it is like.',
  'ready 25 kg bag makes 12.5 l at £6.10',
  { many: true },
);

const DOSE = line(
  'dose',
  [
    name('material', 'material'),
    quantity('amount', 'volume', 'mass'),
    lit('per'),
    quantity('per', 'volume', 'mass'),
    optional(name('of', 'material')),
  ],
  'An admixture: so much of it to so much of one of the materials, or to so much mortar where none is named.',
  'dose plasticiser 125 ml per 50 kg cement',
  { many: true },
);

export const MIX_LINES: readonly LineKind[] = [
  line(
    'parts',
    [list('parts', ',', looseMaterial(), number('parts'))],
    'Its materials and their parts by volume, dry and loose.',
    'parts cement 1, lime 1, sand 6',
  ),
  BATCH,
  READY,
  DOSE,
  line(
    'class',
    [name('class', 'mortar-class')],
    'Its strength class, designation or type, where it cannot be told from its parts.',
    'class M4',
    { unless: 'told from its parts' },
  ),
  line(
    'life',
    [quantity('time', 'time')],
    'How long it can be worked once it is mixed: no batch is larger than is laid in that time.',
    'life 2 h',
    { unless: 'the defaults’ working-life' },
  ),
  line(
    'yield',
    [name('model', 'yield-model')],
    'The yield model it is reckoned by, in place of the dry volume.',
    'yield sand-fills',
    { unless: 'its dry-volume, else the defaults’' },
  ),
];

export const BULKING = line(
  'bulking',
  [quantity('share', 'percent')],
  'How much more room it takes up damp, as it is measured out and sold, than dry.',
  'bulking 25%',
  { unless: '0%' },
);

/** Of the defaults. */
export const MORTAR_DEFAULTS: readonly LineKind[] = [
  line(
    'working-life',
    [quantity('time', 'time')],
    'How long mortar can be worked, for mixes that do not say.',
    'working-life 2 h',
  ),
  line(
    'mixer',
    [quantity('volume', 'volume')],
    'How much mortar is mixed at once, at the most, where no labour block says.',
    'mixer 90 l',
  ),
];

export const MIXER = line(
  'mixer',
  [quantity('volume', 'volume')],
  'How much mortar is mixed at once, at the most: what the mixer gives, or a barrow by hand.',
  'mixer 90 l',
  { unless: 'the defaults’ mixer' },
);
