/** The job itself, the files it uses, and what holds unless a line says otherwise. */
import { FIRM_DEFAULTS } from './firm-defaults';
import { MORTAR_DEFAULTS } from './mortar/mix';
import { PRACTICE_DEFAULTS } from './practice';
import { REPAIR_DEFAULTS } from './repair-defaults';
import {
  choice,
  clock,
  code,
  date,
  either,
  type LineKind,
  limits,
  line,
  list,
  lit,
  money,
  name,
  number,
  optional,
  quantity,
  share,
  size,
  text,
  thickness,
  whole,
  word,
} from './slots';
import { DENSITIES } from './weights';

export const NOTE: LineKind = line(
  'note',
  [text('text')],
  'A sentence for the client: it stands in the quote under this part of the work.',
  'note "The old coping is kept for the owner."',
  { many: true },
);

/** The client’s papers say what the engine says of the work, or this. */
export const SAYS: LineKind = line(
  'says',
  [text('text')],
  'What will be done, in the firm’s own words: sentences that stand on the client’s papers in the place of those made from the work. The site sheet keeps those.',
  'says "Build the boundary wall again, as it was."',
  { many: true, unless: 'made from the work' },
);

export const SOURCE: LineKind = line(
  'source',
  [text('text')],
  'Where the values of this block come from. Shown in every working that uses one.',
  'source "Maker’s data sheet, 2026"',
  { many: true },
);

export const EDITION: LineKind = line(
  'perpend',
  [whole(number('edition'))],
  'The edition of the notation. First line of every file, so that old jobs keep their meaning.',
  'perpend 1',
  { top: true },
);

export const USE: LineKind = line(
  'use',
  [either([text('file')], [word('library', 'library')])],
  'Takes in another file of the same workspace, or by a bare word a library that ships with the tool (uk, us, de).',
  'use uk',
  { top: true, many: true },
);

/** A rate, a rate that the client owes the state himself, or none and why. */
const RATE_OF_TAX = either(
  [choice('how', 'none'), text('reason')],
  [choice('how', 'reverse-charge'), quantity('rate', 'percent'), optional(text('name'))],
  [quantity('rate', 'percent'), optional(text('name'))],
);

const TAX = line(
  'tax',
  [RATE_OF_TAX],
  'Tax on the price, and what it is called on paper. `tax none "why"` charges none and says why on paper; with `tax reverse-charge 20%` the client owes the tax to the state, and the paper says how much.',
  'tax 20% "VAT"',
  { unless: 'the defaults’ tax' },
);

/** The same of one piece of work or one cost. */
export const OWN_TAX = line(
  'tax',
  [RATE_OF_TAX],
  'Tax on this part of the price, where it is not the job’s: another rate, `none "why"`, or `reverse-charge 20%`. The price before tax is shared out by cost; tax is worked out once for all that bears the same.',
  'tax 5%',
  { unless: 'the job’s tax' },
);

export const JOB: LineKind = line(
  'job',
  [optional(text('title'))],
  'The job: for whom, where, when.',
  'job "Orchard boundary wall"',
  {
    top: true,
    body: [
      line('ref', [code('ref')], 'Your reference for the job.', 'ref 26-041'),
      line('client', [text('client')], 'Who asked for the work.', 'client "P. Oakes"', {
        many: true,
      }),
      line('site', [text('site')], 'Where the work is.', 'site "Orchard Lane"', { many: true }),
      line('date', [date('date')], 'The day of the quote.', 'date 2026-03-02'),
      line('valid', [quantity('days', 'day')], 'How long the quote stands.', 'valid 30 days', {
        unless: 'the defaults’ valid',
      }),
      TAX,
      line(
        'currency',
        [word('currency', 'currency')],
        'The currency of every price in the job, by its ISO 4217 code.',
        'currency EUR',
        { unless: 'the defaults’ currency' },
      ),
      NOTE,
    ],
  },
);

/** Lines that a wall, a pier or a repair and the defaults share. */
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

const WAYS = list('ways', ',', choice('way', 'joints', 'half-bond', 'length', 'cut', 'cap'));

