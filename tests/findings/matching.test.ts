/** What is told of the brick that is chosen for a repair beside others that might be bought. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, findingsIn, silent, tells } from './tells';

const BRICKS = `brick tall "Tall one"
  size   215 x 102.5 x 67 mm
  price  £1 each
brick low "Low one"
  size   215 x 102.5 x 60 mm
  price  £1 each
`;
const FILES = { 'firm.perp': FIRM + BRICKS };

describe('match-open', () => {
  test('is told where bricks are compared and none is chosen; each can be', () => {
    // The red one has 300 / 4 = 75 mm a course: 10 mm for itself, 8 for the tall one, 15 for the low one. The first two are
    // within T2 (2 mm of height) and cost the same, so that the tall one, which is named before, ranks before.
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick       red
          rebuild     900 mm x 4 courses
          candidates  low, tall, red
          ^^^^^^^^^^^^^^^^^^^^^^^^^^ match-open: None of these is chosen, so that the price has the brick of the wall in it. Tall one ranks first (gauge, size, price).
      `,
      { files: FILES, ways: ['Buy Tall one', 'Buy Red facing', 'Buy Low one'] },
    );
  });

  test('is not told once a match line says which', () => {
    silent(
      'perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  rebuild 9 bricks\n  match tall\n  candidates low\n',
      'match-open',
      FILES,
    );
  });
});

describe('match-worse', () => {
  const worse = (gauge: string, match: string, more = '') =>
    `perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  gauge ${gauge}\n  rebuild 900 mm x 4 courses\n  match ${match}\n  candidates tall, low, red\n${more}`;

  test('is told of a chosen brick that keeps the gauge less well than another', () => {
    // 320 / 4 is 80: 20 mm for the low one, 13 for the tall one, 15 for the red one.
    const found = findingsIn(worse('4 courses 320 mm', 'low'), FILES);
    const remark = found.find((f) => f.code === 'match-worse')!;
    expect(remark.severity).toBe('information');
    expect(remark.message).toContain(
      'Low one needs a bed joint of 20 mm to keep the gauge, and Tall one needs a bed joint of 13 mm; 8 mm to 13 mm is what anyone would accept.',
    );
    expect(remark.ways.map((way) => way.title)).toEqual(['Buy Tall one']);
    tells(
      `
        perpend 1
        use "firm.perp"
        repair r
          brick       red
          gauge       4 courses 348 mm
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: Low one needs a bed joint of 27 mm
          rebuild     900 mm x 4 courses
          match       low
                      ^^^ match-worse: Low one needs a bed joint of 27 mm to keep the gauge, and Tall one needs a bed joint of 20 mm
          candidates  tall, red
      `,
      {
        files: FILES,
        ways: [
          'Keep the gauge with bed joints of 27 mm, wider or tighter than anyone would accept',
          'Buy Tall one',
        ],
      },
    );
  });

  test('is not told of one that does as well, nor of joints that anyone would accept, nor where that is decided', () => {
    silent(worse('4 courses 320 mm', 'tall'), 'match-worse', FILES);
    silent(worse('4 courses 310 mm', 'red'), 'match-worse', FILES);
    silent(worse('4 courses 320 mm', 'low', '  fit gauge joints\n'), 'match-worse', FILES);
  });
});

describe('lines of a comparison that compare nothing', () => {
  test('are told where no brick is bought', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair r
          brick       red
          repoint     2 m2
          candidates  tall, low
          ^^^^^^^^^^^^^^^^^^^^^ line-idle: No brick is bought for this repair
      `,
      { files: FILES },
    );
    tells(
      `
        perpend 1
        use "firm.perp"
        repair r
          brick     red
          rebuild   9 bricks
          measured  214 x 102 x 66 mm of 10 bricks
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ line-idle: No other brick is bought that could be compared with it
      `,
      { files: FILES },
    );
  });

  test('a name that no file gives is told as everywhere', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair r
          brick       red
          rebuild     9 bricks
          match       tall
          candidates  tal, low
                      ^^^ name-unknown
      `,
      { files: FILES, ways: ['Write tall'] },
    );
  });
});

describe('what the client is told of the brick that is chosen', () => {
  const saysOf = (lines: string, more = '') => {
    const text = `perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  rebuild 900 mm x 4 courses\n${lines}`;
    return jobOf(text, { 'firm.perp': FIRM + BRICKS + more }).works[0]!.facts.says;
  };
  const EYE =
    'Colour and texture are matched by eye, and no brick is an exact match: new work looks newer until it has weathered. Ask to see a sample panel first.';

  test('is how courses keep level, and that no brick is an exact match', () => {
    expect(saysOf('  gauge 4 courses 310 mm\n  match tall\n')).toEqual([
      expect.stringContaining('Take down'),
      'New bricks are Tall one.',
      'New bricks are 2 mm higher than the old ones; courses are kept level with bed joints of 10.5 mm.',
      EYE,
    ]);
    expect(saysOf('  gauge 4 courses 348 mm\n  match low\n  candidates tall\n')).toContain(
      'New bricks are 5 mm lower than the old ones; courses keep level only with bed joints of 27 mm, wider than is usual, and that shows.',
    );
  });

  test('is nothing of their height where they are as high, or cut to a height that does', () => {
    const twin = 'brick twin "Twin"\n  size 215 x 102.5 x 65 mm\n  price £1 each\n';
    expect(saysOf('  match twin\n', twin).slice(1)).toEqual(['New bricks are Twin.', EYE]);
    const high = 'brick high "High"\n  size 215 x 102.5 x 73 mm\n  price £1 each\n';
    const cut = saysOf('  gauge 4 courses 300 mm\n  match high\n  fit gauge cut 65 mm\n', high);
    expect(cut.slice(2)).toEqual(['Cut new bricks to 65 mm high, so that courses line up.', EYE]);
  });

  test('is the words that are said of their look, as they are', () => {
    const old =
      'brick old "Old stock"\n  size 215 x 102.5 x 65 mm\n  price £1 each\n  colour "yellow, sooted."\n  texture "worn"\n  made reclaimed\n';
    expect(saysOf('  match old\n', old)).toContain(
      'They are described as yellow, sooted; worn; reclaimed.',
    );
  });

  test('is nothing where the brick of the wall is bought again, or none', () => {
    expect(saysOf('  match red\n')).not.toContain(EYE);
    expect(saysOf('  candidates tall\n')).not.toContain(EYE);
    expect(saysOf('  match tall\n  salvage 100%\n')).not.toContain(EYE);
  });

  test('is what the firm says of every match, where it says it in its own words', () => {
    const own = 'defaults\n  match-say "Look at ours in Mill Lane."\n';
    expect(saysOf('  match tall\n', own).at(-1)).toBe('Look at ours in Mill Lane.');
  });
});
