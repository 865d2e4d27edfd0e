/** Bricks and mortar to an area, against handbooks. */
import { describe, expect, test } from 'vitest';
import { figure, jobOf } from '../examples/engine';

/** Whole bricks, each with its joint and bed. */
const wall = (thick: string, bond: string, more = '') =>
  jobOf(
    `use uk\n\n${more}wall w\n  thick ${thick}\n  bond ${bond}\n  length 9 m\n  height 40 courses\n  right butted\n`,
  );
const half = wall('1/2 brick', 'stretcher');
const one = wall('1 brick', 'english');
const perM2 = (job: ReturnType<typeof wall>, key: string) =>
  figure(job, key) / figure(job, 'w.area');

describe('bricks to the square metre', () => {
  test('the rule beside the count: 60 and 120 (Key skills sheet, Crown copyright 2000)', () => {
    expect(perM2(half, 'w.rule')).toBeCloseTo(60, 9);
    expect(perM2(one, 'w.rule')).toBeCloseTo(120, 9);
  });
  test('the count: 59.26 and 118.52 (QS notes print 59.26 before rounding)', () => {
    expect(perM2(half, 'w.bricks')).toBeCloseTo(1600 / 27, 9);
    expect(perM2(one, 'w.bricks')).toBeCloseTo(3200 / 27, 9);
  });
  // QS notes: 63 and 125 with 5%, each rounded up on the way: 59.26 to 60 and 3 more.
  test('with 5% lost, within the rounding of 63 and 125', () => {
    const bought = (job: ReturnType<typeof wall>) => perM2(job, 'buy.standard');
    expect(bought(half)).toBeCloseTo(62.2, 0);
    expect(63 / bought(half)).toBeLessThan(1.015);
    expect(63 / bought(half)).toBeGreaterThan(1);
    expect(125 / bought(one)).toBeLessThan(1.015);
    expect(125 / bought(one)).toBeGreaterThan(1);
  });
});

describe('mortar, no frogs', () => {
  // What 9 m more add: a half bat at the end of every second course has a joint more, and falls out.
  const long = jobOf('use uk\n\nwall w\n  length 18 m\n  height 40 courses\n  right butted\n');
  const more = (key: string) => figure(long, key) - figure(half, key);
  // The estimating handbook leaves out the square where bed and upright joint meet.
  test('0.287 m3 to 1000 bricks (estimating handbook quoted at constructiontechnology2015)', () => {
    const corner = 0.01 * 0.01 * 0.1025;
    const perBrick = more('w.mortar') / 1000 / more('w.bricks');
    expect(1000 * (perBrick - corner)).toBeCloseTo(0.287, 3);
  });
});

/** BIA Technical Note 10, from memory: ft3 of mortar to 1000 bricks; the formula t W (L + H + t) gives the same within 2%. */
describe('BIA Technical Note 10, from memory: mortar to 1000 bricks', () => {
  const CASES = [
    // Nominal 4 x 2 2/3 x 8
    ['7 5/8 x 3 5/8 x 2 1/4', '3/8', '2 5/8', 8, 8.1],
    ['7 1/2 x 3 1/2 x 2 1/4', '1/2', '2 3/4', 8, 10.3],
    // Nominal 4 x 3 1/5 x 8
    ['7 5/8 x 3 5/8 x 2 13/16', '3/8', '3 3/16', 8, 8.6],
    // Nominal 4 x 4 x 8
    ['7 5/8 x 3 5/8 x 3 5/8', '3/8', '4', 8, 9.2],
    ['7 1/2 x 3 1/2 x 3 1/2', '1/2', '4', 8, 11.7],
    // Nominal 4 x 2 x 12
    ['11 5/8 x 3 5/8 x 1 5/8', '3/8', '2', 12, 10.8],
    ['11 1/2 x 3 1/2 x 1 1/2', '1/2', '2', 12, 13.7],
    // Nominal 4 x 2 2/3 x 12
    ['11 5/8 x 3 5/8 x 2 1/4', '3/8', '2 5/8', 12, 11.3],
    // Nominal 4 x 4 x 12
    ['11 5/8 x 3 5/8 x 3 5/8', '3/8', '4', 12, 12.3],
    ['11 1/2 x 3 1/2 x 3 1/2', '1/2', '4', 12, 15.7],
  ] as const;
  test.each(CASES)('%s in, joints of %s in', (size, joint, course, module, printed) => {
    const job = jobOf(
      `use us\n\nbrick trial\n  size ${size} in\n  joint ${joint} in\n  gauge 1 course ${course} in\n\nwall w\n  brick trial\n  length ${20 * module} in\n  height 20 courses\n  right butted\n`,
    );
    const per1000 = (1000 * figure(job, 'w.mortar')) / figure(job, 'w.bricks');
    expect(Math.abs(per1000 - printed) / printed).toBeLessThan(0.02);
  });
});

/** Arithmetic on the brick: 17.2% of a stretcher face is joint. */
describe('repointing', () => {
  test.each([
    [15, 2.58],
    [20, 3.44],
    [25, 4.3],
  ])('raked %i mm, a square metre takes %f l', (depth, litres) => {
    const job = jobOf(
      `use uk\n\nrepair r\n  repoint 1 m2 raked ${depth} mm\n  brick standard\n  mix general\n`,
    );
    expect(figure(job, 'r.mortar')).toBeCloseTo(litres, 2);
  });

  // 1000 / 75 m of beds and 1600 / 27 uprights of 65 mm to a square metre: 10 mm wide, they are its 17.2%.
  test('by the length of its joints, a square metre takes the same', () => {
    const metres = 1000 / 75 + (1600 / 27) * 0.065;
    const job = jobOf(
      `use uk\n\nrepair r\n  repoint ${metres.toFixed(6)} m raked 20 mm\n  brick standard\n  mix general\n`,
    );
    expect(metres * 0.01).toBeCloseTo(0.172, 3);
    expect(figure(job, 'r.mortar')).toBeCloseTo(3.44, 2);
  });

  // Arithmetic: 19.6% of the face of a modular brick is joint; three quarters of an inch of 100 ft2 are 6.25 ft3.
  test('a hundred square feet of modular brick, raked 3/4 in', () => {
    const share = 1 - (7.625 * 2.25) / (8 * (8 / 3));
    const job = jobOf('use us\n\nrepair r\n  repoint 100 ft2 raked 3/4 in\n');
    expect(share).toBeCloseTo(0.196, 3);
    expect(figure(job, 'r.mortar')).toBeCloseTo(6.25 * share, 4);
  });

  // A maker of lime mortar (film, prernamagazine.com): raked 25 mm, about 7 kg of dry mortar to the square metre of
  // brickwork. Wet mortar of 2000 kg/m3 and dry mortar of 1500, as loose, are what it can weigh to the litre.
  test('raked 25 mm, a square metre takes some 7 kg', () => {
    const job = jobOf(
      'use uk\n\nrepair r\n  brick standard\n  mix general\n  repoint 1 m2 raked 25 mm\n',
    );
    const litres = figure(job, 'r.mortar');
    expect(7 / litres).toBeGreaterThan(1.5);
    expect(7 / litres).toBeLessThan(2);
  });
});
