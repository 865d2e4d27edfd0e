/** A caution of a country or a firm: when it applies, what to do, whom to ask, and who says so. */
import { SOURCE } from './said';
import {
  choice,
  either,
  type LineKind,
  line,
  list,
  newName,
  optional,
  quantity,
  text,
  word,
} from './slots';

/** What a caution can be brought up by, with the dimension it is measured in where it is measured. */
export const BROUGHT_UP_BY = {
  any: undefined,
  wall: undefined,
  pier: undefined,
  repair: undefined,
  laying: undefined,
  cutting: undefined,
  raking: undefined,
  'taking-down': undefined,
  footing: undefined,
  piers: undefined,
  lintel: undefined,
  arch: undefined,
  'free-standing': undefined,
  held: undefined,
  retaining: undefined,
  cement: undefined,
  lime: undefined,
  'ready-mixed': undefined,
  'old-lime': undefined,
  height: 'length',
  thick: 'bricks',
  leans: 'length',
  boundary: 'length',
  road: 'length',
  mass: 'mass',
  lump: 'mass',
  bag: 'mass',
} as const;

export const CAUTION: LineKind = line(
  'caution',
  [newName(), optional(text('title'))],
  'A caution: when it applies, what to do and whom to ask. The nearest file that has one of a name holds.',
  'caution silica "Dust from cutting"',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      line(
        'when',
        [
          list(
            'when',
            ',',
            word('what', 'work or material'),
            optional(
              either(
                [
                  choice('than', 'over', 'from', 'under', 'within'),
                  quantity('amount', 'length', 'mass', 'bricks'),
                ],
                [choice('unsaid', 'unsaid')],
              ),
            ),
          ),
        ],
        `What in a job brings it up; all of a line must hold, and one line is enough. The first of a line tells where it is shown. It can be ${Object.keys(BROUGHT_UP_BY).join(', ')}, or the name of a material. What is measured takes a limit: \`over\` more than it, \`from\` no less, \`under\` less, \`within\` no more. \`unsaid\` asks where no line says it: no caution is shown, and what to find out stands in the list of what to measure.`,
        'when height over 1.5 m, free-standing',
        { many: true },
      ),
      line('say', [text('text')], 'What to do.', 'say "Cut wet, and wear a mask."', { many: true }),
      line(
        'ask',
        [text('text')],
        'Whose word counts: local rules, and who is licensed to judge.',
        'ask "Check local rules, and ask a structural engineer."',
        { many: true },
      ),
    ],
  },
);
