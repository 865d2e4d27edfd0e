import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutBlocks } from '../../grammar/blocks';
import { format } from '../../grammar/print';
import { formatting } from '../../server/engine/ide/format';
import { onEnter } from '../../server/engine/ide/on-enter';
import type { LineRange } from '../../server/engine/ide/types';
import { SourceFile } from '../../server/engine/workspace/source';
import { withEdits } from '../harness/edits';
import { parseMarks } from '../harness/marks';
import { files, read } from '../tree';

const UNTIDY = `perpend 1
wall n
 brick   red
     length 1 m   # paced



wall m
  brick red
`;

const edits = (text: string, ranges?: readonly LineRange[]) =>
  formatting(new SourceFile('a.perp', text), ranges);
const formatted = (text: string, ranges?: readonly LineRange[]) =>
  withEdits(text, edits(text, ranges));
const whole = (text: string) => expect(formatted(text)).toBe(format(text));

describe('the whole of a file', () => {
  test('is put as the printer prints it', () => whole(UNTIDY));

  test('with a line that cannot be read: that line is only put at its depth', () => {
    const text = 'perpend 1\n\nwall n\n    lenght   3 m\n  brick red\n';
    expect(formatted(text)).toBe('perpend 1\n\nwall n\n  lenght   3 m\n  brick     red\n');
  });

  test('with a text that is not closed, and signs of no line', () => {
    whole('perpend 1\njob   "Orch\n  client   §§\nwall n\n length  3m\n');
  });

  test('an empty file stays empty', () => expect(edits('')).toEqual([]));

  test('a last line without an end gets one', () => {
    expect(formatted('perpend 1')).toBe('perpend 1\n');
  });

  test('what is in order is not touched', () => expect(edits(format(UNTIDY))).toEqual([]));

  test.each(files().filter((name) => name.endsWith('.perp')))('%s: once is enough', (name) => {
    const once = formatted(read(name));
    expect(edits(once)).toEqual([]);
  });
});

describe('edits are small', () => {
  test('room between words changes, and no word', () => {
    expect(edits('perpend 1\n\nwall n\n  length 3 m   # paced\n')).toEqual([
      { startLine: 3, startColumn: 8, endLine: 3, endColumn: 9, text: '    ' },
      { startLine: 3, startColumn: 12, endLine: 3, endColumn: 15, text: ' '.repeat(23) },
    ]);
  });

  test('a word that is written otherwise is all that changes in its line', () => {
    const [edit, ...more] = edits('perpend 1\n\nwall n\n  footing   450x225 mm\n');
    expect(more).toEqual([]);
    expect(edit).toMatchObject({ startLine: 3, startColumn: 15, endColumn: 16, text: ' x ' });
  });

  test('empty lines too many go, and the lines round them stay', () => {
    const text = 'perpend 1\n\n\n\nwall n\n';
    for (const edit of edits(text)) expect(edit.text).toBe('');
    expect(formatted(text)).toBe('perpend 1\n\nwall n\n');
  });

  test('a sign of two units is never parted', () => {
    const text = 'perpend 1\n\nwall n\n  note  "𝟙𝟚"\n';
    expect(formatted(text)).toBe(format(text));
  });
});

