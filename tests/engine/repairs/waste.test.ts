/** What is taken away: its volume loose, its mass, and what is paid for it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { figure } from '../../examples/engine';
import { figuresOf, OWN, repaired, THIN, UNIT } from './repairing';

/** The densities and bulking of the British library, kg/m3 and a share. */
const BRICK = 1950;
const MORTAR = 2000;
const LOOSE = 1.5;
const solid = UNIT / 1e9;

describe('waste', () => {
  // 120 bricks in a one-brick wall, 60% of them laid again; all the old mortar comes off.
  test('broken bricks, and all the old mortar', () => {
    const of = figuresOf(`${OWN}rebuild 120 bricks\nsalvage 60%`);
    const mortar = of('mortar') / 1000;
    expect(of('waste')).toBeCloseTo((48 * solid + mortar) * LOOSE, 4);
    expect(of('waste-mass')).toBeCloseTo(48 * solid * BRICK + mortar * MORTAR, 2);
  });

  test('of bricks that leave a half, the other half, and halves with no place', () => {
    const of = figuresOf(`${THIN}rebuild 40 bricks\nhalves 10`);
    expect(of('waste-mass')).toBeCloseTo(40 * solid * BRICK + (of('mortar') / 1000) * MORTAR, 2);
    const hidden = figuresOf(`${OWN}rebuild 40 bricks\nhalves 10`);
    const mortar = (hidden('mortar') / 1000) * MORTAR;
    expect(hidden('waste-mass')).toBeCloseTo((30 + 5) * solid * BRICK + mortar, 2);
  });

  test('a frog is full of mortar, and a maker’s mass is taken at its word', () => {
    const brick =
      'brick other\n  size 215 x 102.5 x 65 mm\n  joint 10 mm\n  frog 10%\n  mass 2.5 kg\n';
    const job = repaired('brick other\nmix general\nrebuild 100 bricks', brick);
    const mortar = figure(job, 'r.mortar') / 1000;
    expect(figure(job, 'r.waste')).toBeCloseTo((100 * 0.9 * solid + mortar) * LOOSE, 4);
    expect(figure(job, 'r.waste-mass')).toBeCloseTo(250 + mortar * MORTAR, 2);
  });

  test('raked joints are mortar and nothing else; making good leaves none', () => {
    const of = figuresOf(`${THIN}repoint 35 m raked 20 mm\nmake-good 1 m2 "Render"`);
    expect(of('waste')).toBeCloseTo(0.007 * LOOSE, 6);
    expect(of('waste-mass')).toBeCloseTo(14, 6);
  });

  test('old copings, as large as the new', () => {
    const of = figuresOf(`${OWN}replace 2 pieces slab`);
    const slab = 0.6 * 0.28 * 0.075;
    const bed = of('mortar') / 1000;
    expect(of('waste')).toBeCloseTo((2 * slab + bed) * LOOSE, 4);
    expect(of('waste-mass')).toBeCloseTo(2 * slab * 2400 + bed * MORTAR, 2);
  });

  test('in yards and pounds where the job is American', () => {
    const metric = figuresOf(`${OWN}rebuild 120 bricks`);
    const job = repaired(`${OWN}rebuild 120 bricks`, 'defaults\n  units imperial\n');
    expect(figure(job, 'r.waste')).toBeCloseTo(metric('waste') / 0.764554857984, 6);
    expect(figure(job, 'r.waste-mass')).toBeCloseTo(metric('waste-mass') / 0.45359237, 3);
  });
});

describe('mass', () => {
  /** What comes down is carted off or laid again: bricks, halves of bricks, and the mortar they stood in. */
  test('is kept, whatever is salvaged', () => {
    const part = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), part, part, (down, reuse, kept) => {
        const lines = `salvage ${reuse}%\nhalves ${kept}%\n`;
        const of = figuresOf(`${OWN}rebuild ${down} bricks\ncut-out 4 bricks\n${lines}`);
        const all = (down + 4) * solid * BRICK + (of('mortar') / 1000) * MORTAR;
        const again = (of('reused') + of('halves-used') / 2) * solid * BRICK;
        expect(of('waste-mass') + again).toBeCloseTo(all, 2);
      }),
      { numRuns: 20 },
    );
  });
});

describe('what is paid for waste', () => {
  const costs = (line: string) => {
    const job = repaired(`${THIN}repoint 35 m raked 20 mm`, `cost tip "Tipping" ${line}\n`);
    return figure(job, 'job.others');
  };
  // 14 kg, and 10.5 l loose.
  test.each([
    ['at £45 per t of waste', 0.63],
    ['at £2 per kg of waste', 28],
    ['at £60 per m3 of waste', 0.63],
    // Whole skips, and whole bags.
    ['at £240 per 3 m3 of waste', 240],
    ['at £3 per 10 kg of waste', 6],
  ])('%s', (line, cost) => {
    expect(costs(line)).toBeCloseTo(cost, 9);
  });

  test('nothing, where nothing is taken away', () => {
    const job = repaired(
      `${THIN}make-good 1 m2 "Render"`,
      'cost tip "Tipping" at £45 per t of waste\n',
    );
    expect(figure(job, 'job.others')).toBe(0);
  });

  test('of all the work together', () => {
    const more = `repair s\n  brick plain\n  mix general\n  repoint 35 m raked 20 mm\n`;
    const job = repaired(`${THIN}repoint 35 m raked 20 mm`, more);
    expect(figure(job, 'job.waste-mass')).toBeCloseTo(28, 9);
  });
});
