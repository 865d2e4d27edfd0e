/** Walls. */
import {
  BOND_LINE,
  BRICK_LINE,
  EXPOSURE_LINE,
  GAUGE_LINE,
  JOINT_LINE,
  MIX_LINE,
  NOTE,
  THICK_LINE,
} from '../job';
import { choice, type LineKind, line, newName, optional, quantity, text } from '../slots';
import { OPENING } from './opening';
import { WALL_PIER } from './pier';
import { COPING, DPC, FIT, FOOTING, HEIGHT } from './tops';

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
      line(
        'length',
        [quantity('length', 'length')],
        'Overall length, piers and openings included.',
        'length 7.4 m',
      ),
      HEIGHT,
      line(
        'left',
        [choice('end', 'stopped', 'toothed', 'butted')],
        'How the left end stops: free, bonded into standing work, or against something with a plain joint.',
        'left stopped',
        { unless: 'the defaults’ left' },
      ),
      line(
        'right',
        [choice('end', 'stopped', 'toothed', 'butted')],
        'How the right end stops.',
        'right toothed',
        { unless: 'the defaults’ right' },
      ),
      line(
        'stands',
        [choice('how', 'free', 'held', 'retaining')],
        'Whether it stands free, is held by a building, or holds back soil.',
        'stands free',
        { unless: 'the defaults’ stands' },
      ),
      JOINT_LINE,
      GAUGE_LINE,
      DPC,
      COPING,
      FOOTING,
      EXPOSURE_LINE,
      FIT,
      NOTE,
      OPENING,
      WALL_PIER,
    ],
  },
);
