/** What stops a coping along a wall: movement joints, and the wall that its own runs into. By hand, joints of 10 mm. */
import { describe, expect, test } from 'vitest';
import { copingAtTee } from '../../server/engine/setting-out';
import { FIRM } from '../findings/tells';
import { jobOf } from './world';

const FILES = { 'firm.perp': `${FIRM}material creasing-tile\n  price £0.60 each\n` };
const wall = (name: string, length: number, lines: string) =>
  `wall ${name}\n  brick red\n  stands held\n  length ${length} mm\n  height 8 courses\n${lines}`;
const worksIn = (text: string) => jobOf(`perpend 1\nuse "firm.perp"\n${text}`, FILES).works;

describe('a movement joint goes through the coping (BDA, Designing for movement in brickwork)', () => {
  // 2240 mm are 30 bricks on edge; 10 mm are the joint; 2240 mm again.
  const lines = (coping: string) => `  movement-joint left 2240 mm\n  coping ${coping}\n`;
  const ends = (coping: string, kind: string) =>
    worksIn(wall('w', 4490, lines(coping)))[0]!
      .facts.tops!.filter((t) => t.kind === kind)
      .map((t) => [t.from, t.to, t.pieces.length, t.joint]);

  test('of bricks on edge: 30 on either side, no mortar against it', () => {
    expect(ends('brick-on-edge', 'brick-on-edge')).toEqual([
      [0, 2240, 30, 10],
      [2250, 4490, 30, 10],
    ]);
  });

  test('of precast lengths, and of tiles under bricks on edge', () => {
    expect(ends('precast 550 x 200 mm slab', 'precast')).toHaveLength(2);
    expect(ends('tiles', 'tiles').map(([from, to]) => [from, to])).toContainEqual([2250, 4490]);
  });

  test('without it the coping runs through', () => {
    const [work] = worksIn(wall('w', 4490, '  coping brick-on-edge\n'));
    expect(work!.facts.tops!.map((t) => [t.from, t.to])).toEqual([[0, 4490]]);
  });
});

describe('the coping of a wall that runs into the face of another', () => {
  const top = (other: string, own = '  coping brick-on-edge\n', how = '') => {
    const text = `${wall('long', 4490, other)}${wall('inner', 2250, `  left tee long 1 m${how}\n${own}`)}`;
    const [first] = worksIn(text).find((w) => w.name === 'inner')!.facts.tops!;
    return { from: first!.from, to: first!.to, count: first!.pieces.length };
  };
  const onEnd = '  coping brick-on-end\n';

  test('stops at the face with a joint: 2250 = 30 x 75', () => {
    expect(top(onEnd, onEnd)).toEqual({ from: 0, to: 2250, count: 30 });
    expect(top(onEnd, onEnd, ' bonded')).toEqual({ from: 0, to: 2250, count: 30 });
  });

  test('bricks on edge stand out by half of 215 - 102.5 mm over half a brick', () => {
    expect(top('  coping brick-on-edge\n').from).toBe(56.25);
  });

  test('stops at the side of a coping that stands out over the face: (200 - 102.5) / 2 mm in', () => {
    expect(top('  coping precast 600 x 200 mm slab\n').from).toBe(48.75);
  });

  test.each([
    ['against a higher wall with a joint', 600, 900, 300, { inset: 0, joint: 1 }],
    ['free over a lower one', 900, 600, 300, { inset: 0, joint: 0 }],
    ['free beside a top without a coping', 600, 600, 0, { inset: 0, joint: 0 }],
    ['at the side of a wider coping', 600, 600, 300, { inset: 42.5, joint: 1 }],
    ['at the face where the coping is narrower', 600, 600, 200, { inset: 0, joint: 1 }],
  ])('ends %s', (_, high, others, deep, end) => {
    const own = { length: 2250, high, thick: 102.5, deep: 102.5 };
    expect(copingAtTee(own, { length: 4490, high: others, thick: 215, deep })).toEqual(end);
  });
});
