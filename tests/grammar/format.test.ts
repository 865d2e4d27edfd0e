import { describe, expect, test } from 'vitest';
import { format, formatEdits } from '../../grammar/print';
import { withEdits } from '../harness/edits';
import { commentsOf, faultsOf, meaning } from './reading';

/** Formats, and asserts on the way what must hold for every text. */
function formatted(text: string): string {
  const after = format(text);
  expect(format(after)).toBe(after);
  expect(withEdits(text, formatEdits(text))).toBe(after);
  expect(formatEdits(after)).toEqual([]);
  expect(meaning(after)).toEqual(meaning(text));
  expect(commentsOf(after)).toEqual(commentsOf(text));
  return after;
}

/** The second line of a small wall, formatted, from its first word on. */
function lineOf(heading: string, line: string): string {
  return formatted(`${heading}\n  ${line}\n`)
    .split('\n')[1]!
    .trim()
    .replace(/^(\S+) +/, '$1 ');
}

describe('the spacing in a line', () => {
  test.each([
    ['wall a', 'footing 450x225mm', 'footing 450 x 225 mm'],
    ['wall a', 'footing 450 × 225 mm', 'footing 450 x 225 mm'],
    ['wall a', 'footing 450*225 mm', 'footing 450 x 225 mm'],
    ['wall a', 'length 7.40m', 'length 7.40 m'],
    ['wall a', 'length 6ft  8in', 'length 6 ft 8 in'],
    ['wall a', 'length 7   5/8in', 'length 7 5/8 in'],
    ['wall a', 'length 7½in', 'length 7½ in'],
    ['wall a', 'length 7 metres', 'length 7 metres'],
    ['wall a', 'thick 1 bricks', 'thick 1 bricks'],
    ['wall a', 'length   ?', 'length ?'],
    ['repair a', 'salvage 60 .. 75 %', 'salvage 60..75%'],
    ['repair a', 'salvage 60…75%', 'salvage 60..75%'],
    ['repair a', 'repoint 2.4m² raked 20mm', 'repoint 2.4 m2 raked 20 mm'],
    ['price', 'round £ 5', 'round £5'],
    ['price', 'round 5€', 'round 5 €'],
    ['price', 'least GBP  180', 'least GBP 180'],
    ['price', 'least £1,450.00', 'least £1,450.00'],
    ['labour', 'bricklayer £27.50/h', 'bricklayer £27.50 per h'],
    ['labour', 'gang 1 bricklayer+0.5 labourer', 'gang 1 bricklayer + 0.5 labourer'],
    ['output', 'facework 55 bricks/h', 'facework 55 bricks per h'],
    ['output', 'repoint 1.1 m²/h', 'repoint 1.1 m2 per h'],
    ['mix a', 'parts cement 1 ,lime 1,sand 6', 'parts cement 1, lime 1, sand 6'],
    ['material a', 'loose 1440kg/m³', 'loose 1440 kg/m3'],
    ['material a', 'pack 25kg bag at £ 6.40', 'pack 25 kg bag at £6.40'],
    ['firm "f"', 'phone “01632”', 'phone "01632"'],
    ['firm "f"', 'phone “6" \\ pipe”', 'phone "6\\" \\\\ pipe"'],
    ['firm "f"', 'phone "as   it  is"', 'phone "as   it  is"'],
    ['travel', 'run 2x38miles/day at £.45 per mile', 'run 2x38miles/day at £.45 per mile'],
    ['travel', 'run 2x38miles/day at £0.45/mile', 'run 2 x 38 miles per day at £0.45 per mile'],
  ])('%s: %s', (heading, line, wanted) => {
    expect(lineOf(heading, line)).toBe(wanted);
  });

  test.each([
    ['wall a', 'length  7,4   m'],
    ['wall a', 'length  7.4'],
    ['wall a', 'length  7.4m or   so'],
    ['wall a', 'length  ^^  7.4m'],
    ['wall a', 'dpc  "left   open  # no comment'],
    ['wall a', 'footing 450x225'],
    ['firm "f"', 'phone  “01632   5'],
    ['repair a', 'salvage 60 .. %'],
    ['job', 'date 2026-02-30'],
  ])('%s: %s stays as written, because it cannot be read', (heading, line) => {
    const [key, ...rest] = line.split(/ +(.*)/);
    expect(lineOf(heading, line)).toBe(`${key} ${rest.join('')}`);
  });

  test('a line of no known kind stays as written, word and all', () => {
    expect(formatted('wall a\n\tlenght   7.4m  !\n')).toBe('wall a\n  lenght   7.4m  !\n');
  });
});

