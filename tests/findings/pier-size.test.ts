import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { afterWay, FIRM, findingsIn, findingsOf, silent, tells } from './tells';

const pier = (size: string, use = '"firm.perp"') =>
  `perpend 1\nuse ${use}\npier g\n  ${use === 'us' ? 'brick modular' : 'brick red'}\n  size ${size}\n  height 4 courses\n`;

describe('pier-size', () => {
  test('is told of a size in lengths that its bricks do not make, and offers the bricks', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        pier gate
          brick   red
          size    340 x 445 mm
                  ^^^^^^^^^^^^ pier-size: 1.5 x 2 bricks make 327.5 x 440 mm; this is up to 12.5 mm off
          height  12 courses
      `,
      { ways: ['Make it 1.5 x 2 bricks'] },
    );
    // By hand: so many halves of 112.5 mm, less a joint of 10.
    expect([3 * 112.5 - 10, 4 * 112.5 - 10]).toEqual([327.5, 440]);
    expect([340 - 327.5, 445 - 440]).toEqual([12.5, 5]);
    expect(found!.severity).toBe('warning');
  });

  test('is a hint where no more is off than is lost in the joints', () => {
    const severity = (size: string) =>
      findingsIn(pier(size)).find((f) => f.code === 'pier-size')?.severity;
    expect(severity('330 x 330 mm')).toBe('hint');
    expect(severity('327.5 x 445 mm')).toBe('hint');
    expect(severity('327.5 x 446 mm')).toBe('warning');
  });

  test('how much is lost in the joints is a line of the library, or of a firm', () => {
    const severity = (size: string, use: string, line = '') =>
      jobOf(pier(size, use).replace('pier g', `${line}pier g`)).findings.find(
        (f) => f.code === 'pier-size',
      )?.severity;
    const brick = 'brick red\n  size 215 x 102.5 x 65 mm\n  gauge 4 courses 300 mm\n';
    expect(severity('330 x 330 mm', 'uk', brick)).toBe('hint');
    expect(severity('330 x 330 mm', 'uk', `${brick}defaults\n  pier-nominal 2 mm\n`)).toBe(
      'warning',
    );
    // A nominal size takes in a joint of 3/8 in (BIA Technical Note 10, from memory): 11 5/8 and 15 5/8 in.
    expect(severity('12 x 16 in', 'us')).toBe('hint');
    expect(severity('12 1/4 x 16 in', 'us')).toBe('warning');
  });

  test('counts the bricks it says', () => {
    const bricks = (size: string) =>
      jobOf(pier(size), { 'firm.perp': FIRM }).works[0]!.needs.bricks[0]!.bricks.value.toFixed();
    expect(bricks('340 x 445 mm')).toBe(bricks('1.5 x 2 bricks'));
  });

  test('is told of a pier in a wall, which then takes its place by the bricks', () => {
    const text =
      'perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands held\n  length 2015 mm\n  height 8 courses\n  pier p\n    at left\n    size 340 x 327.5 mm\n';
    const [found] = findingsOf('pier-size', text);
    expect(found!.message).toContain('1.5 x 1.5 bricks make 327.5 x 327.5 mm');
    silent(afterWay(text, found!.ways[0]!.edits), 'pier-size');
  });

  test('is an error of bricks that are no halves, and such a pier is not counted', () => {
    const found = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  2015 mm
        height  8 courses
        pier p
          at    left
          size  1.25 x 1.5 bricks
          ^^^^^^^^^^^^^^^^^^^^^^^ pier-size: so many half bricks each way
      pier gate
        brick   red
        size    1.5 x 1.75 bricks
        ^^^^^^^^^^^^^^^^^^^^^^^^^ pier-size: This one is left out
        ^^^^^^^^^^^^^^^^^^^^^^^^^ incomplete: the size of the pier gate is not known
        height  4 courses
    `);
    const sizes = found.filter((f) => f.code === 'pier-size');
    expect(sizes.map((f) => f.severity)).toEqual(['error', 'error']);
  });

  test('is not told of sizes in half bricks, nor of lengths that are just what they make', () => {
    for (const size of ['1 x 1 bricks', '1.5 x 2 bricks', '327.5 x 327.5 mm', '440 x 440 mm'])
      silent(pier(size), 'pier-size');
    // An American modular brick of 7 5/8 in and a joint of 3/8: one and a half are 11 5/8 in, two are 15 5/8.
    silent(pier('11 5/8 x 15 5/8 in', 'us'), 'pier-size');
    expect(() => silent(pier('12 x 16 in', 'us'), 'pier-size')).toThrow();
  });
});
