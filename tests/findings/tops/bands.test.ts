/** Bands, plinths and corbels that are not what their lines say. */
import { describe, expect, test } from 'vitest';
import { findingsIn, silent, tells } from '../tells';
import { wallWith } from './wall';

describe('band-off', () => {
  test('is told of courses above the wall, of the damp course, and of another band', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  4490 mm
        height  8 courses
        dpc     engineering 2 courses
        band    engineering courses 2 to 3
                                    ^ band-off: 1 course of this band is of the damp course or of a band before it already
        band    engineering courses 3 to 4
                                    ^ band-off: 1 course of this band
        band    engineering courses 8 to 9
                                         ^ band-off: reaches above the 8 courses of the wall
    `);
  });

  test('is told of a brick of another size', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick wide
        size   240 x 115 x 113 mm
        joint  10 mm
        price  £1 each
      wall north
        brick   red
        stands  held
        length  4490 mm
        height  8 courses
        band    wide courses 4
                ^^^^ band-off: of another size
    `);
  });

  test('is not told of bands clear of one another', () => {
    silent(
      wallWith(
        '  dpc engineering 2 courses\n  band engineering courses 3 to 4\n  band engineering courses 8\n',
      ),
      'band-off',
    );
  });

  test('twenty bands are enough', () => {
    const many = (n: number) =>
      findingsIn(wallWith('  band engineering courses 3\n'.repeat(n))).some(
        (f) => f.code === 'too-many',
      );
    expect([many(20), many(21)]).toEqual([false, true]);
  });
});

describe('plinth-off', () => {
  test('is told of a plinth that is no number of half bricks thicker', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          plinth  3 courses project 40 mm in engineering
                                    ^^^^^ plinth-off: no bricks are counted for it
      `,
      {
        ways: [
          'Let it stand out 1/2 brick, in front',
          'Let it stand out 1/4 brick, from both faces',
        ],
      },
    );
  });

  test('is not told of half a brick, a quarter from both faces, or as much in millimetres', () => {
    for (const out of [
      '1/2 brick',
      '1/2 brick front',
      '1/4 brick both',
      '112.5 mm',
      '56 mm both',
      '1 brick',
    ])
      silent(wallWith(`  plinth 3 courses project ${out}\n`), 'plinth-off');
  });
});

describe('corbel-far', () => {
  test('is told of courses laid out too far, each and together (BIA Technical Note 36A)', () => {
    // 65 / 2 = 32.5 is less than 102.5 / 3 = 34.2; half of 102.5 is 51.25.
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          corbel  1 course project 40 mm each
                                   ^^^^^ corbel-far: Each course may be laid out 32.5 mm over the one below, and here it is 40 mm (BIA
      `,
      { ways: ['30 mm each'] },
    );
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          corbel  3 courses project 25 mm each
                  ^^^^^^^^^ corbel-far: Together they may be laid out 51.3 mm from a wall 102.5 mm thick, and here they are 75 mm
      `,
      { ways: ['Lay out 2 courses'] },
    );
  });

  test('is not told of courses within both', () => {
    silent(wallWith('  corbel 2 courses project 25 mm each\n'), 'corbel-far');
  });
});
