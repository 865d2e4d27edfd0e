import { describe, expect, test } from 'vitest';
import { hintsOf } from '../../server/engine/ide/hints';
import type { LineRange } from '../../server/engine/ide/types';
import { FILES, job, spaced } from './ask';

const ALL: LineRange = { first: 0, last: 10_000 };
const HEAD = 'perpend 1\njob "Orchard"\nuse "firm.perp"\n';

/** `line: text`, or `line:column text`. */
function hints(text: string, range = ALL, files = FILES): string[] {
  return hintsOf(job(text, files), range).map((h) => `${h.line}: ${spaced(h.text)}`);
}

describe('at the end of headings', () => {
  const text = `${HEAD}wall n\n  brick red\n  length 1790 mm\n  height 8 courses\n`;

  test('stands the price of the job with its tax', () => {
    expect(hints(text).find((h) => h.startsWith('1:'))).toMatch(/^1: £[\d,]+\.\d\d incl\. VAT$/);
  });

  test('stand the totals of a wall, the price first', () => {
    const found = hints(text).find((h) => h.startsWith('3:'))!;
    expect(found).toMatch(/^3: price £[\d,.]+ · 64 bricks · mortar [\d.]+ l · /);
    expect(found).toMatch(/· cost £[\d,.]+$/);
  });

  test('the shares of the blocks add up to the price before tax', () => {
    const two = `${text}wall m\n  brick red\n  length 2690 mm\n  height 4 courses\n`;
    const of = (line: string) => Number(/price £([\d,.]+)/.exec(line)![1]!.replaceAll(',', ''));
    const shares = hints(two)
      .filter((h) => h.includes('price'))
      .map(of);
    const net = job(two).price.price.value.toNumber();
    expect(shares).toHaveLength(2);
    expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(net, 6);
  });

  test('a price that is not complete says so', () => {
    expect(hints(`${text}wall m\n  length ?\n  height 4 courses\n`)[0]).toContain('not complete');
  });

  test('nothing stands at the headings of a firm’s file', () => {
    expect(hintsOf(job(FILES['firm.perp']!), ALL)).toEqual([]);
  });

  test('nothing stands at a job without work', () => {
    expect(hints(HEAD)).toEqual([]);
  });

  test('they stand after the last character, a comment included', () => {
    const [first] = hintsOf(job(text.replace('"Orchard"', '"Orchard"   # mine  ')), ALL);
    expect(first).toMatchObject({
      line: 1,
      column: 'job "Orchard"   # mine'.length,
      kind: 'total',
    });
  });
});

describe('at the end of lines', () => {
  const of = (lines: string, key: string) => {
    const text = `${HEAD}wall n\n  brick red\n${lines}`;
    const line = text.split('\n').findIndex((l) => l.trim().startsWith(key));
    return hints(text)
      .find((h) => h.startsWith(`${line}: `))
      ?.replace(/^\d+: /, '');
  };

  // A stopped length of n bricks is 225 n - 10 mm: the brick 215 mm, the joint 10 mm.
  test.each([
    ['1790 mm', '8 bricks, joints 10 mm'],
    ['1902.5 mm', '8½ bricks, joints 10 mm'],
    ['1.79 m', '8 bricks, joints 10 mm'],
  ])('a length of %s is %s', (length, wanted) => {
    expect(of(`  length ${length}\n  height 8 courses`, 'length')).toBe(wanted);
  });

  test('a length that no joint makes right says that there is a cut', () => {
    expect(of('  length 850 mm\n  height 8 courses', 'length')).toContain('with a cut');
  });

  test('a length parted by an opening is told stretch by stretch', () => {
    const lines =
      '  length 2802.5 mm\n  height 8 courses\n  opening o\n    from left 1115 mm\n    width 910 mm';
    expect(of(lines, 'length')).toMatch(/^5 \+ 3½ bricks, joints 10 mm$/);
  });

  // Four courses in 300 mm: Key skills resource sheet, Crown copyright 2000.
  test('courses are told as a height', () => {
    expect(of('  length 1790 mm\n  height 16 courses', 'height')).toBe('1.2 m');
  });

  test('a height is told in courses', () => {
    expect(of('  length 1790 mm\n  height 1.2 m', 'height')).toBe('16 courses');
  });

  test('so is the height of a pier in the wall', () => {
    const text = `${HEAD}wall n\n  brick red\n  length 3 m\n  height 8 courses\n  pier p\n    at left\n    size 2 x 2 bricks\n    height 12 courses`;
    expect(hints(text)).toContain('10: 0.9 m');
  });

  test('nothing stands at a line that is not known yet', () => {
    expect(of('  length ?\n  height 8 courses', 'length')).toBeUndefined();
  });

  test('they stand before a comment', () => {
    const text = `${HEAD}wall n\n  brick red\n  length 1790 mm   # paced\n  height 8 courses`;
    const found = hintsOf(job(text), ALL).find((h) => h.line === 5);
    expect(found).toMatchObject({ column: '  length 1790 mm'.length, kind: 'line' });
  });
});

test('only the lines asked for are answered', () => {
  const walls = Array.from(
    { length: 30 },
    (_, i) => `wall w${i}\n  brick red\n  length 1790 mm\n  height 8 courses\n`,
  ).join('');
  const found = hints(HEAD + walls, { first: 43, last: 46 });
  expect(found.map((h) => h.slice(0, 3))).toEqual(['43:', '45:', '46:']);
});
