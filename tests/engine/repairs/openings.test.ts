/** A part of a wall with openings: what lies in them is not there to come down. */
import { describe, expect, test } from 'vitest';
import { figure } from '../../examples/engine';
import { repaired } from './repairing';

const wall = (opening: string, more = '') => `wall north
  brick   plain
  mix     general
  length  4490 mm
  height  12 courses
  stands  held
${more}  opening gate
    from   left 1800 mm
    width  910 mm
${opening}`;

const WHOLE = wall('');
/** Six courses above its sill, the uppermost four of them in the topmost eight. */
const WINDOW = wall('    sill   4 courses\n    height 6 courses\n');

const down = (lines: string, before: string) =>
  figure(repaired(`in north\n${lines}`, before), 'r.down');

describe('courses from end to end', () => {
  // Twenty bricks to a course; a gate of 910 mm is four of them and a joint, so sixteen are laid.
  test('leave a gate out: 12 courses of 16 bricks', () => {
    expect(down('rebuild 12 courses', WHOLE)).toBe(192);
    expect(down('rebuild 12 courses', WHOLE)).toBe(figure(repaired('', WHOLE), 'north.bricks'));
    expect(down('rebuild 5 courses', WHOLE)).toBe(5 * 16);
  });

  test('said as a length are the same, and so is a length alone', () => {
    for (const said of ['4.49 m x 12 courses', '4.49 m', '4485 mm x 900 mm'])
      expect(down(`rebuild ${said}`, WHOLE)).toBe(192);
  });

  // Courses 4 to 9 have the window in them; the topmost eight are 4 to 11, the topmost two lie above it.
  test('are the topmost, with what of a window lies in them', () => {
    expect(down('rebuild 2 courses', WINDOW)).toBe(2 * 20);
    expect(down('rebuild 8 courses', WINDOW)).toBe(6 * 16 + 2 * 20);
    expect(down('rebuild 12 courses', WINDOW)).toBe(6 * 16 + 6 * 20);
  });

  test('take no mortar for the gate, and are drawn with it', () => {
    const open = repaired('in north\nrebuild 12 courses', WHOLE);
    const { settingOut } = open.works.at(-1)!.facts.rebuilt!;
    expect(settingOut!.spec.openings).toMatchObject([{ from: 1800, width: 910 }]);
    // In every second course each of the two stretches begins and ends with a half bat, 102.5 mm long.
    const solid = ((192 - 24 / 2) * 215 + 24 * 102.5) * 102.5 * 65;
    const mm3 = (4490 - 910) * 75 * 12 * 102.5 - solid;
    expect(figure(open, 'r.mortar')).toBeCloseTo(mm3 / 1e6, 4);
  });

  test('a brick thick are those of the wall itself', () => {
    const thick = wall('', '  thick   1 brick\n  bond    english\n');
    expect(down('rebuild 12 courses', thick)).toBe(figure(repaired('', thick), 'north.bricks'));
  });
});

/** 900 mm is eight half bricks, four bricks to a course. */
test('a part that fits beside the gate is brick all through', () => {
  expect(down('rebuild 900 mm x 12 courses', WHOLE)).toBe(48);
});

/** Sixteen bricks at £1 go into a course, and the hours with them. */
test('a range of courses moves the price', () => {
  const at = (n: string) => repaired(`in north\nrebuild ${n} courses`, WHOLE);
  const { low, high } = at('6..12').spread!;
  const price = (n: string) => figure(at(n), 'job.price');
  expect(low.value.toNumber()).toBeGreaterThanOrEqual(price('6'));
  expect(high.value.toNumber()).toBeLessThanOrEqual(price('12'));
  expect(high.value.toNumber()).toBeGreaterThan(low.value.toNumber() + 3 * 16);
});
