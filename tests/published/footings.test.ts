/** Stepped footings: NHBC Standards 4.3.8, Sloping ground and stepped foundations, table 3. */
import { describe, expect, test } from 'vitest';
import { figure, jobOf } from '../examples/engine';

const wall = (courses: number, depth: number) =>
  jobOf(
    `use uk\n\nwall w\n  stands held\n  length 6740 mm\n  height 12 courses\n  ground steps at 3375 mm down ${courses} courses\n  footing 600 x ${depth} mm\n`,
  );

/** Concrete that the lap takes, by what is in the footing over the plain strip, as a length. */
const lap = (courses: number, depth: number) =>
  ((figure(wall(courses, depth), 'w.concrete') - 0.6 * depth * 6.74) * 1e6) / (600 * courses * 75);

describe('the overlap of a strip foundation is no less than 2 x S, T, or 300 mm', () => {
  test.each([
    [1, 200, 300],
    [2, 200, 300],
    [2, 350, 350],
    [3, 225, 450],
  ])('S of %d courses of 75 mm, T %d mm: %d mm', (courses, depth, wanted) => {
    expect(lap(courses, depth)).toBeCloseTo(wanted, 3);
  });
});

describe('the height of the step is no more than the thickness of the foundation', () => {
  const told = (courses: number, depth: number) =>
    wall(courses, depth).findings.some((f) => f.code === 'footing-step');
  test('three courses on 225 mm, not four', () => {
    expect([told(3, 225), told(4, 225)]).toEqual([false, true]);
  });
});
