/** Lines that a wall, a pier or a repair and the defaults share: what it is laid in, and how. */
import { line, name, number, optional, quantity, thickness } from './slots';

export const BRICK_LINE = line(
  'brick',
  [name('brick', 'brick')],
  'The brick it is built of.',
  'brick harwick-red',
  {
    unless: 'the defaults’ brick',
  },
);
export const MIX_LINE = line('mix', [name('mix', 'mix')], 'The mortar.', 'mix general', {
  unless: 'the defaults’ mix',
});
export const BOND_LINE = line(
  'bond',
  [name('bond', 'bond'), optional(number('n'))],
  'The bond, and for some bonds a number (how many stretcher courses to each header course).',
  'bond english-garden-wall 3',
  { unless: 'the defaults’ bond' },
);
export const THICK_LINE = line(
  'thick',
  [thickness('thick')],
  'Thickness in bricks: half a brick, one brick.',
  'thick 1 brick',
  { unless: 'the defaults’ thick' },
);
export const EXPOSURE_LINE = line(
  'exposure',
  [name('zone', 'zone')],
  'The wind zone or exposure, by the name the country’s height table gives it.',
  'exposure zone-2',
  { unless: 'the defaults’ exposure' },
);
export const JOINT_LINE = line(
  'joint',
  [quantity('joint', 'length')],
  'The upright joint.',
  'joint 10 mm',
  { unless: 'the brick’s joint, else the mix’s' },
);
export const GAUGE_LINE = line(
  'gauge',
  [quantity('courses', 'courses'), quantity('height', 'length')],
  'So many courses stand so high, measured: it sets the bed joint.',
  'gauge 4 courses 300 mm',
  { unless: 'the brick’s gauge, else the joint' },
);
