/** What a library holds about mortar: measures, yield models, classes, and which place wants which. */
import { SOURCE } from '../said';
import {
  choice,
  type LineKind,
  line,
  list,
  name,
  newName,
  number,
  optional,
  quantity,
  text,
} from '../slots';

export const MEASURES: LineKind = line(
  'measures',
  [],
  'What is held by the things that mortar is measured with. What goes into a batch is told in the first of them.',
  'measures',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'measure',
        [quantity('content', 'volume', 'mass')],
        'A measure by its name, and what it holds as it is used. Any word may stand for it; `bag` is for materials with no pack of that word.',
        'bucket 14 l',
        { open: true, many: true },
      ),
    ],
  },
);

export const YIELD_MODEL: LineKind = line(
  'yield-model',
  [newName(), optional(text('title'))],
  'A way to reckon how much mortar loose materials make. A mix is told how far it lies from each.',
  'yield-model sand-fills "Sand fills the volume"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'sand',
        [number('factor')],
        'Loose volumes of sand to one of mortar, whatever else goes in.',
        'sand 1.07',
      ),
      line(
        'all',
        [number('factor')],
        'Loose volumes of all materials to one of mortar.',
        'all 1.33',
      ),
    ],
  },
);

export const MORTAR_CLASS: LineKind = line(
  'mortar-class',
  [newName(), optional(text('title'))],
  'A class, designation or type of mortar: its strength, and the mixes that are taken to reach it.',
  'mortar-class M4 "Designation (iii)"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'strength',
        [quantity('strength', 'strength')],
        'Compressive strength: classes are ranked by it.',
        'strength 4 N/mm2',
      ),
      line(
        'mix',
        [
          list('parts', ',', choice('of', 'cement', 'lime', 'masonry-cement', 'sand'), {
            ...number('parts'),
            range: 'usual',
            limits: true,
          }),
        ],
        'A mix that reaches it, by parts from and to.',
        'mix cement 1, lime 1, sand 5..6',
        { many: true },
      ),
    ],
  },
);

const place = (key: string, means: string): LineKind =>
  line(
    key,
    [name('class', 'mortar-class'), optional(name('zone', 'zone'))],
    `${means}; with a zone, there alone.`,
    `${key} M4`,
    { many: true },
  );

export const LEAST_MORTAR: LineKind = line(
  'least-mortar',
  [],
  'The weakest mortar that each place of a wall wants, to last there.',
  'least-mortar',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      place('dpc', 'A damp-proof course of bricks'),
      place('coping', 'Bricks on edge or on end on top of a wall'),
      place('free-standing', 'A wall that stands free, open to the weather on both sides'),
      place('below-dpc', 'Courses below a damp-proof course, near the ground'),
      place('retaining', 'A wall that holds back soil'),
    ],
  },
);
