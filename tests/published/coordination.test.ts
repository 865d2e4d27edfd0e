/** A brick is as long as two are wide and a joint: what lets headers and stretchers share a wall. */
import { describe, expect, test } from 'vitest';
import { thicknessOf } from '../../server/engine/brickwork/masonry';
import { factsNamed } from '../../server/engine/resolve/env';
import { jobOf } from '../examples/engine';

/** Length, width, joint, mm. Each on the page named for the format in formats.test.ts, or in that source's list. */
const PUBLISHED = [
  ['UK 215', 215, 102.5, 10],
  ['NL 222', 222, 106, 10],
  ['IN 190', 190, 90, 10],
  ['AU, IN and UK imperial 230', 230, 110, 10],
  ['DE 240', 240, 115, 10],
  ['DK 228', 228, 108, 12],
  ['250', 250, 120, 10],
] as const;

test.each(PUBLISHED)('%s: two widths and a joint', (_, length, width, joint) => {
  expect(2 * width + joint).toBe(length);
  const unit = { length, width, height: 65 };
  expect(thicknessOf(1, unit, joint)).toBe(width);
  expect(thicknessOf(2, unit, joint)).toBe(length);
});

describe('bricks of the libraries that are laid as headers too', () => {
  const CASES = [
    ['uk', 'standard', 10],
    ['uk', 'engineering', 10],
    ['uk', 'imperial-73', 10],
    ['us', 'modular', 0.375 * 25.4],
    ['us', 'engineer-modular', 0.375 * 25.4],
    ['us', 'economy', 0.375 * 25.4],
    ['de', 'df', 10],
    ['de', 'nf', 10],
    ['de', 'zwei-df', 10],
  ] as const;
  test.each(CASES)('%s %s', (library, name, joint) => {
    const job = jobOf(`use ${library}\n`);
    const facts = factsNamed(job.env, 'brick', name)!;
    const [length, width] = facts.line('size')!.sides('size')!;
    expect(facts.line('joint')!.number('joint')).toBeCloseTo(joint, 9);
    expect(2 * width! + joint).toBeCloseTo(length!, 9);
  });
});

test('Designing Buildings, Brick sizes: 225 is twice 112.5 and three times 75', () => {
  const job = jobOf('use uk\n');
  const [length, width, height] = factsNamed(job.env, 'brick', 'standard')!
    .line('size')!
    .sides('size')!;
  expect(length! + 10).toBe(2 * (width! + 10));
  expect(length! + 10).toBe(3 * (height! + 10));
});

test('works sheet, CO- column: piers of 1, 1 1/2 and 2 bricks are 215, 327.5 and 440 mm', () => {
  const unit = { length: 215, width: 102.5, height: 65 };
  expect([2, 3, 4].map((halves) => thicknessOf(halves, unit, 10))).toEqual([215, 327.5, 440]);
});
