/** What work is built of and how it stands, where it does not say. */
import { BOND_LINE, BRICK_LINE, EXPOSURE_LINE, MIX_LINE, THICK_LINE } from '../laid';
import { choice, type LineKind, line } from '../slots';

export const WORK_DEFAULTS: readonly LineKind[] = [
  BRICK_LINE,
  MIX_LINE,
  BOND_LINE,
  THICK_LINE,
  EXPOSURE_LINE,
  line(
    'left',
    [choice('end', 'stopped', 'toothed', 'butted')],
    'How the left end of a wall stops.',
    'left stopped',
  ),
  line(
    'right',
    [choice('end', 'stopped', 'toothed', 'butted')],
    'How the right end of a wall stops.',
    'right stopped',
  ),
  line(
    'stands',
    [choice('how', 'free', 'held', 'retaining')],
    'Whether a wall stands free, is held by a building, or holds back soil.',
    'stands free',
  ),
];
