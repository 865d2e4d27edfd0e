/** What work stands on and ends in: heights, the damp course, copings, caps, footings, and what decides a run. */
import { choice, either, line, lit, name, optional, quantity, size, word } from '../slots';

export const HEIGHT = line(
  'height',
  [either([quantity('courses', 'courses')], [quantity('height', 'length')])],
  'Height in courses, or as a length that is then tried in whole courses. Without the coping.',
  'height 18 courses',
);

export const DPC = line(
  'dpc',
  [name('brick', 'brick'), quantity('courses', 'courses')],
  'The lowest courses in another brick, which keeps damp out.',
  'dpc engineering 2 courses',
  { unless: 'none' },
);

export const COPING = line(
  'coping',
  [
    either(
      [choice('kind', 'brick-on-edge', 'none')],
      [choice('kind', 'brick-on-end', 'precast', 'tiles')],
    ),
  ],
  'What covers the top.',
  'coping brick-on-edge',
  { unless: 'none' },
);

export const CAP = line(
  'cap',
  [size('size', [2], 'length'), optional(name('material', 'material'))],
  'A cap on top of the pier, and which one is bought.',
  'cap 400 x 400 mm',
  { unless: 'none' },
);

export const FOOTING = line(
  'footing',
  [size('size', [2], 'length'), optional(name('mix', 'mix'))],
  'The concrete strip: how wide and how deep, and its mix. Under the whole length.',
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
