/** Each kind of mending by itself: bricks, pieces, mortar, hours. */
import { describe, expect, test } from 'vitest';
import { figure } from '../../examples/engine';
import { figuresOf, GATE, NORTH, OWN, repaired, THIN } from './repairing';

/** Litres. */
const litres = (...mm: number[]) => mm.reduce((all, side) => all * side, 1) / 1e6;

describe('cut-out', () => {
  // All four joints of its face, 235 x 85 mm round 215 x 65 mm, 102.5 mm deep.
  const around = litres(235 * 85 - 215 * 65, 102.5);
  test('bricks are bedded on all sides', () => {
    const of = figuresOf(`${THIN}cut-out 3 bricks`);
    expect([of('cut-out'), of('short')]).toEqual([3, 3]);
    expect(of('mortar')).toBeCloseTo(3 * around, 4);
    expect(of('hours')).toBeCloseTo(3 / 5, 9);
  });
  test('and against what stands behind them', () => {
    const behind = litres(215, 65, 10);
    expect(figuresOf(`${OWN}cut-out 3 bricks`)('mortar')).toBeCloseTo(3 * (around + behind), 4);
  });
});

describe('repoint', () => {
  // Headers and stretchers in turn, course by course: 102.5 of 112.5 and 215 of 225 mm are brick, 65 of 75 high.
  const english = 1 - ((102.5 / 112.5 + 215 / 225) / 2) * (65 / 75);
  test('the share of a face that is joint is that of its bond', () => {
    const mortar = figuresOf(`${OWN}repoint 2 m2 raked 20 mm`)('mortar');
    expect(mortar).toBeCloseTo(2 * english * 20, 3);
  });
  // Headers and stretchers in turn in each course: 317.5 of 337.5 mm.
  test('in Flemish bond', () => {
    const flemish = 1 - (317.5 / 337.5) * (65 / 75);
    const lines = `${OWN.replace('english', 'flemish')}repoint 1 m2 raked 20 mm`;
    expect(figuresOf(lines)('mortar')).toBeCloseTo(flemish * 20, 3);
  });
  test('a length of joint takes its width and depth', () => {
    const of = figuresOf(`${THIN}repoint 35 m raked 25 mm`);
    expect(of('mortar')).toBeCloseTo(litres(35_000, 10, 25), 6);
    expect(of('repointed-joints')).toBe(35);
    expect(of('hours')).toBeCloseTo(35 / 6, 9);
  });
  test('not told how deep, twice the joint', () => {
    const [said, unsaid] = [' raked 20 mm', ''].map((deep) =>
      figuresOf(`${THIN}repoint 1.5 m2${deep}`)('mortar'),
    );
    expect(unsaid).toBe(said);
  });
  test('by area and by length together', () => {
    const of = figuresOf(`${THIN}repoint 1 m2\nrepoint 35 m\nrepoint 2 m2`);
    expect([of('repointed'), of('repointed-joints')]).toEqual([3, 35]);
    expect(of('hours')).toBeCloseTo(3 + 35 / 6, 9);
  });
});

describe('tooth-in', () => {
  // Nine courses have five indents; through a brick each is one brick, and half a brick runs into it.
  test('indents in every second course', () => {
    const of = figuresOf(`${OWN}tooth-in 9 courses`);
    expect([of('indents'), of('short')]).toEqual([5, 3]);
    expect(of('hours')).toBeCloseTo(5 / 5 + 3 / 50, 9);
    const each = (225 * 75 * 215) / 2 - 215 * 102.5 * 65;
    expect(of('mortar')).toBeCloseTo(litres(3, each), 4);
  });
  test('two ends are two lines', () => {
    expect(figuresOf(`${OWN}tooth-in 9 courses\ntooth-in 4 courses`)('indents')).toBe(7);
  });
});

describe('stitch', () => {
  // 1.8 m at 450 mm are four steps and so five bars, each in a bed 1 m long, 10 mm high and raked 35 mm.
  test('bars at their spacing, the first at the beginning', () => {
    const job = repaired(`${THIN}stitch 1.8 m`);
    expect(figure(job, 'r.bars')).toBe(5);
    expect(figure(job, 'buy.stitch-bar')).toBe(5);
    expect(figure(job, 'r.mortar')).toBeCloseTo(5 * litres(1000, 10, 35), 6);
    expect(figure(job, 'r.hours')).toBeCloseTo(5 / 2, 9);
  });
  test('a step that is not whole is one more', () => {
    expect(figuresOf(`${THIN}stitch 1.85 m`)('bars')).toBe(6);
  });
});

describe('copings and caps', () => {
  // Slabs of 600 x 280 mm on 215 mm of wall, a joint of 10 mm under each and 280 x 75 mm of one beside it.
  const slab = litres(600, 215, 10) + litres(280, 75, 10);
  test('pieces of a material are bedded by its size', () => {
    const of = figuresOf(`${OWN}rebed 3 pieces slab`);
    expect(of('mortar')).toBeCloseTo(3 * slab, 6);
    expect(of('hours')).toBeCloseTo(3 / 2, 9);
  });
  // The coping line of the wall says no height, so no joint beside them is counted.
  test('else by that of the coping that stands', () => {
    expect(figuresOf('in north\nrebed 3 pieces', NORTH)('mortar')).toBeCloseTo(
      3 * litres(600, 215, 10),
      6,
    );
  });
  test('a length of them is so many pieces', () => {
    // 2.4 m are 3.9 pieces of 610 mm.
    const of = figuresOf(`${OWN}rebed 2.4 m slab`);
    expect(of('mortar')).toBeCloseTo(4 * slab, 6);
    expect(of('hours')).toBeCloseTo(2.4 / 2, 9);
  });
  test('a length of which nothing is known is bedded on the wall', () => {
    expect(figuresOf(`${OWN}rebed 2.4 m`)('mortar')).toBeCloseTo(litres(2400, 215, 10), 6);
  });
  test('a cap lies on its pier', () => {
    // 327.5 mm square
    expect(figuresOf('in gate\nrebed 1 piece', GATE)('mortar')).toBeCloseTo(
      litres(327.5, 327.5, 10),
      6,
    );
  });
  test('new ones are bought', () => {
    const job = repaired('in gate\nreplace 1 piece coin', GATE);
    expect(figure(job, 'r.replaced')).toBe(1);
    // One for the pier itself, one for the repair.
    expect(figure(job, 'buy.coin')).toBe(2);
    expect(figure(job, 'r.mortar')).toBeCloseTo(litres(327.5, 327.5, 10), 6);
  });
});

describe('make-good', () => {
  test('as thick as it says, else as the defaults have it', () => {
    const of = figuresOf(`${THIN}make-good 0.5 m2 20 mm thick "Render"\nmake-good 1 m2 "Render"`);
    expect(of('made-good')).toBe(1.5);
    expect(of('mortar')).toBeCloseTo(0.5 * 20 + 1 * 15, 6);
    expect(of('hours')).toBeCloseTo(1.5, 9);
  });
});
