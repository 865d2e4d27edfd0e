/** What things weigh: for what is lifted by hand, and what is carted away. */
import { choice, line, quantity } from './slots';

export const DENSITY = line(
  'density',
  [quantity('density', 'density')],
  'What it weighs by its outside measures, holes and frogs counted in.',
  'density 1900 kg/m3',
  { unless: 'the defaults’ brick-density or precast-density' },
);

export const MASS = line(
  'mass',
  [quantity('mass', 'mass')],
  'What one of them weighs.',
  'mass 27 kg',
  {
    unless: 'its size times its density',
  },
);

export const IS = line(
  'is',
  [choice('is', 'cement', 'lime', 'sand', 'ready-mixed')],
  'What it is, where its name does not end in that word: cautions and classes of mortar go by it.',
  'is cement',
);

export const DENSITIES = [
  line(
    'brick-density',
    [quantity('density', 'density')],
    'What bricks weigh that do not say it themselves, and brickwork with its mortar.',
    'brick-density 1900 kg/m3',
  ),
  line(
    'precast-density',
    [quantity('density', 'density')],
    'What caps, copings and lintels weigh that do not say it themselves.',
    'precast-density 2400 kg/m3',
  ),
];
