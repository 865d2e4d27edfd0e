/** Heads and sills whose bricks or height do not come out whole, or are of another brick. */
import { describe, expect, test } from 'vitest';
import { findingsIn, silent, tells } from '../tells';
import { windowWith } from './window';

describe('head-height', () => {
  test('is told of a lintel between courses, and of heights that are whole ones', () => {
    // (100 + 10) / 75 is a course and a half: 150 - 110 = 40 mm are left, and a bed of 10 in them.
    tells(
      windowWith(`    bearing 150 mm
    lintel  100 x 100 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^ head-height: A lintel 100 mm high does not work in courses of 75 mm: with its bed it is 40 mm short of 2 courses. Bricks cut to 30 mm high
`),
      {
        ways: [
          'A lintel 65 mm high',
          'A lintel 140 mm high',
          'Keep it, with bricks cut to 30 mm on it',
        ],
      },
    );
  });

  test('is told of bricks on edge, a course and a half high, where soldiers are three courses', () => {
    tells(
      windowWith(`    bearing 150 mm
    lintel  angle slab
    head    brick-on-edge
    ^^^^^^^^^^^^^^^^^^^^^ head-height: A course of bricks on edge does not work in courses of 75 mm: with its bed it is 37.5 mm short of 2 courses
`),
      { ways: ['Soldiers instead', 'Keep it, with bricks cut to 27.5 mm on it'] },
    );
    expect(2 * 75 - (102.5 + 10)).toBe(37.5);
    expect(3 * 75 - (215 + 10)).toBe(0);
  });

  test('is not told of what is decided, or within the beds that are accepted', () => {
    const kept = '    lintel 100 x 100 mm slab\n    fit lintel-height cut\n';
    silent(windowWith(kept), 'head-height');
    silent(windowWith(kept), 'fit-idle');
    silent(windowWith('    lintel 100 x 67 mm slab\n'), 'head-height');
  });

  test('a decision that answers nothing is told', () => {
    tells(
      windowWith(`    bearing 150 mm
    lintel  100 x 65 mm slab
    fit     lintel-height cut
    ^^^^^^^^^^^^^^^^^^^^^^^^^ fit-idle: works without a decision
`),
      { ways: ['Take the line out'] },
    );
  });
});

describe('fit-head', () => {
  const slit = (lines: string) => `perpend 1
use "firm.perp"
wall north
  brick   red
  stands  held
  length  1227.5 mm
  height  10 courses
  opening slit
    from     left 440 mm
    width    347.5 mm
    sill     2 courses
    height   4 courses
    lintel   100 x 65 mm slab
${lines}`;

  test('is told of a sill that bricks on edge do not fill, with what would', () => {
    // By hand: 4 x 75 and a joint at either end leave 27.5; 5 x 75 + 10 is 37.5 too long; 4 spread out leave (347.5 - 260) / 5.
    tells(
      slit(`    bearing  150 mm
    subsill  brick-on-edge
    ^^^^^^^^^^^^^^^^^^^^^^ fit-head: Bricks on edge do not fill 347.5 mm: each takes 75 mm with its joint; 4 bricks on edge leave a gap of 27.5 mm, 5 are 37.5 mm too long, and 4 spread out have joints of 17.5 mm
`),
      {
        ways: [
          '3 whole bricks on edge and 2 cuts of 50 mm at the middle, joints of 8.8 mm',
          'Make the opening 310 mm wide: 4 in whole bricks',
          'Make the opening 385 mm wide: 5 in whole bricks',
          '4 bricks on edge with joints of 17.5 mm, wider or tighter than anyone would accept',
        ],
      },
    );
  });

  test('is told of soldiers, whose lintel may bear further', () => {
    // 347.5 + 2 x 140 = 627.5, the joints at its ends being the wall’s: 8 take 8 x 75 - 10 = 590, and 9 take 665.
    // By hand: 8 spread out have joints of (627.5 - 8 x 65) / 7 = 15.4; 7 whole and 2 of 50 have (627.5 - 555) / 8 = 9.1.
    tells(
      slit(`    bearing  140 mm
    head     soldier
    ^^^^^^^^^^^^^^^^ fit-head: Soldiers do not fill 627.5 mm
`),
      {
        ways: [
          'A bearing of 121.3 mm: 8 in whole bricks',
          'A bearing of 158.8 mm: 9 in whole bricks',
          '7 whole soldiers and 2 cuts of 50 mm at the middle, joints of 9.1 mm',
          '8 soldiers with joints of 15.4 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    silent(slit('    head     soldier\n    bearing  120 mm\n'), 'fit-head');
  });
});

describe('head-brick', () => {
  const small = 'brick small\n  size 190 x 90 x 50 mm\n  joint 10 mm\n  price £1 each\n';

  test('is told of a head in a brick of another size', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick small
        size   190 x 90 x 50 mm
        joint  10 mm
        price  £1 each
      wall north
        brick   red
        stands  held
        length  2240 mm
        height  14 courses
        opening window
          from    left 665 mm
          width   910 mm
          sill    2 courses
          height  4 courses
          head    segmental brick small rise 130 mm
                                  ^^^^^ head-brick: small is of another size than the wall’s brick
    `);
  });

  test('is not told of one of the same size, nor of the wall’s own', () => {
    for (const lines of ['    head soldier brick engineering\n', '    head soldier\n'])
      silent(windowWith(lines), 'head-brick');
    silent(windowWith('    subsill brick-on-edge brick engineering\n'), 'head-brick');
    expect(
      findingsIn(
        windowWith('    subsill brick-on-edge brick small\n').replace(
          'wall north',
          `${small}wall north`,
        ),
      ).map((f) => f.code),
    ).toContain('head-brick');
  });

  test('says that no line can tell it how many there are', () => {
    const text = windowWith('    subsill brick-on-edge brick small\n').replace(
      'wall north',
      `${small}wall north`,
    );
    const found = findingsIn(text).find((f) => f.code === 'head-brick');
    expect(found!.message).toContain('No line can say how many it really takes');
  });
});
