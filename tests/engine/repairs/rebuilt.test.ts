/** How many bricks come down, by what is said of them and by where they are. */
import { describe, expect, test } from 'vitest';
import { figure } from '../../examples/engine';
import { figuresOf, GATE, NORTH, OWN, repaired, THIN } from './repairing';

describe('a part of a wall', () => {
  // Twelve half bricks of 112.5 mm to 1.35 m; through a one-brick wall each of them is one brick.
  test.each([
    ['rebuild 1.35 m x 9 courses', 108],
    ['rebuild 1.35 m x 675 mm', 108],
    // Through half a brick, half of one.
    [`rebuild 1.35 m x 8 courses`, 96],
    ['rebuild 120 bricks', 120],
  ])('%s', (line, bricks) => {
    expect(figuresOf(`${OWN}${line}`)('down')).toBe(bricks);
  });

  test('half a brick thick it takes half as many', () => {
    expect(figuresOf(`${THIN}rebuild 1.35 m x 8 courses`)('down')).toBe(48);
  });

  // Eighteen courses of the wall; its whole length, 4490 mm and so 40 half bricks less a joint: a brick each.
  test('courses alone are as long as the wall, a length alone as high', () => {
    const north = (line: string) => figuresOf(`in north\n${line}`, NORTH)('down');
    expect(north('rebuild 1.35 m')).toBe(12 * 18);
    expect(north('rebuild 9 courses')).toBe(40 * 9);
    expect(north('rebuild 450 mm x 150 mm')).toBe(4 * 2);
  });

  test('the wall gives brick, bond, thickness and mortar', () => {
    const lines = 'rebuild 1.35 m x 9 courses\nrepoint 1 m2\ncut-out 2 bricks';
    const own = repaired(`${OWN}${lines}`);
    const north = repaired(`in north\n${lines}`, NORTH);
    for (const key of ['down', 'short', 'mortar', 'waste', 'hours'])
      expect(figure(north, `r.${key}`)).toBe(figure(own, `r.${key}`));
  });

  test('nothing of the wall is taken where neither says how long', () => {
    const [work] = repaired(`${OWN}rebuild 9 courses`).works;
    expect(work!.figures[0]!.term.gaps.map((g) => g.what)).toEqual([
      'how much of r is rebuilt is not known',
    ]);
  });
});

/** One and a half bricks square: four whole bricks round a half bat, four and a half to a course. */
describe('a pier', () => {
  test.each([
    ['rebuild 14 courses', 63],
    // 1.05 m at 75 mm
    ['rebuild 1.05 m', 63],
    // An odd half is cut from a brick.
    ['rebuild 3 courses', 14],
    ['rebuild 20 courses', 90],
    ['rebuild 40 bricks', 40],
  ])('of the file: %s', (line, bricks) => {
    expect(figuresOf(`in gate\n${line}`, GATE)('down')).toBe(bricks);
  });

  test('of a wall, by its name or after that of the wall', () => {
    for (const named of ['stub', 'north stub'])
      expect(figuresOf(`in ${named}\nrebuild 14 courses`, NORTH)('down')).toBe(63);
  });

  test('of the size that the repair says', () => {
    const own = figuresOf(`${THIN}size 1.5 x 1.5 bricks\nrebuild 14 courses`);
    const gate = figuresOf('in gate\nrebuild 14 courses', GATE);
    for (const key of ['down', 'mortar', 'waste', 'hours']) expect(own(key)).toBe(gate(key));
  });

  // Two bricks square, six to a course round a core of 215 mm and a joint about it, 235 mm square and 75 mm high.
  test('concrete in its core comes down with it, and is placed again', () => {
    const core = GATE.replace('1.5 x 1.5', '2 x 2').replace('cap ', 'core concrete\n  cap ');
    const of = figuresOf('in gate\nrebuild 10 courses', core);
    const plain = figuresOf('in gate\nrebuild 10 courses', core.replace('concrete', 'hollow'));
    const litres = (10 * 235 * 235 * 75) / 1e6;
    expect([of('down'), of('mortar')]).toEqual([plain('down'), plain('mortar')]);
    expect(of('waste-mass') - plain('waste-mass')).toBeCloseTo((litres / 1000) * 2400, 4);
    expect(of('hours') - plain('hours')).toBeCloseTo(litres / 1000 / 0.5, 6);
    const needs = repaired('in gate\nrebuild 10 courses', core).works.at(-1)!.needs;
    expect(needs.mixes.map((m) => m.mix)).toEqual(['general', 'concrete']);
    expect(needs.mixes[1]!.litres.value.toNumber()).toBeCloseTo(litres, 6);
  });

  // It stands half a brick out of a one-brick wall, bonded into it.
  test('that is attached comes down with what of it reaches into its wall', () => {
    const attached = NORTH.replace('at      left', 'at      left 1 m\n    projects back');
    const whole = figuresOf('in stub\nrebuild 18 courses', attached)('down');
    const half = figuresOf('in stub\nrebuild 9 courses', attached)('down');
    expect(half).toBeGreaterThan(0);
    expect(Math.abs(whole - 2 * half)).toBeLessThanOrEqual(2);
    // Its own four and a half bricks to a course, and what of them reaches into the wall, a half brick to either side at most.
    expect(whole).toBeGreaterThanOrEqual(18 * 4.5);
    expect(whole).toBeLessThan(18 * (4.5 + 2));
  });

  test('no more comes down than stands', () => {
    expect(figuresOf('in gate\nrebuild 25 courses', GATE)('down')).toBe(90);
  });

  // 327.5 mm square and 75 mm to a course, less four and a half bricks of 215 x 102.5 x 65 mm; a half bat is 102.5 mm long.
  test('its mortar is that of its courses', () => {
    const course = (327.5 ** 2 * 75 - (4 * 215 + 102.5) * 102.5 * 65) / 1e6;
    expect(figuresOf('in gate\nrebuild 14 courses', GATE)('mortar')).toBeCloseTo(14 * course, 4);
  });
});

describe('mortar of so many bricks', () => {
  // A wall a brick thick, 215 mm: a brick has half of 225 x 75 x 215 mm.
  test('is their part of the joints of the work', () => {
    const each = (225 * 75 * 215) / 2 - 215 * 102.5 * 65;
    expect(figuresOf(`${OWN}rebuild 120 bricks`)('mortar')).toBeCloseTo((120 * each) / 1e6, 4);
  });

  test('and their frogs, which fill', () => {
    const frogged = (line: string) =>
      repaired(line, 'brick frogged\n  size 215 x 102.5 x 65 mm\n  joint 10 mm\n  frog 10%\n');
    const own = 'brick frogged\nmix general\nrebuild 100 bricks';
    const each = 225 * 75 * 102.5 - 0.9 * 215 * 102.5 * 65;
    expect(figure(frogged(own), 'r.mortar')).toBeCloseTo((100 * each) / 1e6, 4);
  });

  test('comes to that of the same bricks laid out, but for the joints at its ends', () => {
    const laid = figuresOf(`${OWN}rebuild 1.35 m x 9 courses`)('mortar');
    const ends = (10 * 75 * 9 * 215) / 1e6;
    expect(figuresOf(`${OWN}rebuild 108 bricks`)('mortar')).toBeCloseTo(laid - ends, 4);
  });
});