describe('some lines', () => {
  test('are put in order, and the others are left alone', () => {
    const lines = formatted(UNTIDY, [{ first: 2, last: 2 }]).split('\n');
    expect(lines[2]).toBe('  brick     red');
    expect(lines[3]).toBe('     length 1 m   # paced');
    expect(lines).toHaveLength(UNTIDY.split('\n').length);
  });

  test('empty lines outside them stay', () => {
    expect(formatted(UNTIDY, [{ first: 7, last: 8 }])).toContain('# paced\n\n\n\nwall m');
  });

  test('empty lines within them go', () => {
    expect(formatted(UNTIDY, [{ first: 4, last: 6 }])).toContain('# paced\n\nwall m');
  });

  test('the last line gets its end only when it is among them', () => {
    expect(formatted('perpend 1\n\nwall   n', [{ first: 0, last: 0 }])).toBe(
      'perpend 1\n\nwall   n',
    );
    expect(formatted('perpend 1\n\nwall   n', [{ first: 2, last: 2 }])).toMatch(
      /^perpend 1\n\nwall n\n?$/,
    );
  });

  test('several ranges at once are as one after the other', () => {
    const both = formatted(UNTIDY, [
      { first: 2, last: 2 },
      { first: 8, last: 8 },
    ]);
    const one = formatted(formatted(UNTIDY, [{ first: 2, last: 2 }]), [{ first: 8, last: 8 }]);
    expect(both).toBe(one);
  });

  test('all of them is the whole, but for the end of the last', () => {
    const all = formatted(UNTIDY, [{ first: 0, last: 100 }]);
    expect(all.trimEnd()).toBe(format(UNTIDY).trimEnd());
  });

  test('where a line alone would drag others along, its whole block is put in order', () => {
    // `fit` may be a line of the wall and of the opening: how deep it stands decides.
    const text = 'wall n\n      opening g\n        sill    6 courses\n      fit       height cut\n';
    const after = formatted(text, [{ first: 1, last: 1 }]);
    expect(format(after)).toBe(format(text));
    expect(after).toBe(format(text));
  });

  /** `> ` stands before each line that is selected; runs of them are ranges of their own. */
  function selected(marked: string): string {
    const lines = marked.split('\n');
    const text = lines.map((line) => line.replace(/^> /, '')).join('\n');
    const ranges = lines.flatMap((line, i) =>
      line.startsWith('> ') ? [{ first: i, last: i }] : [],
    );
    const after = formatted(text, ranges);
    // What was put in order once stays.
    if (after.split('\n').length === lines.length) expect(formatted(after, ranges)).toBe(after);
    return after;
  }

  test.each([
    [
      'a line too deep',
      'wall n\n>       brick red\n      mix general\n',
      'wall n\n  brick     red\n      mix general\n',
    ],
    ['a tab', 'wall n\n> \tbrick red\n\tmix general\n', 'wall n\n  brick     red\n\tmix general\n'],
    ['a heading', '> wall   n   "N"\n  brick   red\n', 'wall n "N"\n  brick   red\n'],
    [
      'room at the end',
      'wall n  \n>   brick     red   \n  mix general  \n',
      'wall n  \n  brick     red\n  mix general  \n',
    ],
    [
      'a remark keeps its words',
      'wall n\n>   brick red # a  b   "c\n',
      'wall n\n  brick     red                       # a  b   "c\n',
    ],
    [
      'a text keeps its room',
      'job   "A"\n>   client "Ms  P.   L"\n',
      'job   "A"\n  client    "Ms  P.   L"\n',
    ],
    [
      'a hash in a text is no remark',
      'job   "A"\n>   client "No  #  1"\n',
      'job   "A"\n  client    "No  #  1"\n',
    ],
    [
      'a unit close up to its number',
      'wall n\n>   length 3m\n  height 2m\n',
      'wall n\n  length    3 m\n  height 2m\n',
    ],
    [
      'a line that cannot be read stays',
      'wall n\n>   lenght   3m\n',
      'wall n\n>   lenght   3m\n'.replace('> ', ''),
    ],
    [
      'letters of two units',
      'wall n "🧱"\n>   note   "🧱  🧱"   # 🧱\n',
      'wall n "🧱"\n  note      "🧱  🧱"                  # 🧱\n',
    ],
    [
      'two lines apart',
      '> wall   a\n  brick   red\n\n> wall   b\n  brick   red\n',
      'wall a\n  brick   red\n\nwall b\n  brick   red\n',
    ],
    [
      'a line of nothing but room',
      'wall a\n  brick   red\n>    \nwall   b\n',
      'wall a\n  brick   red\n\nwall   b\n',
    ],
  ])('%s', (_, marked, wanted) => {
    expect(selected(marked)).toBe(wanted);
  });

  test('whatever the lines and the ranges: no other block changes, and the whole can follow', () => {
    const line = fc.constantFrom(
      '',
      '   ',
      'wall n',
      ' brick  red',
      '    length 3m # x',
      'zz',
      '  note "a',
      '# c',
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 9 }), fc.nat(9), fc.nat(4), (lines, first, more) => {
        const text = lines.join('\n');
        const range = { first, last: first + more };
        const after = formatted(text, [range]);
        expect(format(after)).toBe(format(text));
        const begins = cutBlocks(lines).findLast((start) => start <= first) ?? 0;
        const outside = lines.slice(0, begins);
        expect(after.split('\n').slice(0, outside.length)).toEqual(outside);
      }),
      { numRuns: 300 },
    );
  });
});

