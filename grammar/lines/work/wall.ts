/** Walls. */
import {
  BOND_LINE,
  BRICK_LINE,
  EXPOSURE_LINE,
  GAUGE_LINE,
  JOINT_LINE,
  MIX_LINE,
  THICK_LINE,
} from '../laid';
import { choice, type LineKind, line, newName, optional, quantity, text } from '../slots';
import { BACKING } from './backing';
import { BATS } from './bats';
import { LEFT, MOVEMENT_JOINT, RIGHT } from './ends';
import { OPENING } from './opening';
import { WALL_PIER } from './pier';
import { SITE } from './site';
import { TOLD } from './told';
import { BAND, COPING, CORBEL, DPC, FIT, FOOTING, GROUND, HEIGHT, PLINTH, TOP } from './tops';

export const WALL: LineKind = line(
  'wall',
  [newName(), optional(text('title'))],
  'A straight wall.',
  'wall north "North boundary"',
  {
    top: true,
    many: true,
    body: [
      BRICK_LINE,
      MIX_LINE,
      BOND_LINE,
      THICK_LINE,
      BACKING,
      line(
        'length',
        [quantity('length', 'length')],
        'Overall length, piers and openings included.',
        'length 7.4 m',
      ),
      HEIGHT,
      LEFT,
      RIGHT,
      MOVEMENT_JOINT,
      line(
        'stands',
        [choice('how', 'free', 'held', 'retaining')],
        'Whether it stands free, is held by a building, or holds back soil.',
        'stands free',
        { unless: 'the defaults’ stands' },
      ),
      JOINT_LINE,
      GAUGE_LINE,
      TOP,
      GROUND,
      DPC,
      BAND,
      PLINTH,
      CORBEL,
      COPING,
      FOOTING,
      EXPOSURE_LINE,
      ...SITE,
      BATS,
      FIT,
      ...TOLD,
      OPENING,
      WALL_PIER,
    ],
  },
);
