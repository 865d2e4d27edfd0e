/** What is told of options: lines that change nothing, and what an option brings up. */
import { describe, expect, test } from 'vitest';
import { findingsIn, findingsOf, silent, tells } from '../tells';

describe('change-unknown', () => {
  test('is told where nothing has that name', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier post
          brick   red
          size    1.5 x 1.5 bricks
          height  6 courses
        option o
          change pots height 8 courses
                 ^^^^ change-unknown: No wall, pier, repair, opening or cost of this file is called “pots”. Did you mean “post”?
      `,
      { ways: ['Write post'] },
    );
  });

  test('and where two things have it', () => {
    const text = `perpend 1
use "firm.perp"
pier post
  brick   red
  size    1.5 x 1.5 bricks
  height  6 courses
cost post "Post" 1 at £5
option o
  leave-out post
`;
    const [found] = findingsOf('change-unknown', text);
    expect(found!.message).toMatch(/^2 things are called “post” \(pier and cost\)/);
    expect(found!.place).toMatchObject({ line: 8, start: 12, end: 16 });
    expect(found!.related.map((r) => r.place.line)).toEqual([2, 6]);
  });
});

describe('change-unfit', () => {
  const POST = `perpend 1
use "firm.perp"
pier post
  brick   red
  size    1.5 x 1.5 bricks
  height  6 courses
`;

  test('is told where the line is none of that block', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier post
          brick   red
          size    1.5 x 1.5 bricks
          height  6 courses
        option o
          change post heigth 8 courses
                      ^^^^^^ change-unfit: “heigth” is no line of pier. Did you mean “height”?
      `,
      { ways: ['Write height'] },
    );
  });

  test.each([
    ['leave-out post coping', 'has no line “coping” that could be left out'],
    ['change post note "x"', 'several lines “note”'],
    ['change wide opening gate', 'has lines of its own'],
  ])('and for %s', (line, says) => {
    const wide = 'wall wide\n  brick red\n  length 3590 mm\n  height 2 courses\n';
    const text = `${POST}  note "a"\n  note "b"\n${wide}option o\n  ${line}\n`;
    const found = findingsOf('change-unfit', text);
    expect(found.map((f) => f.message)).toEqual([expect.stringContaining(says)]);
  });

  test('a value that cannot be read is told in the option, with its ways out', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier post
          brick   red
          size    1.5 x 1.5 bricks
          height  6 courses
        option o
          change post height 8 corses
                               ^^^^^^ unit-wrong
      `,
      { ways: ['Write courses'] },
    );
  });

  test('a name in it that no file gives is told there', () => {
    const text = `${POST}option o\n  change post brick rad\n`;
    const [found] = findingsOf('option-error', text);
    expect(found!.place).toMatchObject({ line: 7, start: 20, end: 23 });
    expect(found!.message).toContain('With the option o: No brick is called “rad”');
  });
});

describe('option-idle', () => {
  test('is told of an option that changes nothing', () => {
    tells(`
      perpend 1
      use "firm.perp"
      pier post
        brick   red
        size    1.5 x 1.5 bricks
        height  6 courses
      option o "Nothing yet"
      ^^^^^^^^^^^^^^^^^^^^^^ option-idle: The option o changes nothing
    `);
  });

  test('is not told once a block is in it', () => {
    silent(
      'perpend 1\nuse "firm.perp"\noption o\ncost skip "Skip" 1 at £9\n  option o\n',
      'option-idle',
    );
  });
});

describe('option-error and option-brings', () => {
  const WALL = `perpend 1
use "firm.perp"
wall north
  brick   red
  length  2240 mm
  height  4 courses
  thick   1/2 brick
`;

  test('what an option makes wrong is told at its line, and no more of what was there', () => {
    const text = `${WALL}option o\n  change  north height 40 courses\n`;
    const all = findingsIn(text);
    const brought = all.filter((f) => f.code === 'option-brings');
    expect(brought.map((f) => f.place.line)).toContain(8);
    expect(
      brought.some((f) =>
        /^With the option o: .*than a free-standing wall|With the option o: .*free-standing/.test(
          f.message,
        ),
      ),
    ).toBe(true);
    expect(all.filter((f) => f.code === 'height-over')).toEqual([]);
  });

  test('an error that comes of it elsewhere is told at the line that brings it', () => {
    const text = `${WALL}  opening gate\n    from   left 450 mm\n    width  670 mm\noption o\n  change north length 900 mm\n`;
    const found = findingsOf('option-error', text);
    expect(found.length).toBeGreaterThan(0);
    for (const each of found) expect(each.place.line).toBe(11);
    expect(found[0]!.message).toMatch(/^With the option o: /);
  });

  test('a caution that comes of it is told too', () => {
    const text = `${WALL}option o\n  change north stands retaining\n`;
    const told = findingsOf('option-brings', text);
    expect(told.map((f) => f.message)).toEqual([
      expect.stringMatching(/^With the option o: A wall that holds back soil: /),
    ]);
    expect(told[0]!.place).toMatchObject({ line: 8, start: 15, end: 31 });
  });

  test('work that is only done with an option has its own findings, at its own lines', () => {
    const tall = 'wall south\n  brick red\n  length 2240 mm\n  height 30 courses\n';
    const found = (text: string) => findingsOf('height-over', text);
    const plain = found(WALL + tall);
    const only = found(`${WALL}${tall}  option o\noption o\n`);
    expect(plain).toHaveLength(1);
    expect(only).toEqual(plain);
  });
});

describe('an option that no block gives', () => {
  test('is told where it is named', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier post
          brick   red
          size    1.5 x 1.5 bricks
          height  6 courses
        cost skip "Skip" 1 at £9
          option ope
                 ^^^ name-unknown: No option is called “ope”
        option one
          instead-of on
                     ^^ name-unknown
          change post height 8 courses
      `,
      { ways: ['Write one', 'Write one'] },
    );
  });
});

describe('options-many', () => {
  test('is told of the first that is not priced', () => {
    const many = Array.from(
      { length: 34 },
      (_, i) => `option o-${i}\n  change post height 8 courses\n`,
    ).join('');
    const text = `perpend 1\nuse "firm.perp"\npier post\n  brick red\n  size 1.5 x 1.5 bricks\n  height 6 courses\n${many}`;
    const found = findingsOf('options-many', text);
    expect(found.map((f) => f.place.line)).toEqual([6 + 64]);
  });
});
