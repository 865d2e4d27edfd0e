/** What a selection grows to, from the cursor to the whole file: each as the text it holds. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { selectionsAt } from '../../server/engine/ide/selection';
import { SourceFile } from '../../server/engine/workspace/source';
import { parseMarks } from '../harness/marks';
import '../harness/seed';

function grown(marked: string): string[] {
  const { text, cursor } = parseMarks(marked);
  const file = new SourceFile('job.perp', text);
  return selectionsAt(file, cursor!).map(({ start, end }) => {
    const lines = file.lines.slice(start.line, end.line + 1);
    const last = lines.length - 1;
    lines[last] = lines[last]!.slice(0, end.column);
    lines[0] = lines[0]!.slice(start.column);
    return lines.join('\n');
  });
}

/** Without the cursor itself and the whole file. */
const between = (marked: string) => grown(marked).slice(1, -1);

const WALL = `perpend 1
wall north
  length 3.5 m
  opening gate
    from left 1 m
    width 1010 mm
  height 8 courses
brick red`;

const put = (line: string) => WALL.replace(line.replace('$0', ''), line);

describe('from a word', () => {
  test.each<[title: string, marked: string, wanted: string[]]>([
    ['a number', 'wall a\n  length 3$0.5 m', ['3.5', '3.5 m', 'length 3.5 m']],
    ['a unit', 'wall a\n  length 3.5 mm$0', ['mm', '3.5 mm', 'length 3.5 mm']],
    ['a range', 'wall a\n  length 3$0..4 m', ['3', '3..4 m', 'length 3..4 m']],
    ['the line’s word', 'wall a\n  len$0gth 3.5 m', ['length', 'length 3.5 m']],
    ['a name', 'wall no$0rth', ['north', 'wall north']],
    [
      'words of a text, then its marks',
      'job "Orch$0ard wall"\n  client "A"',
      ['Orchard wall', '"Orchard wall"', 'job "Orchard wall"'],
    ],
    ['a text that is not closed', 'job "Orch$0ard', ['Orchard', '"Orchard', 'job "Orchard']],
    [
      'an amount of money',
      'brick red\n  price £12$0.50 each',
      ['12.50', '£12.50', '£12.50 each', 'price £12.50 each'],
    ],
    [
      'a size',
      'brick red\n  size 215 x 102$0.5 x 65 mm',
      ['102.5', '215 x 102.5 x 65 mm', 'size 215 x 102.5 x 65 mm'],
    ],
    ['one of several values', 'repair r\n  in north p$0', ['p', 'north p', 'in north p']],
    ['a date', 'job "A"\n  date 2026-0$03-02', ['2026-03-02', 'date 2026-03-02']],
    ['a comment', 'wall a # two wor$0ds', ['# two words', 'wall a # two words']],
    ['a line of comment', 'wall a\n  # two wor$0ds', ['# two words', '  # two words']],
    ['a faulty line', 'wall a\n  lenght 3$0 m', ['3', '3 m', 'lenght 3 m']],
  ])('%s', (_, marked, wanted) => {
    expect(grown(marked).slice(1, wanted.length + 1)).toEqual(wanted);
  });
});

describe('from a line', () => {
  test('to the lines beside it, its heading, the block, the file', () => {
    const found = grown(put('    width 10$010 mm'));
    expect(found.slice(1)).toEqual([
      '1010',
      '1010 mm',
      'width 1010 mm',
      '    width 1010 mm',
      '    from left 1 m\n    width 1010 mm',
      '  opening gate\n    from left 1 m\n    width 1010 mm',
      WALL.split('\n').slice(2, 7).join('\n'),
      WALL.split('\n').slice(1, 7).join('\n'),
      WALL,
    ]);
  });

  test('from a heading to the lines under it', () => {
    const found = between(put('  opening ga$0te'));
    expect(found).toContain('  opening gate\n    from left 1 m\n    width 1010 mm');
    expect(found.indexOf('  opening gate')).toBeGreaterThan(0);
  });

  test('a block of one line', () => {
    expect(between(put('brick re$0d'))).toEqual(['red', 'brick red']);
  });

  test('in the indent the whole line comes first', () => {
    expect(between(put(' $0   width 1010 mm'))[0]).toBe('    width 1010 mm');
  });

  test('an empty line', () => {
    expect(grown('wall a\n\n$0\nwall b')).toEqual(['', 'wall a\n\n\nwall b']);
  });

  test('an empty file', () => {
    expect(grown('$0')).toEqual(['']);
  });
});

test('each holds the one before, whatever the text and the place', () => {
  const line = fc.constantFrom(
    'wall a',
    '  length 3 m',
    '  opening g',
    '    width 1 m',
    '',
    '# x',
    '  "',
    'brick r "a\\"',
    '\u{1F9F1} ö',
    '  £1..2 each',
  );
  fc.assert(
    fc.property(fc.array(line, { maxLength: 12 }), fc.nat(12), fc.nat(14), (lines, at, column) => {
      const file = new SourceFile('a.perp', lines.join('\n'));
      const row = Math.min(at, file.lines.length - 1);
      const place = { line: row, column: Math.min(column, file.lines[row]!.length) };
      const found = selectionsAt(file, place);
      const before = (a: typeof place, b: typeof place) =>
        a.line < b.line || (a.line === b.line && a.column <= b.column);
      for (const [i, each] of found.entries()) {
        expect(before(each.start, place) && before(place, each.end)).toBe(true);
        expect(each.end.column).toBeLessThanOrEqual(file.lines[each.end.line]!.length);
        const inner = found[i - 1];
        if (inner)
          expect(before(each.start, inner.start) && before(inner.end, each.end)).toBe(true);
      }
      expect(found.at(-1)!.start).toEqual({ line: 0, column: 0 });
    }),
  );
});
