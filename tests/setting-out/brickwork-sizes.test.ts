import { describe, expect, test } from 'vitest';
import type { Row } from '../../server/engine/setting-out';
import { fitRun, sizeOf } from '../../server/engine/setting-out';
import { EXACT } from './fixtures';

/** Widths made of whole and half bricks as three countries publish them. */

const row = (piece: number, joint: number, endJoints: 0 | 1 | 2): Row => ({
  piece,
  half: (piece - joint) / 2,
  endJoints,
  limits: { least: joint, best: joint, most: joint, leastCut: joint },
});

function works(length: number, halves: number, of: Row) {
  const fit = fitRun({ ...of, length });
  expect(sizeOf(of, halves)).toBeCloseTo(length, 6);
  expect(fit.works).toBe('exactly');
  expect(fit.pieces).toEqual({ wholes: Math.floor(halves / 2), half: halves % 2 });
}

describe('UK 215 mm bricks: Technical Information Sheet 9, Table 1 (CO+, CO, CO-)', () => {
  // Printed rows; the sheet's scan cuts off CO- at 39 1/2 bricks.
  const printed: [bricks: number, opening: number, coordinating: number, pier: number | null][] = [
    [0.5, 122.5, 112.5, 102.5],
    [1, 235, 225, 215],
    [1.5, 347.5, 337.5, 327.5],
    [2, 460, 450, 440],
    [2.5, 572.5, 562.5, 552.5],
    [3, 685, 675, 665],
    [3.5, 797.5, 787.5, 777.5],
    [4, 910, 900, 890],
    [4.5, 1022.5, 1012.5, 1002.5],
    [5, 1135, 1125, 1115],
    [5.5, 1247.5, 1237.5, 1227.5],
    [6, 1360, 1350, 1340],
    [34, 7660, 7650, 7640],
    [39.5, 8897.5, 8887.5, null],
    [67.5, 15197.5, 15187.5, 15177.5],
    [72.5, 16322.5, 16312.5, 16302.5],
  ];

  test.each(printed)('%d bricks: opening %d, panel %d, pier %d', (bricks, plus, co, minus) => {
    works(plus, bricks * 2, row(215, 10, 2));
    works(co, bricks * 2, row(215, 10, 1));
    if (minus !== null) works(minus, bricks * 2, row(215, 10, 0));
  });

  test('a millimetre either way does not work at the exact joint', () => {
    for (const [, plus, co] of printed)
      for (const by of [-1, 1]) {
        expect(fitRun({ ...row(215, 10, 2), length: plus + by }).works).toBe('no');
        expect(fitRun({ ...row(215, 10, 1), length: co + by }).works).toBe('no');
      }
  });

  test('pier faces 215, 327.5 and 440 mm are one, one and a half and two bricks', () => {
    for (const [length, halves] of [
      [215, 2],
      [327.5, 3],
      [440, 4],
    ] as const)
      works(length, halves, { ...row(215, 10, 0), limits: EXACT });
  });
});

describe('German octametric sizes: DIN 4172 (outer n x 12.5 - 1, opening n x 12.5 + 1, projection n x 12.5 cm)', () => {
  // Printed rows of raster, clear and outer sizes, m; the printed outer size at 1.375 contradicts
  // the rule of its own table and is left out.
  const printed: [number, number, number][] = [
    [1.0, 1.01, 0.99],
    [1.125, 1.135, 1.115],
    [1.25, 1.26, 1.24],
    [1.5, 1.51, 1.49],
    [1.625, 1.635, 1.615],
    [1.75, 1.76, 1.74],
    [1.875, 1.885, 1.865],
    [2.0, 2.01, 1.99],
  ];

  test.each(printed)('raster %d m: clear %d, outer %d', (raster, clear, outer) => {
    const halves = Math.round(raster / 0.125);
    works(raster * 1000, halves, row(240, 10, 1));
    works(clear * 1000, halves, row(240, 10, 2));
    works(outer * 1000, halves, row(240, 10, 0));
  });

  test('a wall of 2.50 m raster is 2.49 m', () => works(2490, 20, row(240, 10, 0)));

  test('door openings of DIN 18100: 62.5 -> 63.5 cm and so on to 112.5 -> 113.5', () => {
    for (const raster of [625, 750, 875, 1000, 1125])
      works(raster + 10, raster / 125, row(240, 10, 2));
  });
});

describe('US modular bricks, 7 5/8 in with 3/8 in joints', () => {
  const inch = 25.4;
  const brick = 7.625 * inch;
  const joint = 0.375 * inch;

  test('three bricks are 23 5/8 in, not 24; an opening takes one more joint (brick catalogue)', () => {
    works(23.625 * inch, 6, row(brick, joint, 0));
    works(24.375 * inch, 6, row(brick, joint, 2));
  });

  test('a wall of 6\'-8" works on the 4 in module and one of 6\'-6" does not (Beall, Masonry and Concrete)', () => {
    const limits = { least: 0.25 * inch, best: joint, most: 0.5 * inch, leastCut: 50 };
    works(80 * inch, 20, row(brick, joint, 1));
    expect(fitRun({ ...row(brick, joint, 1), limits, length: 78 * inch }).works).toBe('no');
  });
});
