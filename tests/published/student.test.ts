/** Student’s t: upper critical values, NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2. */
import { describe, expect, test } from 'vitest';
import { studentT } from '../../server/engine/firm/student';

const PROBABILITIES = [0.9, 0.95, 0.975, 0.99, 0.995];

const TABLE: Readonly<Record<number, readonly number[]>> = {
  1: [3.078, 6.314, 12.706, 31.821, 63.657],
  2: [1.886, 2.92, 4.303, 6.965, 9.925],
  3: [1.638, 2.353, 3.182, 4.541, 5.841],
  4: [1.533, 2.132, 2.776, 3.747, 4.604],
  5: [1.476, 2.015, 2.571, 3.365, 4.032],
  6: [1.44, 1.943, 2.447, 3.143, 3.707],
  9: [1.383, 1.833, 2.262, 2.821, 3.25],
  10: [1.372, 1.812, 2.228, 2.764, 3.169],
  19: [1.328, 1.729, 2.093, 2.539, 2.861],
  30: [1.31, 1.697, 2.042, 2.457, 2.75],
  40: [1.303, 1.684, 2.021, 2.423, 2.704],
  100: [1.29, 1.66, 1.984, 2.364, 2.626],
};

/** The last row of the table: of the normal distribution. */
const NORMAL = [1.282, 1.645, 1.96, 2.326, 2.576];

describe('Student’s t', () => {
  test.each(Object.entries(TABLE))('of %s degrees of freedom is that of the table', (n, row) => {
    row.forEach((value, i) => {
      expect(Math.abs(studentT(PROBABILITIES[i]!, Number(n)) - value)).toBeLessThan(0.00051);
    });
  });

  test('of very many is the normal distribution’s', () => {
    NORMAL.forEach((value, i) => {
      expect(Math.abs(studentT(PROBABILITIES[i]!, 1e9) - value)).toBeLessThan(0.003);
    });
  });

  test('of one is the tangent of a right angle’s part: Cauchy’s distribution', () => {
    for (const p of [0.6, 0.75, 0.9, 0.999])
      expect(studentT(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 6);
  });

  test.each([
    [0.5, 3],
    [1, 3],
    [0.9, 0],
    [Number.NaN, 3],
    [0.9, Number.NaN],
  ])('is no number where there is none: %s, %s', (p, n) => {
    expect(studentT(p, n)).toBeNaN();
  });
});
