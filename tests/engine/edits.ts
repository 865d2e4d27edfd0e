/** Random changes of a text as an editor sends them, and the text that they leave, by plain string work. */
import fc from 'fast-check';
import type { TextChange } from '../../server/engine/workspace/source';

/** A change before it is fitted to a text: places are parts of the whole. */
export interface AnyChange {
  readonly at: number;
  readonly column: number;
  readonly lines: number;
  readonly until: number;
  readonly text: string;
}

/** What people and accidents put into a job: pieces of the notation, and pieces of nothing. */
const SCRAPS = [
  '',
  ' ',
  '\n',
  '\n\n',
  '1',
  '9',
  '.',
  ',',
  '?',
  '"',
  '#',
  'x',
  ' mm',
  ' courses',
  '\nwall extra\n  length 2 m\n',
  '\n  height 3 courses',
  '\nrepair r\n  in north\n  repoint 1 m2 raked 10 mm\n',
  '\nprice\n  profit 7%\n',
  '\nbrick harwick-red\n  size 230 x 110 x 70 mm\n',
  '\ncost extra "Extra" 1 at £1\n',
  '\nuse us\n',
  'wall',
  '  ',
  '\t',
  '\r\n',
  '\u00e9\u{1F9F1}',
];

const part = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });

export const anyChange: fc.Arbitrary<AnyChange> = fc.record({
  at: part,
  column: part,
  lines: fc.constantFrom(0, 0, 0, 0, 1, 3),
  until: part,
  text: fc.constantFrom(...SCRAPS),
});

/** A change that fits a text of these lines. */
export function fitted(change: AnyChange, lines: readonly string[]): TextChange {
  const startLine = Math.floor(change.at * lines.length);
  const endLine = Math.min(lines.length - 1, startLine + change.lines);
  const startColumn = Math.floor(change.column * (lines[startLine]!.length + 1));
  const last = lines[endLine]!.length;
  const least = endLine === startLine ? startColumn : 0;
  const reach = endLine === startLine ? Math.min(last, least + 4) : last;
  const endColumn = least + Math.floor(change.until * (reach - least + 1));
  return { startLine, startColumn, endLine, endColumn, text: change.text };
}

const ENDS = /\r\n|\n|\r/;

export function linesOf(text: string): string[] {
  return text.split(ENDS);
}

/** The text after a change, with every line end a newline. */
export function changed(text: string, change: TextChange): string {
  const lines = linesOf(text);
  const before = [
    ...lines.slice(0, change.startLine),
    lines[change.startLine]!.slice(0, change.startColumn),
  ];
  const after = [
    lines[change.endLine]!.slice(change.endColumn),
    ...lines.slice(change.endLine + 1),
  ];
  const middle = linesOf(change.text).join('\n');
  return before.join('\n') + middle + after.join('\n');
}
