import { describe, expect, test } from 'vitest';
import { fitRun, type Row, sizeOf } from '../../server/engine/setting-out';
import { DE_SIZES, UK_SIZES } from '../published/sizes';
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
  test.each(UK_SIZES)('%d bricks: opening %d, panel %d, pier %d', (bricks, plus, co, minus) => {
    works(plus, bricks * 2, row(215, 10, 2));
    works(co, bricks * 2, row(215, 10, 1));
    if (minus !== undefined) works(minus, bricks * 2, row(215, 10, 0));
  });

  test('a millimetre either way does not work at the exact joint', () => {
    for (const [, plus, co] of UK_SIZES)
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
  test.each(DE_SIZES)('raster %d m: clear %d, outer %d', (raster, clear, outer) => {
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
