/** What can be folded away: each as its first and last line, counted from 0. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldsOf, mostFolds } from '../../server/engine/ide/folds';
import { SourceFile } from '../../server/engine/workspace/source';
import { files, read } from '../tree';
import '../harness/seed';

const all = (text: string) => foldsOf(new SourceFile('a.perp', text));
const folds = (text: string) => all(text).map((f) => `${f.kind} ${f.first}-${f.last}`);

describe('folding', () => {
  test.each<[title: string, text: string, wanted: string[]]>([
    ['nothing in an empty file', '', []],
    ['no block of one line', 'wall a\nwall b', []],
    ['a block', 'wall a\n  length 3 m', ['block 0-1']],
    ['a block without the empty lines after it', 'wall a\n  length 3 m\n\n\nwall b', ['block 0-1']],
    ['a block without the comments after it', 'wall a\n  length 3 m\n# b\nwall b', ['block 0-1']],
    ['a block with comments in it', 'wall a\n  # here\n  length 3 m', ['block 0-2']],
    [
      'an opening within',
      'wall a\n  opening g\n    width 1 m\n  length 3 m',
      ['block 0-3', 'block 1-2'],
    ],
    [
      'a pier at the end',
      'wall a\n  pier p\n    at left\n    courses 3',
      ['block 0-3', 'block 1-3'],
    ],
    ['no opening of one line', 'wall a\n  opening g\n  opening h', ['block 0-2']],
    ['two blocks', 'wall a\n  length 3 m\nwall b\n  length 3 m', ['block 0-1', 'block 2-3']],
    [
      'headings within headings',
      'bond m\n  thick 1 brick\n    course stretcher\n    course header\n  lap 1/4 brick',
      ['block 0-4', 'block 1-3'],
    ],
    ['a heading that cannot be read', 'zaun x\n  length 3 m', ['block 0-1']],
    ['a run of comments', '# a\n# b\n# c\nwall a', ['comment 0-2']],
    ['no single comment', '# a\n\n# b\nwall a', []],
    [
      'a run of comments in a block',
      'wall a\n  # a\n  # b\n  length 3 m',
      ['block 0-3', 'comment 1-2'],
    ],
    ['two runs of comments', '# a\n# b\n\n# c\n# d', ['comment 0-1', 'comment 3-4']],
    ['the files that are used', 'perpend 1\nuse "a.perp"\nuse uk\njob "A"', ['imports 1-2']],
    ['no single used file', 'use uk\njob "A"\nuse "a.perp"', []],
    [
      'used files parted by others',
      'use uk\nuse "a.perp"\njob "A"\nuse "b.perp"\nuse "c.perp"',
      ['imports 0-1', 'imports 3-4'],
    ],
    [
      'used files up to one that holds a line',
      'use uk\nuse "a.perp"\nuse "b.perp"\n  opening o\nuse "c.perp"',
      ['imports 0-1', 'block 2-3'],
    ],
    ['Windows line ends', 'wall a\r\n  length 3 m\r\nwall b', ['block 0-1']],
    ['no comment at the end of a line', 'wall a # a\nwall b # b', []],
    ['an option', 'option o\n  change a height 3 m\n  leave-out b', ['block 0-2']],
  ])('%s', (_, text, wanted) => {
    expect(folds(text)).toEqual(wanted);
  });
});

describe('no more than the client takes', () => {
  const TEXT =
    '# a\n# b\nwall a\n  # a\n  # b\n  opening g\n    width 1 m\nwall b\n  opening h\n    width 1 m';
  const some = (most: number) =>
    mostFolds(all(TEXT), most).map((f) => `${f.kind} ${f.first}-${f.last}`);

  test.each<[most: number, wanted: string[]]>([
    [0, []],
    [1, ['block 2-6']],
    [2, ['block 2-6', 'block 7-9']],
    [3, ['comment 0-1', 'block 2-6', 'block 7-9']],
    [4, ['comment 0-1', 'block 2-6', 'block 5-6', 'block 7-9']],
  ])('of %i the outer ones stay, and blocks before comments', (most, wanted) => {
    expect(some(most)).toEqual(wanted);
  });

  test('all where there is room', () => {
    expect(some(100)).toHaveLength(6);
    expect(mostFolds(all(TEXT), Number.POSITIVE_INFINITY)).toEqual(all(TEXT));
  });
});

const SHIPPED = files().filter((name) => name.endsWith('.perp'));

test.each(SHIPPED)('in %s none crosses another', (name) => {
  const found = all(read(name));
  const crossing = found.filter((a) =>
    found.some((b) => a.first < b.first && b.first <= a.last && a.last < b.last),
  );
  expect(crossing).toEqual([]);
});

test('whatever the text, each has two lines and lies within it', () => {
  const line = fc.constantFrom(
    'wall a',
    '  opening g',
    '    width 1 m',
    '# x',
    '  # y',
    '',
    'use uk',
    '"',
    ' \t',
  );
  fc.assert(
    fc.property(fc.array(line), fc.nat(20), (lines, most) => {
      const found = all(lines.join('\n'));
      for (const { first, last } of found) {
        expect(last).toBeGreaterThan(first);
        expect(last).toBeLessThan(lines.length);
      }
      expect(mostFolds(found, most).length).toBe(Math.min(most, found.length));
    }),
  );
});
