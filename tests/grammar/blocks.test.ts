import { describe, expect, test } from 'vitest';
import { cutBlocks, opensBlock, readBlock, splitLines } from '../../grammar/blocks';
import type { LineSyntax } from '../../grammar/syntax';
import { blocksOf, faultsOf, meaning } from './reading';

const cut = (text: string): number[] => cutBlocks(splitLines(text));

/** The words of a block as a tree: `wall(length opening(from width))`. */
function tree(text: string): string {
  const say = (line: LineSyntax): string => {
    const word = line.key?.text ?? '?';
    return line.body.length ? `${word}(${line.body.map(say).join(' ')})` : word;
  };
  const { heading } = readBlock(splitLines(text));
  return heading ? say(heading) : '';
}

describe('cutting a text into blocks', () => {
  test('a word in the first column opens one', () => {
    expect(cut('perpend 1\n\nwall a\n  length 1 m\nwall b')).toEqual([0, 2, 4]);
  });

  test('comments, empty lines and texts do not', () => {
    expect(cut('wall a\n# comment\n\n"text"\n\t# c\nwall b')).toEqual([0, 5]);
  });

  test('the first line always does, whatever it is', () => {
    expect(cut('  wall a\nwall b')).toEqual([0, 1]);
    expect(cut('')).toEqual([0]);
    expect(cutBlocks([])).toEqual([]);
  });

  test('a word that stands only in blocks does not: it lost its indent', () => {
    expect(opensBlock('length 7.4 m')).toBe(false);
    expect(opensBlock('brick harwick-red')).toBe(true);
    expect(cut('wall a\nlength 1 m\nopening gate\nfrom left 1 m\nwall b')).toEqual([0, 4]);
  });

  test('a byte order mark takes no room', () => {
    expect(opensBlock('\ufeffwall a')).toBe(true);
    expect(opensBlock('\ufeff wall a')).toBe(false);
    expect(faultsOf('\ufeffperpend 1\nwall a\n  length 1 m\n')).toEqual([]);
  });

  test('lines end as editors end them', () => {
    expect(splitLines('a\nb\r\nc\rd\n')).toEqual(['a', 'b', 'c', 'd', '']);
    const said = meaning('wall a\n  length 1 m\nwall b\n');
    expect(meaning('wall a\r  length 1 m\rwall b\r')).toEqual(said);
    expect(meaning('wall a\r\n  length 1 m\r\nwall b\r\n')).toEqual(said);
  });
});

describe('putting lines under their headings', () => {
  test.each([
    [
      'by indentation',
      'wall a\n  opening b\n    height 1 m\n  height 2 m',
      'wall(opening(height) height)',
    ],
    [
      'by tabs',
      'wall a\n\topening b\n\t\theight 1 m\n\theight 2 m',
      'wall(opening(height) height)',
    ],
    ['by tabs and spaces', 'wall a\n\topening b\n      height 1 m', 'wall(opening(height))'],
    ['by hard spaces', 'wall a\n\u00a0opening b\n\u00a0\u00a0height 1 m', 'wall(opening(height))'],
    [
      'by word, deeper',
      'wall a\n  opening b\n    length 1 m\n    width 1 m',
      'wall(opening(width) length)',
    ],
    [
      'by word, shallower',
      'wall a\n  opening b\n  width 1 m\n  height 1 m',
      'wall(opening(width) height)',
    ],
    ['by word, in the first column', 'wall a\nopening b\nfrom left 1 m', 'wall(opening(from))'],
    [
      'an unknown heading keeps its own',
      'wall a\n  opning b\n    height 1 m',
      'wall(opning(height))',
    ],
    ['another unknown one too', 'wall a\n  gateway b\n    height 1 m', 'wall(gateway(height))'],
    ['an unknown line has none', 'wall a\n  lenght b\n    height 1 m', 'wall(lenght height)'],
    [
      'under an unknown block',
      'wal a\n  opening b\n    height 1 m\n  height 2 m',
      'wal(opening(height) height)',
    ],
  ])('%s', (_, text, wanted) => {
    expect(tree(text)).toBe(wanted);
  });

  test('the height of a misspelt opening is not the wall’s', () => {
    const text = 'wall a\n  openning b\n    height 5 courses\n  height 9 courses\n';
    expect(meaning(text)).toMatchObject([['wall', 'wall', {}, [['height', 'height', {}, []]]]]);
    expect(JSON.stringify(meaning(text))).toContain('"low":"9"');
  });
});

test('a block is read without the rest of its file', () => {
  const text = 'wall a\n  length 1,4 m\n# c\nwall b\n  height 2\n';
  const [first, second] = blocksOf(text);
  expect(first!.lines).toEqual(['wall a', '  length 1,4 m', '# c']);
  expect(second!.block.faults.map((fault) => fault.span.line)).toEqual([1]);
  expect(faultsOf(text).map((fault) => fault.place.line)).toEqual([1, 4]);
});

test('every line of a block is counted once, in its tree or among its comments', () => {
  const { block } = blocksOf('wall a # c\n  # d\n\n  length 1 m # e\n')[0]!;
  expect(block.syntax.lines).toHaveLength(2);
  expect(block.syntax.comments.map((comment) => comment.text)).toEqual(['# d']);
  expect(block.syntax.lines.map((line) => line.comment?.text)).toEqual(['# c', '# e']);
  expect(block.syntax.lineCount).toBe(5);
});
