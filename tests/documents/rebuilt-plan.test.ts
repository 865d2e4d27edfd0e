/** What a repair builds again has a cut list and plans, as work that is new. */
import { describe, expect, test } from 'vitest';
import { canDraw, sheetsOf, type View } from '../../server/documents/work-sheets';
import { A4_LANDSCAPE } from '../../server/engine/drawing';
import { exampleJob } from '../engine/examples';
import { repaired } from '../engine/repairs/repairing';

const OWN = 'brick plain\nmix general\n';

function drawn(lines: string, view: View) {
  const { works, env } = repaired(`${OWN}${lines}`);
  const work = works.at(-1)!;
  return { work, sheets: sheetsOf(work, env, view, { paper: A4_LANDSCAPE, works }) };
}

describe('a pier built again', () => {
  const PIER = 'size 1.5 x 1.5 bricks\nrebuild 14 courses';

  test('has a plan of its courses', () => {
    const { work, sheets } = drawn(PIER, 'plan');
    expect(canDraw(work)).toBe(true);
    expect(sheets.length).toBeGreaterThan(0);
    expect(JSON.stringify(sheets)).toContain('built again');
  });

  // Four whole bricks round a half bat in every course: the bat is cut, two from a brick.
  test('has a cut list: a half bat in each of 14 courses, from seven bricks', () => {
    const [part] = drawn(PIER, 'plan').work.facts.cuts!();
    expect(part!.places).toMatchObject([{ piece: 'half', from: 0, to: 14, each: 1 }]);
    expect(part!.needed).toMatchObject({ wholes: 56, cut: 7, total: 63 });
  });

  test('counts its courses from the lowest that comes down', () => {
    const gate =
      'pier gate\n  brick plain\n  mix general\n  size 1.5 x 1.5 bricks\n  height 20 courses\n';
    const [work] = repaired('in gate\nrebuild 5 courses', gate).works.slice(-1);
    const [part] = work!.facts.cuts!();
    expect(part!.places).toMatchObject([{ piece: 'half', from: 0, to: 5 }]);
  });

  test('and so in examples/knocked-pier', () => {
    const { works, env } = exampleJob('knocked-pier/job.perp');
    const pier = works.find(({ name }) => name === 'pier')!;
    expect(pier.facts.cuts!().length).toBeGreaterThan(0);
    const plan = sheetsOf(pier, env, 'plan', { paper: A4_LANDSCAPE, works });
    expect(plan.length).toBeGreaterThan(0);
  });
});

test('a part of a wall built again has plans too; what is no laying has none', () => {
  const wall = drawn('thick 1 brick\nbond english\nrebuild 1.35 m x 9 courses', 'plan');
  expect(wall.sheets.length).toBeGreaterThan(0);
  expect(drawn('rebuild 20 bricks', 'plan').sheets).toEqual([]);
  expect(drawn('rebuild 20 bricks', 'plan').work.facts.cuts).toBeUndefined();
});
