/** The elevation of a wall whose top and ground step. */
import { describe, expect, test } from 'vitest';
import { elevation, type Mark, toSheet } from '../../server/engine/drawing';
import { spread } from '../../server/engine/drawing/spread';
import { levelsOf, setOut, stepsOf } from '../../server/engine/setting-out';
import { overAll, wall } from '../setting-out/fixtures';

// Forty half bricks, ten courses at the left end over ground two courses up; the ground down two, the top down three.
const length = overAll(40);
const foot = length - overAll(24);
const top = overAll(20);
const ground = levelsOf(length, 2, [{ at: foot, by: -2 }]);
const tops = levelsOf(length, 12, [{ at: top, by: -3 }]);
const opening = { name: 'gate', from: overAll(28), width: 910, sill: 0, top: null };
const out = setOut(
  wall({ length, courses: 12, steps: stepsOf(ground, tops, 12), openings: [opening] }),
);
const drawing = elevation(out, { title: 'stepped', dpc: 2 });
const strokes = (style: string) =>
  drawing.strokes
    .filter((s) => s.style === style)
    .map(({ from, to }) => [from.x, from.y, to.x, to.y].map((n) => Math.round(n)));

describe('a stepped wall drawn', () => {
  test('its ground goes down with it, upright at the step', () => {
    const over = length / 60;
    expect(strokes('ground')).toEqual([
      [-over, 150, foot, 150].map(Math.round),
      [foot, 0, length + over, 0].map(Math.round),
      [foot, 150, foot, 0].map(Math.round),
    ]);
  });

  test('its damp course is two courses above the ground everywhere, but for the gate', () => {
    const [left, ...right] = strokes('dpc');
    expect(left!.slice(1)).toEqual([300, Math.round(foot), 300]);
    expect(right.map((s) => s[1])).toEqual([150, 150]);
    expect(right[0]![2]).toBe(Math.round(opening.from));
    expect(right[1]![0]).toBe(Math.round(opening.from + opening.width));
  });

  test('no brick stands above its top or in its ground, and the gate ends at the top there', () => {
    const bricks = drawing.boxes.filter((b) => b.style !== 'opening');
    for (const { x, y, width, height } of bricks) {
      if (x >= top) expect(y + height).toBeLessThanOrEqual(9 * 75 + 1e-6);
      if (x + width <= foot) expect(y).toBeGreaterThanOrEqual(2 * 75);
    }
    const gate = drawing.boxes.find((b) => b.style === 'opening')!;
    expect([gate.y, gate.height]).toEqual([0, 9 * 75]);
  });

  test('its steps are dimensioned: where they are along it, and the levels of ground and top', () => {
    const round = (stops: readonly number[]) => stops.map(Math.round);
    const running = drawing.chains.find((c) => c.side === 'below' && c.form === 'running')!;
    const gate = [opening.from, opening.from + opening.width];
    expect(round(running.stops)).toEqual(round([0, foot, top, ...gate, length]));
    const heights = drawing.chains.find((c) => c.side === 'right')!;
    expect(round(heights.stops)).toEqual([0, 150, 675, 900]);
  });
});

describe('dimensions near one another', () => {
  type Text = Extract<Mark, { kind: 'text' }>;
  const kind = 'brick-on-edge' as const;
  const tops = [900, 921, 942, 1050, 1071, 1092].map((at) => {
    return { kind, from: 0, to: 800, at, height: 0.1, piece: 65, wholes: 1, joint: 10 };
  });
  const sheet = toSheet(elevation(out, { title: 'stepped', toppings: tops }));
  const levels = sheet.marks
    .filter((mark): mark is Text => mark.kind === 'text' && mark.align === 'start')
    .filter(({ text }) => ['900', '921.1', '942.1', '1050.1', '1071.1', '1092.1'].includes(text));

  test('do not touch, and stay about their ticks with a leader to each that is moved', () => {
    expect(levels).toHaveLength(6);
    const ys = levels.map(({ y }) => y - 2.5 * 0.36);
    for (const [i, y] of ys.entries()) if (i) expect(ys[i - 1]! - y).toBeGreaterThan(2.5);
    const ticks = levels.map(({ text }) => sheet.origin.y - Number(text) / sheet.scale);
    // Moved both ways about their middle, none further than half of what they take together.
    const off = ys.map((y, i) => y - ticks[i]!);
    expect(Math.max(...off)).toBeGreaterThan(0.4);
    expect(Math.min(...off)).toBeLessThan(-0.4);
    for (const by of off) expect(Math.abs(by)).toBeLessThan((6 * 2.8) / 2);
    for (const [i, tick] of ticks.entries()) {
      if (Math.abs(off[i]!) <= 0.4) continue;
      const leader = sheet.marks.some(
        (m) => m.kind === 'line' && Math.abs(m.y1 - tick) < 0.01 && Math.abs(m.y2 - ys[i]!) < 0.01,
      );
      expect(leader, levels[i]!.text).toBe(true);
    }
  });

  test('are moved no more than they have to be', () => {
    expect(spread([0, 10, 20], 3)).toEqual([0, 10, 20]);
    expect(spread([0, 0, 0], 3)).toEqual([-3, 0, 3]);
    expect(spread([0, 1, 10], 3)).toEqual([-1, 2, 10]);
    expect(spread([], 3)).toEqual([]);
  });
});