describe('columns', () => {
  test('values of one level begin in one column', () => {
    const text = 'defaults\n coping-overhang 45 mm\n kerf 3 mm\n';
    expect(formatted(text)).toBe('defaults\n  coping-overhang   45 mm\n  kerf              3 mm\n');
  });

  test('a short block keeps the usual column', () => {
    expect(formatted('repair a\n in b\n')).toBe('repair a\n  in        b\n');
  });

  test('each level has its own', () => {
    const text = 'wall a\n length 1 m\n opening b\n  from left 1 m\n joints-open 3\n';
    expect(formatted(text)).toBe(
      'wall a\n  length    1 m\n  opening b\n    from    left 1 m\n  joints-open 3\n',
    );
  });

  test('a word of any length pushes nobody', () => {
    const trade = 'b'.repeat(60);
    expect(formatted(`labour\n ${trade} £1 per h\n mate £2 per h\n`)).toBe(
      `labour\n  ${trade}  £1 per h\n  mate      £2 per h\n`,
    );
  });

  test('a heading is no part of them', () => {
    expect(formatted('wall    a   "b"\n opening     c\n')).toBe('wall a "b"\n  opening c\n');
  });
});

describe('comments', () => {
  test('after lines stand in one column of the block', () => {
    const text = 'wall a #1\n length 1 m   #2\n height 2 m # 3   \n';
    expect(formatted(text)).toBe(
      [
        'wall a                                #1',
        '  length    1 m                       #2',
        '  height    2 m                       # 3',
        '',
      ].join('\n'),
    );
  });

  test('keep two spaces, and a long line pushes nobody', () => {
    const long = `"${'x'.repeat(40)}"`;
    const longest = `"${'x'.repeat(90)}"`;
    expect(formatted(`wall a ${long} # 1\n length 1 m # 2\n`)).toBe(
      `wall a ${long}  # 1\n  length    1 m${' '.repeat(36)}# 2\n`,
    );
    expect(formatted(`wall a ${longest} # 1\n length 1 m # 2\n`)).toBe(
      `wall a ${longest}  # 1\n  length    1 m                       # 2\n`,
    );
  });

  test('on their own stand as deep as the line that follows', () => {
    const text =
      '# top\nwall a\n# one\n length 1 m\n# two\n\n opening b\n# three\n  from left 1 m\n';
    expect(formatted(text)).toBe(
      '# top\nwall a\n  # one\n  length    1 m\n  # two\n\n  opening b\n    # three\n    from    left 1 m\n',
    );
  });

  test('at the end of a block belong to it when they are indented, else to what comes', () => {
    const text =
      'wall a\n opening b\n  from left 1 m\n  # of b\n # of a\n\n# of c\nwall c\n   # empty\n';
    expect(formatted(text)).toBe(
      'wall a\n  opening b\n    from    left 1 m\n    # of b\n  # of a\n\n# of c\nwall c\n  # empty\n',
    );
  });

  test('alone make a file', () => {
    expect(formatted('  # one\n\n\n# two')).toBe('# one\n\n# two\n');
  });
});

