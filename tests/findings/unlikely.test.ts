/** Measures that nobody builds: footings narrower than what they carry, cavities no tie reaches over, bands read backwards. */
import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { findingsIn, findingsOf, silent, tells } from './tells';

const wall = (lines: string, name = 'north') => jobOfWall({ name, height: '12 courses' }, lines);

describe('footing-narrow', () => {
  test('is told of a strip narrower than its wall', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick    red
          stands   held
          length   4490 mm
          height   12 courses
          footing  50 x 225 mm
                   ^^^^^^^^^^^ footing-narrow: This footing is narrower than what stands on it: a wall 102.5 mm thick.
      `,
      { ways: ['At least 125 x 225 mm, as wide as what it carries'] },
    );
    silent(wall('  footing 102.5 x 225 mm\n'), 'footing-narrow');
  });

  test('holds it against all skins of a wall: 102.5 + 75 + 100 = 277.5 mm', () => {
    const two = '  backing block-100 cavity 75 mm\n';
    const [found] = findingsOf('footing-narrow', wall(`${two}  footing 250 x 225 mm\n`));
    expect(found!.message).toContain('a wall 277.5 mm thick');
    silent(wall(`${two}  footing 300 x 225 mm\n`), 'footing-narrow');
  });

  test('is told of a pad smaller than its pier, whichever way it lies', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier gate
          brick    red
          size     2 x 2 bricks
          height   8 courses
          footing  100 x 100 x 300 mm
                   ^^^^^^^^^^^^^^^^^^ footing-narrow: a pier of 440 x 440 mm
      `,
      { ways: ['At least 450 x 450 x 300 mm, as wide as what it carries'] },
    );
    const pad = (footing: string) =>
      `perpend 1\nuse "firm.perp"\npier gate\n  brick red\n  size 2 x 1.5 bricks\n  height 8 courses\n  footing ${footing} mm\n`;
    silent(pad('440 x 327.5 x 300'), 'footing-narrow');
    silent(pad('327.5 x 440 x 300'), 'footing-narrow');
    expect(findingsIn(pad('400 x 400 x 300')).map((f) => f.code)).toContain('footing-narrow');
  });
});

describe('cavity', () => {
  test('is told of one wider than ties are made for (Approved Document A, table 5, from memory)', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick    red
          stands   held
          length   4490 mm
          height   12 courses
          backing  block-100 cavity 9 km
                                    ^^^^ cavity: wider than is built: 50 mm to 300 mm (Approved Document A
      `,
      { ways: ['A cavity of 300 mm'] },
    );
  });

  test('is told of a narrower one; is silent of one that is built, and without a cavity', () => {
    const about = (backing: string) => wall(`  backing ${backing}\n`);
    const found = findingsOf('cavity', about('block-100 cavity 20 mm'));
    expect(found.map((f) => f.message.includes('narrower than is built'))).toEqual([true]);
    for (const backing of ['block-100', 'block-100 cavity 50 mm', 'block-100 cavity 300 mm'])
      silent(about(backing), 'cavity');
  });
});

describe('band-off of a band told from its top', () => {
  test('says how it is read', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  12 courses
          band    engineering courses 8 to 3
                                      ^ band-off: counted from the ground up: this is read as courses 3 to 8
      `,
      { ways: ['Write courses 3 to 8'] },
    );
    silent(wall('  band engineering courses 3 to 8\n'), 'band-off');
    silent(wall('  band engineering courses 3\n'), 'band-off');
  });
});