export const DEFAULTS: LineKind = line(
  'defaults',
  [],
  'What holds where a job says nothing. The job’s own come first, then each file it uses in order, then the library.',
  'defaults',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'units',
        [choice('units', 'metric', 'imperial')],
        'The units that results are shown in.',
        'units metric',
      ),
      line(
        'figures',
        [text('sample')],
        'How numbers and money are written for a reader, by a sample.',
        'figures "£1,234.56"',
      ),
      line(
        'language',
        [choice('language', 'en-GB', 'en-US', 'de-DE')],
        'The language of papers, by its tag (BCP 47).',
        'language en-GB',
      ),
      line(
        'currency',
        [word('currency', 'currency')],
        'The currency, by its ISO 4217 code.',
        'currency GBP',
      ),
      line(
        'country',
        [word('country', 'country')],
        'The country of firms and clients who do not say, by its ISO 3166 code.',
        'country GB',
      ),
      TAX,
      line(
        'reverse-charge',
        [text('words')],
        'What a paper says where the client owes the tax to the state: the words that the country’s law asks for.',
        'reverse-charge "Reverse charge: customer to pay the VAT to HMRC"',
      ),
      line(
        'deduction',
        [
          word('scheme', 'scheme'),
          share('share'),
          lit('of'),
          choice('of', 'labour', 'price', 'total'),
          text('title'),
        ],
        'What a client of the country may have to keep back from payment and pay as the firm’s tax. A job says `deducted` and its word.',
        'deduction cis 20% of labour "CIS tax deducted"',
        { many: true },
      ),
      line('valid', [quantity('days', 'day')], 'How long a quote stands.', 'valid 30 days'),
      line(
        'payment',
        [quantity('days', 'day')],
        'How long after an invoice it is to be paid.',
        'payment 30 days',
      ),
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
      line(
        'dry-volume',
        [number('factor')],
        'Volume of loose dry materials that make one volume of mortar.',
        'dry-volume 1.33',
      ),
      ...MORTAR_DEFAULTS,
      line(
        'brick-waste',
        [share('share')],
        'Bricks broken or turned away, for bricks that do not say.',
        'brick-waste 5%',
      ),
      line(
        'mortar-waste',
        [share('share')],
        'Mortar lost, for mixes that do not say.',
        'mortar-waste 10%',
      ),
      line('overhead', [quantity('share', 'percent')], 'Overhead on cost.', 'overhead 0%'),
      line('profit', [quantity('share', 'percent')], 'Profit on cost and overhead.', 'profit 0%'),
      line('round', [money('to')], 'The price is rounded to a multiple of this.', 'round £1'),
      line('least', [money('least')], 'The least price.', 'least £0'),
      line('day', [quantity('hours', 'time')], 'A working day.', 'day 7.5 h'),
      line(
        'part-day',
        [quantity('days', 'day')],
        'Days are charged in whole multiples of this.',
        'part-day 0.5 day',
      ),
      line(
        'set-up',
        [quantity('time', 'time'), lit('per'), lit('day')],
        'Setting up of a morning.',
        'set-up 0 min per day',
      ),
      line(
        'clear-up',
        [quantity('time', 'time'), lit('per'), lit('day')],
        'Cleaning down of an evening.',
        'clear-up 0 min per day',
      ),
      line('start', [clock('at')], 'When the day starts.', 'start 08:00'),
      line(
        'rule',
        [choice('what', 'bricks'), number('count'), lit('per'), word('unit', 'unit of area')],
        'A rule of thumb shown beside the count: bricks to an area of half-brick wall.',
        'rule bricks 60 per m2',
      ),
      line(
        'rule-within',
        [share('share')],
        'How much larger or smaller the face of a brick may be for the rule of thumb still to hold.',
        'rule-within 3%',
      ),
      line(
        'wall-ties',
        [
          name('material', 'material'),
          size('spacing', [2], 'length'),
          optional(lit('reveals'), quantity('reveals', 'length')),
        ],
        'The ties between two skins: how far apart along the wall and in height, and how far apart up the reveal of an opening.',
        'wall-ties wall-tie 900 x 450 mm reveals 300 mm',
      ),
      line(
        'footing-mix',
        [name('mix', 'mix')],
        'The concrete of a footing.',
        'footing-mix concrete',
      ),
      line(
        'coping-overhang',
        [quantity('length', 'length')],
        'How far a cap or coping reaches over each face.',
        'coping-overhang 45 mm',
      ),
      line(
        'cap-step',
        [quantity('length', 'length')],
        'Caps are asked for in whole multiples of this.',
        'cap-step 5 mm',
      ),
      line(
        'corbels',
        [
          lit('height'),
          number('height'),
          lit('and'),
          lit('width'),
          number('width'),
          lit('and'),
          lit('wall'),
          number('wall'),
        ],
        'How far courses may be laid out: each no more than this share of the brick’s height and of its width, all of them together no more than this share of the wall’s thickness.',
        'corbels height 1/2 and width 1/3 and wall 1/2',
      ),
      line(
        'footing-lap',
        [quantity('least', 'length'), lit('or'), lit('steps'), number('times')],
        'How far a footing laps itself where it steps: the greatest of this length, so many times the height of the step, and its own thickness.',
        'footing-lap 300 mm or steps 2',
      ),
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
      line(
        'creasing',
        [
          name('material', 'material'),
          quantity('courses', 'courses'),
          lit('out'),
          quantity('out', 'length'),
        ],
        'The tiles of a tile creasing, how many courses of them, and how far at least they stand out over each face.',
        'creasing creasing-tile 2 courses out 25 mm',
      ),
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
      line(
        'movement-spacing',
        [
          quantity('spacing', 'length'),
          optional(lit('free'), quantity('free', 'length')),
          optional(lit('corner'), quantity('corner', 'length')),
        ],
        'The longest wall without a movement joint; a wall that stands free; and from a corner to the first joint.',
        'movement-spacing 12 m free 6 m corner 6 m',
      ),
      line(
        'movement-width',
        [quantity('width', 'length')],
        'How wide a movement joint is.',
        'movement-width 10 mm',
      ),
      line(
        'movement-ties',
        [name('material', 'material'), quantity('apart', 'length')],
        'The ties across a movement joint, and how far apart in height.',
        'movement-ties movement-tie 300 mm',
      ),
      line(
        'movement-filler',
        [name('material', 'material')],
        'What a movement joint is filled with.',
        'movement-filler joint-filler',
      ),
      line(
        'tee-ties',
        [name('material', 'material'), quantity('apart', 'length')],
        'The ties from a wall into the face of another that it meets, and how far apart in height.',
        'tee-ties starter-tie 300 mm',
      ),
      line(
        'block-courses',
        [quantity('courses', 'courses')],
        'Courses to a block where a wall is block-bonded into standing work.',
        'block-courses 3 courses',
      ),
      ...DENSITIES,
      line(
        'lift',
        [quantity('height', 'length')],
        'The most that is built up in a day.',
        'lift 1500 mm',
      ),
      ...REPAIR_DEFAULTS,
      ...PRACTICE_DEFAULTS,
      ...FIRM_DEFAULTS,
    ],
  },
);