describe('empty lines', () => {
  test('are one at most, none at either end, and one after the edition', () => {
    expect(formatted('\n\nperpend 1\nuse uk\n\n \t\nwall a\n\n\n  length 1 m\n\n\n')).toBe(
      'perpend 1\n\nuse uk\n\nwall a\n\n  length    1 m\n',
    );
  });

  test('are not put in anywhere else', () => {
    expect(formatted('use uk\nuse us\nwall a\n')).toBe('use uk\nuse us\nwall a\n');
    expect(formatted('perpend 1\n# why\nuse uk\n')).toBe('perpend 1\n\n# why\nuse uk\n');
  });

  test('nothing stays nothing', () => {
    for (const text of ['', '\n', ' \t\r\n\r\n']) expect(formatted(text)).toBe('');
  });
});

describe('the ends of lines', () => {
  test.each([
    ['LF', 'wall a\n length 1 m', 'wall a\n  length    1 m\n'],
    ['CRLF', 'wall a\r\n length 1 m', 'wall a\r\n  length    1 m\r\n'],
    [
      'most of them, CRLF',
      'wall a\r\n length 1 m\n height 1 m\r\n',
      'wall a\r\n  length    1 m\r\n  height    1 m\r\n',
    ],
    [
      'most of them, LF',
      'wall a\n length 1 m\r\n height 1 m\n',
      'wall a\n  length    1 m\n  height    1 m\n',
    ],
    ['CR alone', 'wall a\r length 1 m\r', 'wall a\n  length    1 m\n'],
    ['none', 'wall  a', 'wall a\n'],
  ])('%s', (_, text, wanted) => expect(formatted(text)).toBe(wanted));

  test('a byte order mark stays at the beginning and goes elsewhere', () => {
    expect(formatted('\ufeff\n wall a\n\ufefflength 1 m')).toBe('\ufeffwall a\n  length    1 m\n');
    expect(formatted('\ufeff')).toBe('\ufeff');
  });
});

describe('indentation', () => {
  test('is the same for tabs, much and none', () => {
    const wanted = 'wall a\n  length    1 m\n  opening b\n    from    left 1 m\n';
    for (const text of [
      'wall a\n\tlength 1 m\n\topening b\n\t\tfrom left 1 m\n',
      'wall a\n      length 1 m\n      opening b\n               from left 1 m\n',
      'wall a\nlength 1 m\nopening b\nfrom left 1 m\n',
    ])
      expect(formatted(text)).toBe(wanted);
  });

  test('of lines that strayed is put right; what could be either stays said', () => {
    const text = 'wall a\n  opening b\n    length 7 m\n    width 1 m\n    height 3 courses\n';
    expect(faultsOf(text).map((fault) => fault.code)).toEqual(['indent-parted', 'indent-astray']);
    expect(faultsOf(formatted(text)).map((fault) => fault.code)).toEqual(['indent-parted']);
    const first = 'wall a\n height 1 m\nopening b\nwidth 1 m\n';
    expect(faultsOf(formatted(first))).toEqual([]);
  });

  test('under what is unknown keeps its steps', () => {
    expect(formatted('wal a\n    opening b\n         height 1 m\n    height  2m\n')).toBe(
      'wal a\n  opening b\n    height 1 m\n  height  2m\n',
    );
  });
});

describe('the edits of a text', () => {
  test('touch only the lines that change', () => {
    const edits = formatEdits('wall a\n  length    1 m\n  height 1 m\n\n\nwall b\n');
    expect(edits).toEqual([
      { startLine: 2, startColumn: 0, endLine: 2, endColumn: 12, text: '  height    1 m' },
      { startLine: 4, startColumn: 0, endLine: 5, endColumn: 0, text: '' },
    ]);
  });

  test('put in what is missing', () => {
    expect(formatEdits('perpend 1\nuse uk')).toEqual([
      { startLine: 1, startColumn: 0, endLine: 1, endColumn: 0, text: '\n' },
      { startLine: 1, startColumn: 6, endLine: 1, endColumn: 6, text: '\n' },
    ]);
  });
});
