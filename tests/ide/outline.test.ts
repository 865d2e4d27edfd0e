import { describe, expect, test } from 'vitest';
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

/** `name first-last`, those within indented. */
function outline(text: string): string[] {
  const tell = (item: OutlineItem, room: string): string[] => [
    `${room}${item.name} ${item.lines.first}-${item.lines.last}`,
    ...item.children.flatMap((inner) => tell(inner, `${room}  `)),
  ];
  return symbolsOf(new SourceFile('a.perp', text)).flatMap((item) => tell(item, ''));
}

describe('the outline of', () => {
  test.each<[title: string, text: string, wanted: string[]]>([
    ['an empty file', '', []],
    ['comments alone', '# a\n# b', []],
    ['the edition and used files', 'perpend 1\nuse uk\nuse "a.perp"', []],
    ['one block', 'wall a', ['wall a 0-0']],
    ['a block without a name', 'job "A"\n  client "B"', ['job 0-1']],
    [
      'a block that ends before empty lines',
      'wall a\n  length 3 m\n\n\nwall b',
      ['wall a 0-1', 'wall b 4-4'],
    ],
    [
      'a wall with all that has lines',
      'wall a\n  opening g\n    width 1 m\n  pier p\n    at left',
      ['wall a 0-4', '  opening g 1-2', '  pier p 3-4'],
    ],
    [
      'an opening without lines',
      'wall a\n  opening g\n  length 3 m',
      ['wall a 0-2', '  opening g 1-1'],
    ],
    ['trades', 'labour\n  mason £30 per h\n  gang 1 mason', ['labour 0-2', '  mason 1-1']],
    ['measures', 'measures\n  bucket 10 l', ['measures 0-1', '  bucket 1-1']],
    ['zones of a limit', 'limit l\n  zone inland', ['limit l 0-1', '  zone inland 1-1']],
    ['a heading that cannot be read', 'zaun x\n  length 3 m', ['zaun 0-1']],
    ['a heading without its name', 'wall\n  length 3 m', ['wall 0-1']],
    ['two blocks of one name', 'wall a\nwall a', ['wall a 0-0', 'wall a 1-1']],
    ['a name in another alphabet', 'wall Ødegård', ['wall Ødegård 0-0']],
    ['an option', 'option o "Cheaper"\n  change a height 3 m', ['option o 0-1']],
    ['Windows line ends', 'wall a\r\n  length 3 m\r\nwall b', ['wall a 0-1', 'wall b 2-2']],
  ])('%s', (_, text, wanted) => {
    expect(outline(text)).toEqual(wanted);
  });

  test('a line that is being written keeps its block', () => {
    expect(outline('wall a\n  len\n  opening g\n    wi\nwall b')).toEqual([
      'wall a 0-3',
      '  opening g 2-3',
      'wall b 4-4',
    ]);
  });

  test('kinds, for their signs', () => {
    const [labour] = symbolsOf(new SourceFile('a.perp', 'labour\n  mason £30 per h'));
    expect([labour!.kind, labour!.children[0]!.kind]).toEqual(['labour', 'trade']);
  });
});
