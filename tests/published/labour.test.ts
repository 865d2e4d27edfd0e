/** Labour constants in print, replayed: so much work, by a gang whose outputs are those constants. */
import { describe, expect, test } from 'vitest';
import { figure, jobOf } from '../examples/engine';

/** A firm that loses nothing, and lays and serves as it is said to. */
const firm = (gang: string, outputs: string, day = '8 h') =>
  `use uk\n\nlabour\n  mason £20 per h\n  labourer £10 per h\n  gang ${gang}\n  day ${day}\n${outputs}`;

/** Whole bricks, each with its joint and bed: 13.5 m2. */
const wall = (thick = '1/2 brick', bond = 'stretcher') =>
  `wall w\n  stands held\n  thick ${thick}\n  bond ${bond}\n  length 9 m\n  height 20 courses\n  right butted\n`;
const M2 = 13.5;

describe('hours to the square metre: QS lecture notes (scribd 617796324; de.scribd 372575198)', () => {
  // Bricklayer, general labour.
  test.each([
    ['1/2 brick', 'stretcher', 'common', 1, 0.35],
    ['1 brick', 'english', 'common', 1.75, 0.7],
    ['1/2 brick', 'stretcher', 'facing', 2, 0.5],
    ['1 brick', 'english', 'facing', 3.5, 1],
  ])('%s in %s, %s bricks: %f and %f', (thick, bond, _, mason, labourer) => {
    const rates = `output\n  facework ${(1 / mason).toFixed(9)} m2 per h\nserving\n  facework ${(1 / labourer).toFixed(9)} m2 per h\n`;
    const hours = (gang: string) =>
      figure(jobOf(`${firm(gang, rates)}\n${wall(thick, bond)}`), 'w.hours');
    expect(hours('1 mason')).toBeCloseTo(mason * M2, 5);
    // One labourer keeps up with one bricklayer in every row; with three of them on common bricks he does not.
    expect(hours('1 mason + 1 labourer')).toBeCloseTo(mason * M2, 5);
    const three = Math.max(mason / 3, labourer) * M2;
    expect(hours('3 masons + 1 labourer')).toBeCloseTo(three, 5);
  });
});

describe('IS 7272 (Part 1), labour constants in days (scribd 391056131)', () => {
  const days = (rates: string, gang: string, text: string) =>
    figure(jobOf(`${firm(gang, rates)}\n${text}`), 'w.hours') / 8;

  // One-brick wall to the m2: mason 0.25, labourer 0.40 (the water carrier's 0.10 goes on at the same time).
  test('one-brick wall: a mason wants 1.6 labourers to serve him', () => {
    const rates = 'output\n  facework 4 m2 per day\nserving\n  facework 2.5 m2 per day\n';
    const text = wall('1 brick', 'english');
    expect(days(rates, '1 mason + 2 labourers', text)).toBeCloseTo(0.25 * M2, 6);
    expect(days(rates, '1 mason + 1.6 labourers', text)).toBeCloseTo(0.25 * M2, 6);
    expect(days(rates, '1 mason + 1 labourer', text)).toBeCloseTo(0.4 * M2, 6);
  });

  // Thicker, to the m3: mason 0.94, labourer 1.80. A wall of one and a half bricks is 0.3275 m thick.
  test('thicker walls go by the cubic metre', () => {
    const rates = `output\n  facework ${(1 / 0.94).toFixed(9)} m3 per day\nserving\n  facework ${(1 / 1.8).toFixed(9)} m3 per day\n`;
    const text = wall('1.5 bricks', 'english');
    expect(days(rates, '1 mason + 2 labourers', text)).toBeCloseTo(0.94 * M2 * 0.3275, 1);
    expect(days(rates, '1 mason + 1 labourer', text)).toBeCloseTo(1.8 * M2 * 0.3275, 1);
  });
});

describe('a team of 600 bricks a day', () => {
  /**
   * South African rate build-up (scribd 648171371): R55, R45 and R35 an hour, eight hours, and 30% on costs are R1404 a
   * day; 600 bricks a day, so R2.34 to the brick, and R121.68 to the square metre of 52.
   */
  test('costs R2.34 to the brick', () => {
    const rates = [55, 45, 35].map((rand) => (rand * 1.3).toFixed(2));
    const job = jobOf(
      `job "Trial"\n  currency ZAR\n\nuse uk\n\nlabour\n  skilled ZAR ${rates[0]} per h\n  semi ZAR ${rates[1]} per h\n  unskilled ZAR ${rates[2]} per h\n  gang 1 skilled + 1 semi + 1 unskilled\n  day 8 h\n\noutput\n  facework 600 bricks per day\n\n${wall()}`,
    );
    const brick = figure(job, 'job.labour') / figure(job, 'w.bricks');
    expect(figure(job, 'w.bricks')).toBe(800);
    expect(brick).toBeCloseTo(2.34, 9);
    expect(52 * brick).toBeCloseTo(121.68, 9);
  });

  // stampingbythebay.com: 600 by one, 1200 by the gang, “20 m² of single skin” at sixty to the square metre.
  test('two lay twenty square metres of half-brick wall in a day, at sixty to the square metre', () => {
    const rates = 'output\n  facework 600 bricks per day\n';
    const job = jobOf(`${firm('2 masons', rates)}\n${wall()}`);
    const days = (figure(job, 'w.hours') / 8) * (20 / M2);
    expect(days).toBeCloseTo(59.259 / 60, 4);
  });
});

