/** A firm that does a part of the work, by its own rates and outputs. */
import { NOTE } from './said';
import { type LineKind, line, name, newName, optional, text } from './slots';

/** In the body of a piece of work. */
export const BY_PARTNER = line(
  'by',
  [name('partner', 'partner')],
  'Done by this partner firm: its gang, rates and outputs hold, and its labour is a cost of the job by itself.',
  'by halden',
  { unless: 'the firm does it' },
);

export const PARTNER: LineKind = line(
  'partner',
  [newName(), optional(text('title'))],
  'A partner firm that does the work with a line `by` and its name. Of its file only labour, output and serving blocks are taken, and only for that work; what they do not say is as in the job. What it charges is the hours of the work: if it charges more, such as its journeys, write that as a cost.',
  'partner halden "Halden Brothers"',
  {
    top: true,
    many: true,
    body: [
      line(
        'file',
        [text('file')],
        'Its file, as it came: another file of the same workspace.',
        'file "halden.perp"',
      ),
      NOTE,
    ],
  },
);
