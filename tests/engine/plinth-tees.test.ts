/** A plinth where another wall stands against its wall: its rows stop at that. UK bricks, joints of 10 mm: 20 bricks are 4490 mm. */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { behindOf, teesOf } from '../../server/documents/work-meets';
import { wallPlans } from '../../server/engine/drawing';
import { FIRM } from '../findings/tells';
import { JOB, wallText } from '../harness/walls';
import { worstOverlap } from '../setting-out/on-plan';
import { inRoot, jobOf, workspaceOf } from './world';

const ONE = '  bond english\n  thick 1 brick\n';
const plinth = (how = 'both', courses = 2) =>
  `  plinth ${courses} courses project 1/2 brick ${how} in engineering\n`;

const jobIn = (main: string, arm: string, facts = ONE) =>
  jobOf(
    `${JOB}${wallText({ name: 'w', height: '12 courses', facts }, main)}${wallText({ name: 'arm', height: '12 courses', length: '2240 mm', facts }, arm)}`,
    { 'firm.perp': FIRM },
  );

/** Engineering bricks are the plinth’s alone. */
const bricksOf = (job: ReturnType<typeof jobIn>, name: string) =>
  job.works
    .find((w) => w.name === name)!
    .needs.bricks.filter((b) => b.brick === 'engineering')
    .reduce((sum, b) => sum + b.bricks.value.toNumber(), 0);

describe('a plinth out of both faces', () => {
  // Behind, 2137.5 - 10 mm are 9 1/2 bricks and their joints on either side of the arm.
  const sides = (2137.5 - 10 + 10) / 225;

  test.each(['bonded', 'tied'])('stops behind at the sides of a wall that is %s', (how) => {
    expect(sides).toBe(9.5);
    const job = jobIn(plinth(), `  left tee w 2137.5 mm ${how}\n`);
    expect(bricksOf(job, 'w')).toBe(2 * 20 + 2 * 2 * sides);
    expect(bricksOf(jobIn(plinth(), ''), 'w')).toBe(2 * 20 + 2 * 20);
  });

  test('in front of the wall alone goes on', () => {
    const job = jobIn(plinth(''), '  left tee w 2137.5 mm tied\n');
    expect(bricksOf(job, 'w')).toBe(2 * 20);
  });

  test('goes on over a wall that is lower', () => {
    const job = jobIn(plinth('both', 4), '  left tee w 2137.5 mm tied\n');
    const low = jobOf(
      `${JOB}${wallText({ name: 'w', height: '12 courses', facts: ONE }, plinth('both', 4))}${wallText({ name: 'arm', height: '2 courses', length: '2240 mm', facts: ONE }, '  left tee w 2137.5 mm tied\n')}`,
      { 'firm.perp': FIRM },
    );
    expect(bricksOf(job, 'w')).toBe(4 * 20 + 4 * 2 * sides);
    expect(bricksOf(low, 'w')).toBe(4 * 20 + 2 * 2 * sides + 2 * 20);
  });

  test('of the wall that runs in begins behind the plinth of the other', () => {
    // 2240 mm less the joint against the face, ten bricks; less half a brick where the other plinth lies.
    const job = jobIn(plinth(), `  left tee w 2137.5 mm tied\n${plinth()}`);
    expect(bricksOf(jobIn('', `  left tee w 2137.5 mm tied\n${plinth()}`), 'arm')).toBe(2 * 2 * 10);
    expect(bricksOf(job, 'arm')).toBe(2 * 2 * 9.5);
    expect(bricksOf(job, 'w')).toBe(2 * 20 + 2 * 2 * sides);
  });

  test('is worked out again when a wall that is only tied to it moves', () => {
    const text = (at: string, courses: number) =>
      `${JOB}${wallText({ name: 'w', height: '12 courses', facts: ONE }, plinth())}${wallText({ name: 'arm', height: `${courses} courses`, length: '2240 mm', facts: ONE }, `  left tee w ${at} tied\n`)}`;
    const name = inRoot('job.perp');
    const workspace = workspaceOf({ 'firm.perp': FIRM, 'job.perp': text('2137.5 mm', 12) });
    const behind = () => bricksOf(workspace.job(name)!, 'w') - 2 * 20;
    workspace.opened(name, text('2137.5 mm', 12));
    expect(behind()).toBe(2 * (9.5 + 9.5));
    workspace.replaced(name, text('2025 mm', 12));
    expect(behind()).toBe(2 * (9 + 10));
    workspace.replaced(name, text('2025 mm', 1));
    expect(behind()).toBe(9 + 10 + 20);
  });
});

describe('where a wall with a plinth is met', () => {
  test.each([
    ['left', 'bonded', plinth()],
    ['left', 'tied', ''],
    ['right', 'bonded', plinth()],
    ['right', 'tied', plinth('both', 1)],
  ])('by a %s end, %s, no brick lies in another on plan', (end, how, own) => {
    const job = jobIn(plinth(), `  ${end} tee w 2137.5 mm ${how}\n${own}`);
    for (const work of job.works) {
      const out = work.facts.laid ?? work.facts.settingOut!;
      const tees = teesOf(work, job.works, 'millimetres');
      const behind = behindOf(work, out);
      const { groups, notes } = wallPlans(out, {
        title: '',
        behind,
        tees,
        plinth: work.facts.plinth,
      });
      const met = groups.filter(({ title }) => tees.some((tee) => tee.title === title));
      expect(met).toHaveLength(2);
      for (const { drawings } of met) {
        const boxes = drawings[0]!.boxes.map((b) => {
          return { x: b.x, y: b.y, right: b.x + b.width, top: b.y + b.height };
        });
        expect(worstOverlap(boxes)).toBeLessThan(1e-6);
        // In front of the wall, and behind it.
        expect(Math.min(...boxes.map((b) => b.y))).toBe(-112.5);
        expect(boxes.some((b) => Math.abs(b.y - 225) < 0.01 && b.right < 2137.5)).toBe(true);
      }
      expect(notes.join()).not.toContain('plinth');
    }
  });

  test('the back shows it on either side, the front all along', () => {
    const { works, env } = jobIn(plinth(), '  left tee w 2137.5 mm tied\n');
    const areas = (face: 'front' | 'back') =>
      drawingOf(works[0]!, env, { face })!
        .boxes.filter(({ style }) => style === 'projecting')
        .map(({ x, width }) => [x, x + width]);
    expect(areas('front')).toEqual([[0, 4490]]);
    expect(areas('back').sort((a, b) => a[0]! - b[0]!)).toEqual([
      [0, 2127.5],
      [2362.5, 4490],
    ]);
  });
});
