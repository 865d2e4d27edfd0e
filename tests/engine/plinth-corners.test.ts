/** Plinths where their walls make corners: bricks and mortar by the girth of each row. UK bricks, joints of 10 mm. */
import { describe, expect, test } from 'vitest';
import { FIRM } from '../findings/tells';
import { JOB, wallText } from '../harness/walls';
import { jobOf } from './world';

const wall = (name: string, length: number, lines: string) =>
  wallText({ name, length: `${length} mm` }, lines);

const jobIn = (text: string) => jobOf(JOB + text, { 'firm.perp': FIRM });

/** Engineering bricks are the plinth’s alone. */
const bricksIn = (text: string) =>
  jobIn(text)
    .works.flatMap((w) => w.needs.bricks)
    .filter((b) => b.brick === 'engineering')
    .reduce((sum, b) => sum + b.bricks.value.toNumber(), 0);

const mortarIn = (text: string) =>
  jobIn(text).works.reduce((sum, w) => sum + w.needs.mixes[0]!.litres.value.toNumber(), 0);

const plinth = (out: string, courses = 2) =>
  `  plinth ${courses} courses project ${out} in engineering\n`;

/** Four walls round a yard. */
const ring = (end: string, lines: string, more = '') =>
  [
    wall('s', 4490, `  left quoin w${end}\n  right quoin e${end}\n${lines}${more}`),
    wall('e', 3365, `  left quoin s${end}\n  right quoin n${end}\n${lines}${more}`),
    wall('n', 4490, `  left quoin e${end}\n  right quoin w${end}\n${lines}${more}`),
    wall('w', 3365, `  left quoin n${end}\n  right quoin s${end}\n${lines}${more}`),
  ].join('');

/** Stretchers round a ring half a brick thick, by its sides over all in mm: its mean girth over a brick and a joint. */
const round = (a: number, b: number) => (2 * (a + b) - 4 * 102.5) / 225;

describe('round a yard', () => {
  test('the outside: each row is two half bricks longer a side', () => {
    const first = round(4490 + 225, 3365 + 225);
    const second = round(4490 + 450, 3365 + 450);
    expect([first, second]).toEqual([72, 76]);
    expect(bricksIn(ring('', plinth('1/2 brick')))).toBe(2 * first);
    expect(bricksIn(ring('', plinth('1 brick')))).toBe(2 * (first + second));
  });

  test('the inside, fronts within: each row stops in the corner', () => {
    // A joint from the walls, which are 102.5 mm thick: 225 mm less over all, and again for the next row.
    const first = round(4490 - 225, 3365 - 225);
    const second = round(4490 - 450, 3365 - 450);
    expect([first, second]).toEqual([64, 60]);
    expect(bricksIn(ring(' inside', plinth('1/2 brick')))).toBe(2 * first);
    expect(bricksIn(ring(' inside', plinth('1 brick')))).toBe(2 * (first + second));
  });

  test('both faces of walls a brick thick', () => {
    const one = '  thick 1 brick\n  bond english\n';
    const outer = round(4490 + 225, 3365 + 225);
    const inner = round(4490 - 450, 3365 - 450);
    expect(bricksIn(ring('', plinth('1/2 brick both'), one))).toBe(2 * (outer + inner));
  });

  test('mortar is that of a wall half a brick thick round the same way', () => {
    const more = mortarIn(ring('', plinth('1/2 brick'))) - mortarIn(ring('', ''));
    // Two courses of 72 bricks: 72 x 225 mm long, 75 high, 102.5 through, less the bricks.
    const courses = 2 * 72 * 225 * 75 * 102.5;
    expect(more).toBeCloseTo((courses - 144 * 215 * 102.5 * 65) / 1e6, 6);
  });
});

describe('a corner of two walls', () => {
  const corner = (first: string, second: string, end = '') =>
    bricksIn(
      `${wall('a', 4490, `  right quoin b${end}\n${first}`)}${wall('b', 3365, `  left quoin a${end}\n${second}`)}`,
    );

  // 20 and 15 stretchers a course, and in every second course of each the half brick of the corner: of two courses
  // 40 1/2 and 30 1/2, each bought whole.
  const both = 41 + 31;

  test('is half a brick more for each in two courses', () => {
    expect(corner(plinth('1/2 brick'), plinth('1/2 brick'))).toBe(both);
  });

  test('where the other wall has none: to the end outside, to its face inside', () => {
    expect(corner(plinth('1/2 brick'), '')).toBe(2 * 20);
    // 4490 - 102.5 = 4387.5: 19 and a half.
    expect(corner(plinth('1/2 brick'), '', ' inside')).toBe(39);
  });

  test('of a lower plinth and a higher one: over the lower the other ends with its wall', () => {
    expect(corner(plinth('1/2 brick', 2), plinth('1/2 brick', 4))).toBe(both + 2 * 15);
  });

  test('of two rows and one: the outer one goes on to the front of the other plinth', () => {
    // The outer row of the first wall is 4490 + 112.5 mm long in both courses: 20 1/2, and 40 1/2 + 41 are bought as 82.
    expect(corner(plinth('1 brick'), plinth('1/2 brick'))).toBe(82 + 31);
  });

  test('on ground that steps down from it, as on level ground', () => {
    const steps = '  ground steps at 2250 mm down 2 courses\n';
    const level = corner(plinth('1/2 brick'), plinth('1/2 brick'));
    expect(corner(plinth('1/2 brick'), plinth('1/2 brick') + steps)).toBe(level);
  });

  test('tells how it was laid', () => {
    const text = `${wall('a', 4490, `  right quoin b\n${plinth('1/2 brick')}`)}${wall('b', 3365, `  left quoin a\n`)}`;
    const need = jobIn(text).works[0]!.needs.bricks.find((b) => b.brick === 'engineering')!;
    expect(need.bricks.detail!().join(' ')).toContain('at corners its rows');
  });
});
