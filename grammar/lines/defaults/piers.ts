/** How piers stand, and what sizes they come in. */
import { type LineKind, limits, line, number, quantity } from '../slots';

export const PIER_DEFAULTS: readonly LineKind[] = [
  line(
    'pier-spacing',
    [quantity('length', 'length')],
    'How far apart the attached piers of a wall half a brick thick may stand, and from its ends.',
    'pier-spacing 3 m',
  ),
  line(
    'pier-projection',
    [quantity('length', 'length')],
    'How far an attached pier stands out of its wall, at the least.',
    'pier-projection 100 mm',
  ),
  line(
    'pier-below',
    [number('times')],
    'How far below the top of its wall an attached pier may stop, in thicknesses of the wall.',
    'pier-below 3',
  ),
  line(
    'pier-slender',
    [number('times')],
    'How high a pier that stands alone may be, in widths of its narrower side.',
    'pier-slender 8',
  ),
  line(
    'pier-nominal',
    [quantity('length', 'length')],
    'How far off what its bricks make the size of a pier may be said, as what is lost in its joints.',
    'pier-nominal 5 mm',
  ),
  line(
    'pier-widths',
    [limits('widths', 'bricks')],
    'How wide piers are built, by half bricks: those that are offered where a coping does not fit on one.',
    'pier-widths 1..2.5 bricks',
  ),
];
