/** Whether a length or a height works in bricks, and what may be done where it does not. */
import { choice, type LineKind, limits, line, list, number, quantity } from '../slots';

const WAYS = list('ways', ',', choice('way', 'joints', 'half-bond', 'length', 'cut', 'cap'));

export const FIT_DEFAULTS: readonly LineKind[] = [
  line(
    'joints-accepted',
    [limits('joints', 'length')],
    'Joints that anyone would accept.',
    'joints-accepted 8..13 mm',
  ),
  line(
    'beds-accepted',
    [limits('joints', 'length')],
    'Bed joints that anyone would accept.',
    'beds-accepted 8..13 mm',
  ),
  line(
    'cavities-accepted',
    [limits('cavity', 'length')],
    'Cavities between two skins that ties are made for.',
    'cavities-accepted 50..300 mm',
  ),
  line(
    'least-cut',
    [quantity('length', 'length')],
    'The shortest cut worth laying.',
    'least-cut 50 mm',
  ),
  line(
    'whole-worth',
    [quantity('length', 'length')],
    'How much further from the best joint whole bricks may be before an odd half brick is laid instead.',
    'whole-worth 0 mm',
  ),
  line(
    'ways',
    [WAYS],
    'Ways out of a length or a height that does not work, the most welcome first.',
    'ways joints, half-bond, length, cut, cap',
  ),
  line(
    'pier-ways',
    [WAYS],
    'The same on top of a pier, whose size is what its bricks make.',
    'pier-ways joints, half-bond, cut, cap, length',
  ),
  line(
    'joints-in-length',
    [number('joints')],
    'A brick that is bonded through a wall is two widths and a joint long; old ones up to so many joints.',
    'joints-in-length 2.5',
  ),
  line('kerf', [quantity('width', 'length')], 'What the saw takes.', 'kerf 3 mm'),
];
