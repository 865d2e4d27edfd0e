/** Plinths and corbels in the face: outlined where they are, their bricks shown, how far out told in the key. */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { wallPlans } from '../../server/engine/drawing';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';

const drawn = (lines: string, face: 'front' | 'back' = 'front') => {
  const text = `perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  thick 1 brick\n  bond english\n  length 4490 mm\n  height 12 courses\n${lines}`;
  const job = jobOf(text, { 'firm.perp': FIRM });
  const work = job.works[0]!;
  const drawing = drawingOf(work, job.env, { face })!;
  const outlines = drawing.boxes
    .filter((box) => box.style === 'projecting')
    .map(({ x, y, width, height }) => [x, y, width, height]);
  const keys = drawing.keys.filter((key) => key.style === 'projecting').map((key) => key.text);
  return { drawing, outlines, keys };
};

describe('a plinth', () => {
  const plinth = '  plinth 3 courses project 1/2 brick front\n';

  test('is outlined over its courses: 3 x 75 mm', () => {
    const { outlines, keys } = drawn(plinth);
    expect(outlines).toEqual([[0, 0, 4490, 225]]);
    expect(keys).toEqual(['plinth, 112.5 mm out']);
  });

  test('shows its own stretchers in the place of the wall’s bricks', () => {
    const low = drawn(plinth).drawing.boxes.filter(
      (box) => box.y < 225 && box.style !== 'projecting',
    );
    // 20 stretchers in courses 1 and 3; 19 between two half bats in course 2.
    expect(low.filter((box) => box.style === 'stretcher')).toHaveLength(59);
    expect(low.filter((box) => box.style === 'half')).toHaveLength(2);
    expect(low).toHaveLength(61);
  });

  test('goes up and down with the ground, and stops at openings', () => {
    const gate = '  opening gate\n    from left 2250 mm\n    width 910 mm\n';
    const { outlines } = drawn(`${plinth}  ground steps at 1125 mm down 2 courses\n${gate}`);
    expect(outlines.sort((a, b) => a[0]! - b[0]!)).toEqual([
      [0, 150, 1125, 225],
      [1125, 0, 1125, 225],
      [3160, 0, 1330, 225],
    ]);
  });

  test('out of both faces it is in both, out of the front in one', () => {
    const both = '  plinth 3 courses project 1/4 brick both\n';
    expect(drawn(both, 'back').outlines).toHaveLength(1);
    expect(drawn(both, 'back').keys).toEqual(['plinth, 56.3 mm out']);
    expect(drawn(plinth, 'back').outlines).toEqual([]);
  });
});

test.each([
  ['plinth', '  plinth 4 courses project 1/2 brick front\n'],
  ['corbel', '  corbel 2 courses project 20 mm each\n'],
])(
  'the name of a %s stands in the middle of a course, where no outline or bed joint crosses it',
  (name, line) => {
    const { drawing } = drawn(line);
    const { x, y } = drawing.labels.find(({ text }) => text === name)!;
    const under = drawing.boxes.filter(
      (box) => box.style !== 'projecting' && y > box.y && y < box.y + box.height,
    );
    expect(under.some((box) => Math.abs(x - box.x - box.width / 2) < 225)).toBe(true);
    for (const box of under) expect(y - box.y).toBeCloseTo(box.height / 2, 6);
  },
);

// 4450 mm are no half bricks: a cut stands in the middle of every course, where the name would.
test('the name of a corbel stands beside the size of a cut, not over it', () => {
  for (const courses of [1, 2, 3]) {
    const text = `perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  length 4450 mm\n  height 12 courses\n  fit run-1 cut 100 mm at middle\n  corbel ${courses} courses project 20 mm each\n`;
    const job = jobOf(text, { 'firm.perp': FIRM });
    const { labels } = drawingOf(job.works[0]!, job.env)!;
    const name = labels.find((label) => label.text === 'corbel')!;
    const sizes = labels.filter((l) => l.cut !== undefined && Math.abs(l.y - name.y) < 37);
    expect(sizes).toHaveLength(1);
    expect(Math.abs(sizes[0]!.x - 2225)).toBeLessThan(225);
    expect(Math.abs(sizes[0]!.x - name.x)).toBeGreaterThan(225);
  }
});

