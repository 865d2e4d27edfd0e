/** Single bricks, joints, indents and cracks of work that stands. */
import {
  either,
  type LineKind,
  line,
  lit,
  optional,
  quantity,
  ranged,
  text,
  whole,
} from '../../slots';

const CUT_OUT = line(
  'cut-out',
  [whole(ranged('bricks', 'bricks'))],
  'Single bricks cut out and replaced.',
  'cut-out 3 bricks',
  { unless: 'none' },
);

const REPOINT = line(
  'repoint',
  [
    either([ranged('area', 'area')], [ranged('joints', 'length')]),
    optional(lit('raked'), quantity('depth', 'length')),
  ],
  'Joints raked out and pointed: the area of face, or the length of joints, and how deep.',
  'repoint 2.4 m2 raked 20 mm',
  { many: true, unless: 'none; the depth is the defaults’ rake-depth' },
);

const TOOTH_IN = line(
  'tooth-in',
  [ranged('courses', 'courses')],
  'New work bonded into an end that was not left toothed: an indent is cut for every second of so many courses, and half a brick of the new work runs into each.',
  'tooth-in 9 courses',
  { many: true, unless: 'none' },
);

const STITCH = line(
  'stitch',
  [ranged('length', 'length')],
  'A crack of such a length stitched: bars laid across it in raked bed joints, as the defaults’ crack-stitch says.',
  'stitch 1.8 m',
  { many: true, unless: 'none' },
);

const MAKE_GOOD = line(
  'make-good',
  [ranged('area', 'area'), optional(quantity('thick', 'length'), lit('thick')), text('what')],
  'A surface made good in the mix of the repair: how much, how thick, and what it is.',
  'make-good 0.5 m2 15 mm thick "Render to the reveal"',
  { many: true, unless: 'none; the thickness is the defaults’ make-good' },
);

export const IN_PLACE: readonly LineKind[] = [CUT_OUT, REPOINT, TOOTH_IN, STITCH, MAKE_GOOD];