/** The text after Enter, as the editor leaves it, then as we put it; `|` where the cursor was. */
function entered(marked: string): string {
  const { text, cursor } = parseMarks(marked);
  const file = new SourceFile('a.perp', text);
  const list = onEnter(file, cursor!);
  for (const edit of list) {
    expect(edit.startLine).toBeGreaterThanOrEqual(cursor!.line - 1);
    expect(edit.endLine).toBeLessThanOrEqual(cursor!.line);
    expect(edit.text).not.toContain('\n');
  }
  const after = withEdits(text, list);
  // What has been put in order once stays: the next key is not met by another edit.
  expect(onEnter(new SourceFile('a.perp', after), cursor!)).toEqual([]);
  return after;
}

describe('on Enter', () => {
  test.each([
    ['after a heading the next line is indented', 'wall n\n$0', 'wall n\n  '],
    ['as the editor has it already', 'wall n\n  $0', 'wall n\n  '],
    ['after a line of it as deep', 'wall n\n  brick     red\n  $0', 'wall n\n  brick     red\n  '],
    ['after an opening deeper', 'wall n\n  opening g\n  $0', 'wall n\n  opening g\n    '],
    [
      'after a line of an opening as deep',
      'wall n\n  opening g\n    sill    6 courses\n    $0',
      'wall n\n  opening g\n    sill    6 courses\n    ',
    ],
    ['after a heading that takes no lines not at all', 'use uk\n  $0', 'use uk\n'],
    ['after an unknown heading as the editor has it', 'zaun n\n$0', 'zaun n\n'],
    [
      'after an empty line as the editor has it',
      'wall n\n  brick     red\n\n$0',
      'wall n\n  brick     red\n\n',
    ],
    ['room on an empty line goes when it is left', 'wall n\n  \n  $0', 'wall n\n\n  '],
    ['after a comment as deep as that', 'wall n\n  # best\n$0', 'wall n\n  # best\n  '],
    [
      'the line just left is put in order',
      'wall n\n    length   7.4m\n    $0',
      'wall n\n  length    7.4 m\n  ',
    ],
    [
      'in the column of its block',
      'wall n\n  movement-joint  every 6 m\n  length 3 m\n  $0',
      'wall n\n  movement-joint  every 6 m\n  length          3 m\n  ',
    ],
    [
      'with its comment',
      'wall n\n  length    7.4 m #paced\n  $0',
      `wall n\n${'  length    7.4 m'.padEnd(38)}#paced\n  `,
    ],
    [
      'and no other',
      'wall n\n length 3 m\n  brick red\n  $0',
      'wall n\n length 3 m\n  brick     red\n  ',
    ],
    [
      'one that cannot be read is put at its depth',
      'wall n\n lenght 3m\n $0',
      'wall n\n  lenght 3m\n  ',
    ],
    [
      'a line parted in two: the second half begins at its depth',
      'wall n\n  brick     red\n$0height 3 m',
      'wall n\n  brick     red\n  height 3 m',
    ],
    [
      'a heading written under a block is not drawn into it',
      'wall n\n  brick     red\n$0wall m',
      'wall n\n  brick     red\nwall m',
    ],
    ['a text that is not closed is left as it is', 'job "Orchard\n  $0', 'job "Orchard\n  '],
    ['two empty lines may stand while one writes', 'wall n\n\n\n$0', 'wall n\n\n\n'],
  ])('%s', (_, marked, wanted) => {
    expect(entered(marked)).toBe(wanted);
  });

  test('a line whose depth others hang on is left as it is', () => {
    const text =
      'wall n\n  fit       height cut\n      opening g\n      $0\n      fit       height cut\n';
    expect(entered(text)).toContain('\n      opening g\n');
  });

  test('in the first line, and beyond the last, nothing is done', () => {
    const file = new SourceFile('a.perp', ' wall   n');
    expect(onEnter(file, { line: 0, column: 0 })).toEqual([]);
    expect(onEnter(file, { line: 9, column: 0 })).toEqual([]);
  });

  test('a line that nobody types is left as it is', () => {
    const text = (letters: number) => `wall a\n    note   "${'x'.repeat(letters)}"\n`;
    const touched = (letters: number) =>
      onEnter(new SourceFile('a.perp', text(letters)), { line: 2, column: 0 }).map(
        (edit) => edit.startLine,
      );
    expect(touched(100)).toContain(1);
    expect(touched(10_000)).not.toContain(1);
  });
});
