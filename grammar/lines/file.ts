/** What a file as a whole says: the edition it is written in, and the files it uses. */
import { either, type LineKind, line, number, text, whole, word } from './slots';

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