describe('a plinth on plan', () => {
  const plans = (line: string, course = 1) => {
    const text = `perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  thick 1 brick\n  bond english\n  length 4490 mm\n  height 12 courses\n  plinth 3 courses project ${line}\n`;
    const job = jobOf(text, { 'firm.perp': FIRM });
    const { settingOut, plinth } = job.works[0]!.facts;
    return wallPlans(settingOut!, { title: 'w', plinth, course });
  };
  const depth = (line: string) => {
    const { extent } = plans(line).groups[0]!.drawings.at(-1)!;
    return [extent.bottom, extent.top];
  };

  test('lies before the wall in rows of half a brick, a joint between', () => {
    expect(depth('1/2 brick front')).toEqual([-112.5, 215]);
    expect(depth('1 brick front')).toEqual([-225, 215]);
    expect(depth('1/2 brick both')).toEqual([-112.5, 215 + 112.5]);
  });

  test('is not there in the courses above it', () => {
    const { drawings } = plans('1/2 brick front', 2).groups[0]!;
    expect(drawings.map((d) => [d.title, d.extent.bottom])).toEqual([
      ['Course 4', 0],
      ['Course 3', -112.5],
    ]);
  });

  test('says that it is not drawn where its rows lie within', () => {
    expect(plans('1/4 brick both').notes.join()).toContain('The plinth is not drawn.');
    expect(plans('1/2 brick front').notes.join()).not.toContain('not drawn');
  });
});

describe('a corbel', () => {
  test('is outlined course by course, the topmost of twelve', () => {
    const { outlines, keys } = drawn('  corbel 2 courses project 20 mm each\n');
    expect(outlines).toEqual([
      [0, 750, 4490, 75],
      [0, 825, 4490, 75],
    ]);
    expect(keys).toEqual(['corbel, each course 20 mm out']);
  });

  test('steps with the top', () => {
    const { outlines } = drawn(
      '  top steps at 2240 mm down 2 courses\n  corbel 1 courses project 20 mm\n',
    );
    expect(outlines.sort((a, b) => a[0]! - b[0]!)).toEqual([
      [0, 825, 2240, 75],
      [2240, 675, 2250, 75],
    ]);
  });

  test.each(['1e9', '-3', '0.2'])('of %s courses throws nothing', (courses) => {
    expect(drawn(`  corbel ${courses} courses project 1 mm\n`).outlines.length).toBeLessThan(2);
  });
});

describe('a corbel on plan', () => {
  const plans = (lines: string, course?: number) => {
    const text = `perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  thick 1 brick\n  bond english\n  length 4490 mm\n  height 12 courses\n${lines}`;
    const job = jobOf(text, { 'firm.perp': FIRM });
    const { settingOut, corbel } = job.works[0]!.facts;
    return wallPlans(settingOut!, { title: 'w', course, corbel });
  };
  const CORBEL = '  corbel 3 courses project 20 mm each\n';
  const BRICKS = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut'];
  const across = (set: ReturnType<typeof plans>, place: string) =>
    set.groups
      .filter((g) => g.title === place)
      .flatMap((g) => g.drawings)
      .map(({ title, boxes }) => {
        const bricks = boxes.filter((box) => BRICKS.includes(box.style));
        const [front, back] = [bricks.map((b) => b.y), bricks.map((b) => b.y + b.height)];
        return [title, Math.min(...front), Math.max(...back)];
      });

  test('its two uppermost courses, of three each 20 mm further out: 60 and 40 mm', () => {
    expect(across(plans(CORBEL), 'Corbel')).toEqual([
      ['Course 12', -60, 155],
      ['Course 11', -40, 175],
    ]);
  });

  test('the courses that are asked for, wherever they are: the lowest of it on what stands upright', () => {
    expect(across(plans(CORBEL, 8), 'Left end')).toEqual([
      ['Course 10', -20, 195],
      ['Course 9', 0, 215],
    ]);
  });

  test('the distance is a dimension, and without a corbel there is no such place', () => {
    const [top] = plans(CORBEL).groups.find((g) => g.title === 'Corbel')!.drawings;
    const through = top!.chains.flatMap((c) => c.stops);
    expect(through).toContain(-60);
    expect(through).toContain(155);
    expect(across(plans(''), 'Corbel')).toEqual([]);
  });
});
