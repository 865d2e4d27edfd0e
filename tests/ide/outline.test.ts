import { describe, expect, test } from 'vitest';
import { foldsOf } from '../../server/engine/ide/folds';
import { symbolsOf } from '../../server/engine/ide/symbols';
import type { OutlineItem } from '../../server/engine/ide/types';
import { SourceFile } from '../../server/engine/workspace/source';
import { files, read } from '../tree';

const TEXT = `perpend 1

# One.
# Two.

job "Orchard"
  client "A"

use uk

wall north "North boundary"
  length 3 m

  opening gate "Garden gate"
    from left 1 m
    width 1 m
  pier p
    at left

# About the south.
wall south
zaun x
  length 3 m
`;

const file = new SourceFile('job.perp', TEXT);
const named = (s: OutlineItem): string => `${s.name} ${s.lines.first}-${s.lines.last}`;

describe('the outline', () => {
  const found = symbolsOf(file);

  test('has every block but the edition and the files used, to its last line of words', () => {
    expect(found.map(named)).toEqual([
      'job 5-6',
      'wall north 10-17',
      'wall south 20-20',
      'zaun 21-22',
    ]);
  });

  test('has openings and piers within', () => {
    expect(found[1]!.children.map(named)).toEqual(['opening gate 13-15', 'pier p 16-17']);
  });

  test('tells titles beside names', () => {
    expect(found.map((s) => s.detail)).toEqual(['Orchard', 'North boundary', '', '']);
    expect(found[1]!.children[0]!.detail).toBe('Garden gate');
  });

  test('selects the heading, which lies within the whole', () => {
    const all = found.flatMap((s) => [s, ...s.children]);
    for (const each of all) {
      expect(each.select.line).toBe(each.lines.first);
      expect(each.end).toBe(file.lines[each.lines.last]!.length);
      expect(each.name).not.toBe('');
    }
  });

  test('children lie within their parents', () => {
    for (const { lines, children } of found)
      for (const inner of children)
        expect([inner.lines.first >= lines.first, inner.lines.last <= lines.last]).toEqual([
          true,
          true,
        ]);
  });

  test.each(files().filter((name) => name.endsWith('.perp')))('has every heading of %s', (name) => {
    const text = read(name);
    const lines = text.split('\n');
    const wanted = lines.flatMap((line, i) => (/^(?!perpend\b|use\b)[a-z]/.test(line) ? [i] : []));
    expect(symbolsOf(new SourceFile(name, text)).map((s) => s.lines.first)).toEqual(wanted);
  });
});

describe('folding', () => {
  const folds = foldsOf(file).map((f) => `${f.kind} ${f.first}-${f.last}`);

  test('has blocks, and openings and piers within', () => {
    expect(folds).toEqual(
      expect.arrayContaining([
        'block 5-6',
        'block 10-17',
        'block 13-15',
        'block 16-17',
        'block 21-22',
      ]),
    );
  });

  test('has runs of comments, not single ones', () => {
    expect(folds.filter((f) => f.startsWith('comment'))).toEqual(['comment 2-3']);
  });

  test('has no block of one line', () => {
    expect(folds.some((f) => /-20$|^block 20/.test(f))).toBe(false);
  });

  test('has nothing in an empty file', () => {
    expect(foldsOf(new SourceFile('empty.perp', ''))).toEqual([]);
  });

  test('ends a run of comments at an empty line and at the end of a block', () => {
    const text = '# a\n# b\n\n# c\n# d\njob\n  # e\n  # f';
    expect(foldsOf(new SourceFile('c.perp', text)).map((f) => `${f.first}-${f.last}`)).toEqual([
      '0-1',
      '3-4',
      '6-7',
    ]);
  });
});
