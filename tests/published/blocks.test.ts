/**
 * Blocks, large formats and courses of other countries: what the tables print to the square metre or foot, and how high
 * so many courses are. A wall of whole units, its right end butted, has exactly one to each length x height with joints.
 */
import { describe, expect, test } from 'vitest';
import { figure, findingCodes, jobOf } from '../examples/engine';

interface Row {
  readonly name: string;
  readonly unit: 'mm' | 'in';
  /** Length, width, height. */
  readonly size: readonly [string, string, string];
  readonly joint: string;
  /** Length and height with their joints. */
  readonly module: readonly [number, number];
  /** To the m2, or ft2 where the unit is inches. */
  readonly printed: number;
  /** How far the print is rounded, of one. */
  readonly within: number;
}

/**
 * Ziegelei Priller, Materialbedarf, bricks with mortared perpends: length, width (the wall's thickness) and height, mm;
 * courses of 1/8 and 1/4 m; pieces to the m2 as printed. Its 1 DF, 1 NF and 2 DF rows are in formats.test.ts.
 */
const PRILLER = [
  [300, 115, 238, 13],
  [365, 115, 238, 11],
  [300, 145, 113, 26],
  [240, 175, 113, 32],
  [300, 175, 238, 13],
  [365, 175, 238, 11],
  [300, 240, 113, 26],
  [300, 240, 238, 13],
  [365, 240, 238, 11],
  [240, 300, 113, 32],
  [240, 300, 238, 16],
  [365, 300, 238, 11],
  [240, 365, 113, 32],
  [240, 365, 238, 16],
  [240, 490, 238, 16],
] as const;

const priller = PRILLER.map(([length, width, height, printed]): Row => {
  const size = [length, width, height].map(String) as unknown as Row['size'];
  const exact = 1e6 / ((length + 10) * (height + 12));
  return {
    name: `DE ${length} x ${width} x ${height}`,
    unit: 'mm',
    size,
    joint: '10',
    module: [length + 10, height + 12],
    printed,
    within: Math.abs(Math.round(exact) - exact) / exact,
  };
});

const ROWS: readonly Row[] = [
  ...priller,
  {
    // buildjournal, Concrete block calculator: 9.88; trade rule 10.
    name: 'UK block 440 x 215',
    unit: 'mm',
    size: ['440', '100', '215'],
    joint: '10',
    module: [450, 225],
    printed: 9.88,
    within: 0.0005,
  },
  {
    // Baird Concrete, Resources: square feet x 1.125 = block.
    name: 'US block 8 x 8 x 16',
    unit: 'in',
    size: ['15 5/8', '7 5/8', '7 5/8'],
    joint: '3/8',
    module: [16, 8],
    printed: 1.125,
    within: 0,
  },
  {
    // The same face, 4 in high: two to each 8 in (NAVEDTRA 14045, Table 4-3, 3 5/8 in high units: courses of 4 in).
    name: 'US half-high block',
    unit: 'in',
    size: ['15 5/8', '7 5/8', '3 5/8'],
    joint: '3/8',
    module: [16, 4],
    printed: 2.25,
    within: 0,
  },
  {
    // mot.be, Hoeveelheid bakstenen: 5 x 16.5 = 82.5, its 16.5 courses being 1000 / 60 cut to a half.
    name: 'BE Module 50',
    unit: 'mm',
    size: ['188', '88', '48'],
    joint: '12',
    module: [200, 60],
    printed: 82.5,
    within: 0.0101,
  },
  {
    // Arithmetic on 400 x 200 mm; common practice.
    name: 'AU block 390 x 190',
    unit: 'mm',
    size: ['390', '190', '190'],
    joint: '10',
    module: [400, 200],
    printed: 12.5,
    within: 0,
  },
];

/** Twenty units long, twenty-four courses high. */
function wallOf({ size, unit, joint, module }: Row) {
  return jobOf(
    `use ${unit === 'in' ? 'us' : 'de'}\n\nbrick trial\n  size ${size.join(' x ')} ${unit}\n  joint ${joint} ${unit}\n  gauge 1 course ${module[1]} ${unit}\n\nwall w\n  brick trial\n  length ${20 * module[0]} ${unit}\n  height 24 courses\n  right butted\n`,
  );
}

describe.each(ROWS)('$name', (row) => {
  const job = wallOf(row);
  const perUnit = figure(job, 'w.bricks') / figure(job, 'w.area');
  const [length, height] = row.module;
  const exact = (row.unit === 'in' ? 144 : 1e6) / (length * height);
  test('is one to each length and height with joints', () => {
    expect(perUnit / exact).toBeCloseTo(1, 6);
  });
  test('is what is printed, within its rounding', () => {
    expect(Math.abs(row.printed - perUnit) / perUnit).toBeLessThanOrEqual(row.within + 1e-6);
  });
});

