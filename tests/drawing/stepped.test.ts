/** The elevation of a wall whose top and ground step. */
import { describe, expect, test } from 'vitest';
import { elevation } from '../../server/engine/drawing';
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
});
