/** Mending of work that stands. */
import { BOND_LINE, BRICK_LINE, GAUGE_LINE, JOINT_LINE, MIX_LINE, THICK_LINE } from '../../laid';
import { type LineKind, line, name, newName, optional, text } from '../../slots';
import { CORE, PIER_SIZE } from '../pier';
import { SITE, STANDS_IN } from '../site';
import { TOLD } from '../told';
import { FIT } from '../tops';
import { IN_PLACE } from './joints';
import { MATCHING } from './matching';
import { TAKEN_DOWN } from './rebuilt';
import { ON_TOP } from './tops';

const IN = line(
  'in',
  [name('wall', 'wall', 'pier'), optional(name('pier', 'pier'))],
  'The wall or pier it is in: its brick, bond, thickness and mix are taken. A pier of a wall is called by its own name; where several walls have one of that name, by its wall first.',
  'in north',
);

const SIZE = {
  ...PIER_SIZE,
  means: 'Of a pier that no file has: its size on plan, along its face and then across it.',
  unless: 'a wall, or the pier it is in',
};

export const REPAIR: LineKind = line(
  'repair',
  [newName(), optional(text('title'))],
  'Mending of work that stands.',
  'repair frost "Frost-damaged length by the gate"',
  {
    top: true,
    many: true,
    body: [
      IN,
      BRICK_LINE,
      MIX_LINE,
      BOND_LINE,
      THICK_LINE,
      SIZE,
      CORE,
      ...TAKEN_DOWN,
      ...IN_PLACE,
      ...ON_TOP,
      ...MATCHING,
      GAUGE_LINE,
      JOINT_LINE,
      STANDS_IN,
      ...SITE,
      FIT,
      ...TOLD,
    ],
  },
);
