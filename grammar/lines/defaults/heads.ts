/** What carries the work over an opening. */
import { type LineKind, limits, line, lit, optional, quantity, share } from '../slots';

export const HEAD_DEFAULTS: readonly LineKind[] = [
  line(
    'bearing',
    [quantity('bearing', 'length'), optional(lit('to'), quantity('span', 'length'))],
    'How far a lintel reaches over each reveal, at the least; with `to`, over openings up to so wide.',
    'bearing 100 mm to 1.2 m',
    { many: true },
  ),
  line(
    'lintel-overhang',
    [quantity('length', 'length')],
    'How much of a wall’s thickness may hang over its lintels, at the most.',
    'lintel-overhang 25 mm',
  ),
  line(
    'head-span',
    [quantity('span', 'length')],
    'The widest opening whose lintel or arch nobody is told to have designed.',
    'head-span 1.8 m',
  ),
  line(
    'arch-joints',
    [limits('joints', 'length')],
    'Joints of a rough arch: at the soffit no less, at the back no more.',
    'arch-joints 5..20 mm',
  ),
  line(
    'arch-rise',
    [share('share')],
    'How much of its span a segmental arch rises, at the least.',
    'arch-rise 12.5%',
  ),
  line(
    'arch-depth',
    [share('share')],
    'How much of its span an arch is deep, at the least.',
    'arch-depth 8%',
  ),
];
