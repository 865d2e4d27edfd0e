/** Another way to do a part of the work, or more of it: priced beside the job, and in its price only when it is taken. */
import { NOTE } from './said';
import { type LineKind, line, list, name, newName, optional, rest, text, word } from './slots';

/** In the body of a piece of work or of a cost. */
export const IN_OPTION = line(
  'option',
  [list('options', ',', name('option', 'option'))],
  'Only done, and only priced, when this option is taken; of several, when one of them is.',
  'option caps',
  { unless: 'always in the price' },
);

const CHANGED = name('what', 'wall', 'pier', 'repair', 'opening', 'cost');

export const OPTION: LineKind = line(
  'option',
  [newName(), optional(text('title'))],
  'Another way to do a part of the work, or more of it. The price beside it is that of the whole job with it. What it does stands in its lines; a wall, a pier, a repair or a cost with a line `option` that names it is in it too. `accepted` in the record takes it.',
  'option caps "Precast caps on both piers"',
  {
    top: true,
    many: true,
    body: [
      line(
        'change',
        [CHANGED, rest('line', 'a line of it')],
        'A line of a piece of work, or of an opening or a pier of it, written anew: it takes the place of the line with the same word, or is added where there is none.',
        'change hanging cap 400 x 400 mm',
        { many: true },
      ),
      line(
        'leave-out',
        [CHANGED, optional(word('line', 'line of it'))],
        'A piece of work, an opening, a pier or a cost that is not done with this option; or, with a word after it, only its lines of that word.',
        'leave-out hanging coping',
        { many: true },
      ),
      line(
        'instead-of',
        [list('options', ',', name('option', 'option'))],
        'Options of which only one can be taken: this one or those.',
        'instead-of copings',
        { unless: 'it can be taken with any other' },
      ),
      NOTE,
    ],
  },
);
