/** How much of a task is done in an hour: laid, and served. */
import type { Dimension } from '../../shared/units';
import { SOURCE } from './said';
import { type LineKind, line, lit, quantity, word } from './slots';

/** @param offers in which it is mostly said; whatever it is said in, it has to say something of what is laid */
const perHour = (
  key: string,
  what: string,
  example: string,
  offers: readonly Dimension[] = ['bricks'],
): LineKind =>
  line(
    key,
    [
      {
        ...quantity('amount', 'bricks', 'area', 'length', 'volume', 'pieces', 'courses'),
        offers,
      },
      lit('per'),
      word('unit', 'h or day'),
    ],
    what,
    example,
  );

export const OUTPUT: LineKind = line(
  'output',
  [],
  'What one of the gang’s laying trade does in an hour or a day.',
  'output',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      perHour(
        'facework',
        'Bricks laid in a wall, or so much of its face or of its volume.',
        'facework 55 bricks per h',
        ['bricks', 'area', 'volume'],
      ),
      perHour('blockwork', 'Backing skins laid.', 'blockwork 1.2 m2 per h', ['area']),
      perHour('pier-work', 'Bricks laid in a pier.', 'pier-work 40 bricks per h'),
      perHour('coping', 'Bricks laid on edge.', 'coping 45 bricks per h'),
      perHour('cap', 'Caps bedded.', 'cap 3 pieces per h', ['pieces']),
      perHour('precast', 'Lengths of precast coping bedded.', 'precast 4 pieces per h', ['pieces']),
      perHour('tiles', 'Creasing tiles laid under a coping.', 'tiles 60 pieces per h', ['pieces']),
      perHour('head', 'Soldiers and bricks on edge laid over an opening.', 'head 30 bricks per h'),
      perHour(
        'subsill',
        'Bricks laid on edge at the foot of an opening.',
        'subsill 30 bricks per h',
      ),
      perHour('arch', 'Bricks turned in an arch.', 'arch 15 bricks per h'),
      perHour('centre', 'Centres for arches set up and struck.', 'centre 1 piece per h', [
        'pieces',
      ]),
      perHour('lintel', 'Lintels bedded.', 'lintel 2 pieces per h', ['pieces']),
      perHour('core', 'Concrete placed in the core of a pier.', 'core 0.5 m3 per h', ['volume']),
      perHour('footing', 'Concrete dug for and placed.', 'footing 0.3 m3 per h', ['volume']),
      perHour(
        'take-down',
        'Bricks taken down; of a wall, or so much of its face or of its volume.',
        'take-down 80 bricks per h',
        ['bricks', 'area', 'volume'],
      ),
      perHour('clean', 'Bricks cleaned for reuse.', 'clean 70 bricks per h'),
      perHour('cut-out', 'Single bricks cut out and replaced.', 'cut-out 5 bricks per h'),
      perHour('repoint', 'Joints raked out and pointed, by area of face.', 'repoint 1.1 m2 per h', [
        'area',
      ]),
      perHour(
        'repoint-joints',
        'Joints raked out and pointed, by their length.',
        'repoint-joints 6 m per h',
        ['length'],
      ),
      perHour('rebed', 'Copings lifted, cleaned and bedded again, by length.', 'rebed 2 m per h', [
        'length',
      ]),
      perHour(
        'rebed-pieces',
        'Copings and caps lifted, cleaned and bedded again, by the piece.',
        'rebed-pieces 2 pieces per h',
        ['pieces'],
      ),
      perHour(
        'replace',
        'Copings and caps taken off and new ones bedded.',
        'replace 2 pieces per h',
        ['pieces'],
      ),
      perHour('stitch', 'Bars set in raked beds across a crack.', 'stitch 2 pieces per h', [
        'pieces',
      ]),
      perHour('make-good', 'Surfaces made good.', 'make-good 1 m2 per h', ['area']),
      perHour(
        'load-out',
        'Bricks bought, unloaded and stacked out where they are laid, by one of the gang.',
        'load-out 400 bricks per h',
      ),
    ],
  },
);

/** The same lines as those of {@link OUTPUT}: how much of each task one pair of hands keeps going. */
export const SERVING: LineKind = line(
  'serving',
  [],
  'How much of a task one who serves keeps going in an hour or a day: mixing, carrying, stacking. The slower of laying and serving sets the pace.',
  'serving',
  {
    top: true,
    many: true,
    body: OUTPUT.body!.map((kind) =>
      kind === SOURCE ? kind : { ...kind, means: `Served: ${lowered(kind.means)}` },
    ),
  },
);

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
