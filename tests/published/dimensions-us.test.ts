/** Vertical coursing of BIA Technical Note 10B, Table 3 (Masonry Magazine, April 1994, p. 25), and modular lengths. */
import { describe, expect, test } from 'vitest';
import { figure, findingCodes, jobOf } from '../examples/engine';

/** Courses, and their height in inches: whole-inch rows of the table, by brick of the library. */
const COURSING: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  // 2 courses 4 in
  roman: [
    [3, 6],
    [6, 12],
    [10, 20],
    [12, 24],
    [20, 40],
    [30, 60],
    [36, 72],
    [48, 96],
  ],
  // 3 courses 8 in
  modular: [
    [3, 8],
    [6, 16],
    [12, 32],
    [30, 80],
    [36, 96],
    [48, 128],
  ],
  norman: [
    [3, 8],
    [48, 128],
  ],
  // 5 courses 16 in
  'engineer-modular': [
    [10, 32],
    [20, 64],
    [30, 96],
  ],
  // 1 course 4 in
  economy: [
    [3, 12],
    [6, 24],
    [10, 40],
    [12, 48],
    [20, 80],
    [30, 120],
    [36, 144],
    [48, 192],
  ],
  utility: [
    [3, 12],
    [48, 192],
  ],
};

const wall = (brick: string, height: string, length = '95 5/8 in') =>
  jobOf(`use us\n\nwall w\n  brick ${brick}\n  length ${length}\n  height ${height}\n`);

const rows = Object.entries(COURSING).flatMap(([brick, table]) =>
  table.map(([courses, inches]) => [brick, courses, inches] as const),
);

describe.each(rows)('%s: %i courses are %i in', (brick, courses, inches) => {
  test('counted in courses', () => {
    expect(figure(wall(brick, `${courses} courses`), 'w.height') * 12).toBeCloseTo(inches, 5);
  });
  test('said as a height', () => {
    const job = wall(brick, `${inches} in`);
    expect(figure(job, 'w.courses')).toBe(courses);
    expect(findingCodes(job)).not.toContain('fit-height');
    expect(findingCodes(job)).not.toContain('height-joints');
  });
});

test('the bed of a modular brick is 0.41667 in, so that three courses are 8 in (maker’s catalogue)', () => {
  const spec = wall('modular', '3 courses').works[0]!.facts.settingOut!.spec;
  expect(spec.joints.bed / 25.4).toBeCloseTo(0.41667, 5);
});

describe('lengths', () => {
  const codes = (length: string) => findingCodes(wall('modular', '3 courses', length));
  test('three modular bricks are 23 5/8 in, not 24', () => {
    expect(codes('23 5/8 in')).not.toContain('fit-run');
    expect(codes('24 in')).toContain('fit-run');
  });
  // Beall, Masonry and Concrete, p. 136: nominal lengths, so a joint less.
  test('6 ft 8 in works on the 4 in module, 6 ft 6 in does not', () => {
    expect(codes('79 5/8 in')).not.toContain('fit-run');
    expect(codes('77 5/8 in')).toContain('fit-run');
  });
});