// scribd 435826736: 400 bricks an hour unloaded and stacked.
test('800 bricks are unloaded and stacked in two hours', () => {
  const rates = 'output\n  facework 60 bricks per h\n  load-out 400 bricks per h\n';
  const job = jobOf(
    `${firm('1 mason', rates)}\nbrick standard\n  size 215 x 102.5 x 65 mm\n  joint 10 mm\n  gauge 4 courses 300 mm\n  waste 0%\n\n${wall()}`,
  );
  expect(figure(job, 'job.load-out')).toBeCloseTo(2, 9);
});

// onlinecivilforum.com: 10 m3 of brickwork in cement mortar are taken down in 19.5 days of a labourer.
test('ten cubic metres are taken down in 19.5 days', () => {
  const rates = `output\n  take-down ${(10 / 19.5).toFixed(9)} m3 per day\n  facework 50 bricks per h\n`;
  // A wall 215 mm thick: 118.519 bricks to the m2 are 0.215 m3.
  const bricks = Math.round((10 / 0.215) * (3200 / 27));
  const job = jobOf(
    `${firm('1 mason', rates)}\nrepair r\n  brick standard\n  mix general\n  thick 1 brick\n  bond english\n  rebuild ${bricks} bricks\n`,
  );
  const building = bricks / 50;
  expect((figure(job, 'r.hours') - building) / 8).toBeCloseTo(19.5, 2);
});

test('a rebuilt length and a plinth are timed by the square metre too', () => {
  const rates = 'output\n  facework 1.25 m2 per h\n  take-down 2.5 m2 per h\n';
  const text = `${wall()}  plinth 3 courses project 1/2 brick front\n\nrepair r\n  in w\n  rebuild 2.25 m x 4 courses\n`;
  const job = jobOf(`${firm('1 mason', rates)}\n${text}`);
  // 2.25 x 0.3 m: 0.675 m2 down and up. The plinth is a skin of 9 x 0.225 m, a brick longer where it goes round an end.
  expect(figure(job, 'r.hours')).toBeCloseTo(0.675 / 2.5 + 0.675 / 1.25, 6);
  const plinth = figure(job, 'w.hours') - M2 / 1.25;
  expect(Math.abs(plinth / ((9 * 0.225) / 1.25) - 1)).toBeLessThan(0.03);
  expect(job.price.total.gaps.map((g) => g.what).join()).not.toContain('facework');
});

/**
 * Banco de Costes de la Construcción de Andalucía, 2024 (Junta de Andalucía; copy at cerptech/cerp-items-data, albañilería
 * and demoliciones): hours of a bricklayer and a labourer to the m2, bricks of 240 x 115 x 50 mm.
 */
describe('Andalusia, a bricklayer and half a labourer', () => {
  test.each([
    ['1 brick', 'english', 'perforated, fair face', 0.96, 0.48],
    ['1 brick', 'english', 'solid, fair face', 1.08, 0.54],
    ['1.5 bricks', 'english', 'perforated, fair face', 1.544, 0.772],
  ])('%s in %s, %s: %f and %f h to the square metre', (thick, bond, _, mason, labourer) => {
    const rates = `output\n  facework ${(1 / mason).toFixed(9)} m2 per h\nserving\n  facework ${(1 / labourer).toFixed(9)} m2 per h\n`;
    const hours = (gang: string) =>
      figure(jobOf(`${firm(gang, rates)}\n${wall(thick, bond)}`), 'w.hours');
    expect(hours('1 mason + 0.5 labourer')).toBeCloseTo(mason * M2, 5);
    expect(hours('1 mason + 0.4 labourer')).toBeCloseTo((labourer / 0.4) * M2, 5);
  });
});

/**
 * What the libraries start from is common practice. In print, by the hour: 30 bricks (QS notes, half-brick wall in facings) to
 * 139 (Andalusia, 0.96 h to 133 perforated ones of 240 x 115 x 50 mm); 59 (IS 7272), 60 and 68 (QS notes, commons), 75
 * (600 a day). Taking down a m3: 5.3 h (Andalusia, solid, by hand) to 15.6 (India, 19.5 days of 8 h to 10 m3, stacked too).
 */
describe.each([
  ['uk', 'standard', 1000 / 225, 1000 / 75, 0.1025],
  ['us', 'modular', 1000 / 203.2, 1000 / 67.733, 0.0921],
  ['de', 'nf', 4, 12, 0.115],
] as const)('the outputs of %s', (library, brick, along, up, deep) => {
  const hours = (text: string, key: string) => figure(jobOf(`use ${library}\n\n${text}`), key);
  test('lay as many bricks in an hour as is printed', () => {
    const text = `wall w\n  stands held\n  brick ${brick}\n  length 10 m\n  height 24 courses\n`;
    const bricks = hours(text, 'w.bricks') / hours(text, 'w.hours');
    expect(bricks).toBeGreaterThanOrEqual(30);
    expect(bricks).toBeLessThanOrEqual(139);
  });
  test('take a cubic metre down in as long as is printed', () => {
    const bricks = Math.round((along * up) / deep);
    const text = (take: string) =>
      `output\n  facework 100000 bricks per h\n${take}\nrepair r\n  brick ${brick}\n  rebuild ${bricks} bricks\n`;
    const taken = hours(text(''), 'r.hours');
    expect(taken).toBeGreaterThanOrEqual(5.3);
    expect(taken).toBeLessThanOrEqual(15.6);
  });
});
