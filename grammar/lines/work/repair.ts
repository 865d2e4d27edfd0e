/** Mending of work that stands. */
import { BOND_LINE, BRICK_LINE, GAUGE_LINE, JOINT_LINE, MIX_LINE, NOTE, THICK_LINE } from '../job';
import {
  either,
  type LineKind,
  line,
  lit,
  name,
  newName,
  optional,
  quantity,
  ranged,
  text,
  whole,
} from '../slots';
import { FIT } from './tops';

export const REPAIR: LineKind = line(
  'repair',
  [newName(), optional(text('title'))],
  'Mending of work that stands.',
  'repair frost "Frost-damaged length by the gate"',
  {
    top: true,
    many: true,
    body: [
      line(
        'in',
        [name('wall', 'wall')],
        'The wall it is in: its brick, bond, thickness and mix are taken.',
        'in north',
      ),
      BRICK_LINE,
      MIX_LINE,
      BOND_LINE,
      THICK_LINE,
      line(
        'rebuild',
        [
          quantity('length', 'length'),
          lit('x'),
          either([quantity('courses', 'courses')], [quantity('height', 'length')]),
        ],
        'Take down, clean and build again: how long, how high.',
        'rebuild 1.35 m x 9 courses',
      ),
      line(
        'salvage',
        [{ ...ranged('share', 'percent'), most: 1 }],
        'How much of what comes down can be laid again.',
        'salvage 60..75%',
        { unless: '0%' },
      ),
      line(
        'cut-out',
        [whole(ranged('bricks', 'bricks'))],
        'Single bricks cut out and replaced.',
        'cut-out 3 bricks',
        { unless: 'none' },
      ),
      line(
        'repoint',
        [ranged('area', 'area'), optional(lit('raked'), quantity('depth', 'length'))],
        'Joints raked out and pointed: the area of wall face, and how deep.',
        'repoint 2.4 m2 raked 20 mm',
        { unless: 'none' },
      ),
      line(
        'recope',
        [ranged('length', 'length')],
        'Brick-on-edge coping taken off and laid again.',
        'recope 1.35 m',
        { unless: 'none' },
      ),
      line(
        'match',
        [name('brick', 'brick')],
        'What is bought where reused bricks fall short.',
        'match harwick-antique',
        { unless: 'the brick of the wall' },
      ),
      GAUGE_LINE,
      JOINT_LINE,
      FIT,
      NOTE,
    ],
  },
);
