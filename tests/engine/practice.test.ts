/** What is the practice of the trade stands in the defaults: another firm’s lines are followed. */
import { describe, expect, test } from 'vitest';
import { HEADINGS } from '../../grammar/lines';
import { TASKS } from '../../grammar/lines/tasks';
import { inJobsAlike } from '../../server/engine/views/alike';
import { timetableOf } from '../../server/engine/views/timetable';
import type { Job } from '../../server/engine/workspace/job';
import { jobOf } from './world';

const HEAD = `perpend 1
use uk
labour
  bricklayer £20 per h
  gang       1 bricklayer
output
  facework 50 bricks per h
  coping   20 bricks per h
  footing  1 m3 per h
`;
const WALL = `wall w
  stands  held
  length  2240 mm
  height  12 courses
  thick   1 brick
  bond    english
  footing 450 x 225 mm
  coping  brick-on-edge
`;
const job = (defaults: string, work = WALL) =>
  jobOf(`${HEAD}${defaults && `defaults\n${defaults}`}${work}`);
const codes = (of: Job) => of.findings.map(({ code }) => code);

test('tasks are those that outputs are given for, but for loading out, which comes first of all', () => {
  const outputs = HEADINGS.find(({ key }) => key === 'output')!.body!.map(({ key }) => key);
  const tasks = outputs.filter((key) => key !== 'source' && key !== 'load-out');
  expect([...TASKS].sort()).toEqual([...tasks].sort());
});

describe('the order of work', () => {
  const days = (of: Job) =>
    timetableOf(of).map(({ entries }) =>
      entries.filter((entry) => entry.work).map((entry) => entry.label),
    );
  const [dig, face, top] = ['Digging and concreting', 'Laying the wall', 'Laying the coping'];

  test('concrete sets overnight; what carries comes before what lies on it', () => {
    expect(days(job(''))).toEqual([[dig], [face, top]]);
  });

  test('is that of the firm’s own line', () => {
    const own = '  task-order coping, footing, facework\n';
    expect(days(job(own))).toEqual([[top, dig], [face]]);
  });

  test('what no line has to set goes on the same day; what is not in the order comes after what raises', () => {
    const own = '  overnight repoint\n  task-order footing, facework\n';
    expect(days(job(own))).toEqual([[dig, face, top]]);
  });
});

describe('between what and what a price lies', () => {
  const cost = 'price\n  round £0.01\njob "A"\n  tax 0%\ncost skip "Skip" 1 at £100..£200\n';

  test.each([
    ['', 110, 190, 'in eight of ten jobs alike'],
    ['  price-between 25..75%\n', 125, 175, 'in five of ten jobs alike'],
    ['  price-between 5..90%\n', 105, 190, 'in 85 of a hundred jobs alike'],
    ['  price-between 5%\n', 105, 195, 'in nine of ten jobs alike'],
    ['  price-between 0..100%\n', 100, 200, 'in all jobs alike'],
  ])('%s: £%d to £%d', (line, low, high, said) => {
    const made = job(line, cost);
    const { spread, env } = made;
    expect(Math.abs(spread!.low.value.toNumber() - low)).toBeLessThan(0.4);
    expect(Math.abs(spread!.high.value.toNumber() - high)).toBeLessThan(0.4);
    expect(inJobsAlike(env)).toBe(said);
  });
});

describe('movement joints', () => {
  const parted = WALL.replace('2240', '4490');

  test('part off no less than the defaults have it', () => {
    const joint = `${parted}  movement-joint every 700 mm\n`;
    expect(codes(job('', joint))).toContain('movement-place');
    const found = job('', joint).findings.find((f) => f.code === 'movement-place')!;
    expect(found.message).toMatch(/not 4.bricks of it/);
    expect(codes(job('  movement-least 2 bricks\n', joint))).not.toContain('movement-place');
  });

  test('are filled as deep as the seals leave', () => {
    const strips = (defaults: string) =>
      job(defaults, `${parted}  movement-joint left 2240 mm\n`)
        .works[0]!.needs.pieces.find(({ material }) => material === 'joint-filler')!
        .count.value.toNumber();
    // 900 mm high in strips 1 m long and 100 mm wide: 215 less 20 mm takes two beside each other, less 120 mm one.
    expect(strips('')).toBe(2);
    expect(strips('  movement-seal 6\n')).toBe(1);
  });
});

test('a length that is over by no more than it is measured within is not told of', () => {
  const over = `${WALL}repair r\n  in w\n  recope 2247 mm\n`;
  expect(codes(job('', over))).not.toContain('mend-over');
  expect(codes(job('  measured-within 5 mm\n', over))).toContain('mend-over');
});