describe('the examples worked in print', () => {
  const block = 'brick cmu\n  size 15 5/8 x 7 5/8 x 7 5/8 in\n  joint 3/8 in\n\n';
  const walls = (...lengths: string[]) =>
    jobOf(
      `use us\n\n${block}${lengths.map((length, i) => `wall w${i}\n  brick cmu\n  length ${length}\n  height 12 courses\n  right butted\n`).join('\n')}`,
    );
  // NAVEDTRA 14045, page 145: a building 20 by 8 ft, 8 ft high: 0.75 of 56 ft is 42 block to a course, 12 courses, 504 in all.
  test('504 block for 56 ft of wall in twelve courses (NAVEDTRA 14045: 3/4 rule)', () => {
    const job = walls('20 ft', '20 ft', '8 ft', '8 ft');
    const all = [0, 1, 2, 3].reduce((sum, i) => sum + figure(job, `w${i}.bricks`), 0);
    expect(all).toBe(504);
  });
  // The same page: a wall 100 ft long takes 75 block for the first course, 15 courses 1,125.
  test('1,125 block for 100 ft in fifteen courses (NAVEDTRA 14045: 3/2 rule)', () => {
    const job = jobOf(
      `use us\n\n${block}wall w\n  brick cmu\n  length 100 ft\n  height 15 courses\n  right butted\n`,
    );
    expect(figure(job, 'w.bricks')).toBe(1125);
    expect(figure(job, 'w.height')).toBeCloseTo(10, 9);
  });
  // Baird Concrete, Resources: 120 x 24 ft = 2,880 ft2, 3,240 block.
  test('3,240 block for 120 by 24 ft (Baird Concrete)', () => {
    const job = jobOf(
      `use us\n\n${block}wall w\n  brick cmu\n  length 120 ft\n  height 24 ft\n  right butted\n`,
    );
    expect(figure(job, 'w.bricks')).toBe(3240);
  });
  // buildjournal, Concrete block calculator: 24 m2 / 0.10125 = 237, 249 with 5%.
  test('237 block for 24 m2 (buildjournal)', () => {
    const job = jobOf(
      'use uk\n\nwall w\n  brick block-100\n  length 9.9 m\n  height 10 courses\n  right butted\n',
    );
    expect((figure(job, 'w.bricks') * 24) / figure(job, 'w.area')).toBeCloseTo(237, 0);
  });
});

/** Midland Brick, Brick coursing chart: 7 courses of 76 mm brick are 600 mm, 32 are 2742 and 34 are 2914. */
describe('Australian courses', () => {
  const brick = 'brick au\n  size 230 x 110 x 76 mm\n  joint 10 mm\n  gauge 7 courses 600 mm\n\n';
  const wall = (height: string) =>
    jobOf(`use uk\n\n${brick}wall w\n  brick au\n  length 2390 mm\n  height ${height}\n`);
  test.each([
    [7, 600],
    [14, 1200],
    [28, 2400],
    [32, 2742],
    [34, 2914],
  ])('%i courses are %i mm', (courses, mm) => {
    const height = figure(wall(`${courses} courses`), 'w.height') * 1000;
    expect(Math.floor(height + 1e-6)).toBe(mm);
  });
  test('600 mm are seven courses, 2400 mm twenty-eight', () => {
    expect(figure(wall('600 mm'), 'w.courses')).toBe(7);
    expect(figure(wall('2400 mm'), 'w.courses')).toBe(28);
    expect(findingCodes(wall('2400 mm'))).not.toContain('fit-height');
  });
});

/** Dutch and Belgian courses: klus-info.nl, ten bricks in a pile 55 cm and joints of 1 cm make courses of 6.5 cm. */
test('a course is a brick, as the mean of ten, and a bed', () => {
  const job = jobOf(
    'use uk\n\nbrick mean\n  size 210 x 100 x 55 mm\n  joint 10 mm\n\nwall w\n  brick mean\n  length 2190 mm\n  height 10 courses\n',
  );
  expect(figure(job, 'w.height')).toBeCloseTo(0.65, 9);
});

/** IS 1077 by IIT Kanpur: bricks of 190 x 90 x 90 and 190 x 90 x 40 mm in courses of 100 and 50 mm. */
test.each([
  ['190 x 90 x 90', 10, 1],
  ['190 x 90 x 40', 20, 1],
])('Indian modular %s mm: %i courses are %i m', (size, courses, metres) => {
  const job = jobOf(
    `use uk\n\nbrick modular-is\n  size ${size} mm\n  joint 10 mm\n\nwall w\n  brick modular-is\n  length 1990 mm\n  height ${courses} courses\n`,
  );
  expect(figure(job, 'w.height')).toBeCloseTo(metres, 9);
});
