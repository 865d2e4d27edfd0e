import { describe, expect, test } from 'vitest';
import { fitHeight, gaugeJoint, heightOf } from '../../server/engine/setting-out';
import { EXACT, LIMITS } from './fixtures';

const inch = 25.4;

describe('UK gauge', () => {
  test('four courses are 300 mm (Key skills resource sheet, Crown copyright 2000)', () => {
    expect(heightOf(4, 65, 10)).toBe(300);
    expect(gaugeJoint(4, 300, 65)).toBe(10);
  });

  test('900 mm is 12 courses (the same sheet asks it)', () => {
    const fit = fitHeight(900, 65, EXACT);
    expect(fit.works).toBe('exactly');
    expect(fit.pieces).toEqual({ wholes: 12, half: 0 });
  });

  test('a measured gauge tells the joint: 4 courses at 310 mm have beds of 12.5 (arithmetic)', () => {
    expect(gaugeJoint(4, 310, 65)).toBe(12.5);
    expect(gaugeJoint(0, 310, 65)).toBeNull();
  });

  test('a height between courses takes other beds or another height', () => {
    const fit = fitHeight(1240, 65, { ...LIMITS, least: 8, most: 12 });
    // 16 courses: 1240 / 16 - 65 = 12.5; 17: 7.94. Neither within 8 to 12.
    expect(fit.works).toBe('no');
    expect(fit.ways[0]).toEqual({ kind: 'length', wholes: 17, half: 0, length: 1275, change: 35 });
    expect(fit.ways.filter((w) => w.kind === 'length').map((w) => w.length)).toEqual([1275, 1200]);
    expect(fitHeight(1240, 65, LIMITS).ways[0]).toMatchObject({ wholes: 17, acceptable: true });
  });
});

describe('Belgian course: brick and bed, mean of ten bricks (klus-info.nl)', () => {
  test('ten bricks of 55 cm and a 1.0 cm joint are a course of 6.5 cm', () => {
    expect(heightOf(1, 550 / 10, 10)).toBe(65);
  });
});

describe('German courses (hausjournal.net): 8 DF = 6 NF = 4 of 2DF = 50 cm', () => {
  test.each([
    [8, 52, 10.5],
    [6, 71, 12 + 1 / 3],
    [4, 113, 12],
  ])('%d courses of %d mm bricks', (courses, height, bed) => {
    expect(heightOf(courses, height, bed)).toBeCloseTo(500, 9);
    expect(gaugeJoint(courses, 500, height)).toBeCloseTo(bed, 9);
  });
});

describe('US vertical coursing: BIA Technical Note 10B, Table 3 (Masonry Magazine, April 1994), whole-inch rows', () => {
  const feet = (ft: number, inches: number) => (ft * 12 + inches) * inch;
  // courses: [2C = 4 in, 3C = 8 in, 5C = 16 in, 1C = 4 in], as far as the scan prints them.
  const rows: [number, ...([number, number] | null)[]][] = [
    [3, [0, 6], [0, 8], null, [1, 0]],
    [6, [1, 0], [1, 4], null, [2, 0]],
    [10, [1, 8], null, [2, 8], [3, 4]],
    [12, [2, 0], [2, 8], null, [4, 0]],
    [20, [3, 4], null, [5, 4], [6, 8]],
    [30, [5, 0], [6, 8], [8, 0], [10, 0]],
    [36, [6, 0], [8, 0], null, [12, 0]],
    [48, [8, 0], [10, 8], null, [16, 0]],
  ];
  // Roman, modular, engineer modular and economy brick heights (BIA, by archtoolbox.com), and the
  // bed that makes each column's module: 0.41667 in for modular (brick catalogue), the rest by arithmetic.
  const columns = [
    { brick: 1.625, module: 2 },
    { brick: 2.25, module: 8 / 3 },
    { brick: 2.8125, module: 16 / 5 },
    { brick: 3.625, module: 4 },
  ];

  test.each(rows)('%d courses', (courses, ...printed) => {
    for (const [i, height] of printed.entries()) {
      if (!height) continue;
      const { brick, module } = columns[i]!;
      const bed = (module - brick) * inch;
      const limits = { least: bed, best: bed, most: bed, leastCut: 10 };
      expect(heightOf(courses, brick * inch, bed)).toBeCloseTo(feet(...height), 6);
      const fit = fitHeight(feet(...height), brick * inch, limits);
      expect(fit.pieces.wholes).toBe(courses);
      expect(fit.works).toBe('exactly');
    }
  });

  test('the bed for modular bricks at three courses to 8 in is 0.41667 in (brick catalogue)', () => {
    expect(gaugeJoint(3, 8 * inch, 2.25 * inch)! / inch).toBeCloseTo(0.41667, 5);
  });
});
