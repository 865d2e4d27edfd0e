/** A job to begin another from: what is asked, and what its answers are written into. */
import { type LineKind, line, name, text, word } from './slots';

export const TEMPLATE: LineKind = line(
  'template',
  [text('title')],
  'This file is a template: `perpend new` makes a job of it and asks its questions. It is a job like any other, and its values are the answers that hold where none is given.',
  'template "Garden wall"',
  {
    top: true,
    body: [
      line(
        'ask',
        [
          name('what', 'wall', 'pier', 'repair', 'opening', 'cost'),
          word('line', 'line of it'),
          text('question'),
        ],
        'A question. Its answer is written behind that word, in a wall, a pier, a repair, an opening or a cost of this file, or in the `job`; where there is no such line it is added.',
        'ask north length "How long is the wall?"',
        { many: true },
      ),
    ],
  },
);
