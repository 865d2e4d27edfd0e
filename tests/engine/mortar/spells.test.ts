/** Batches over work at several paces: each laid within the working life, none larger than the mixer takes. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oneByOne, type Spell } from '../../../server/engine/mortar/spells';
import '../../harness/seed';
import { jobOf } from '../world';
import { amountOf } from './trial';

describe('batches one after the other', () => {
  test('are larger where the work goes fast', () => {
    // 40 l in an hour, then 4 l in an hour: with two hours to lay it, 80 l are the mixer’s 50, and 8 l the pointing’s.
    const spells = [
      { amount: 100, hours: 2.5 },
      { amount: 16, hours: 4 },
    ];
    expect(oneByOne(spells, { amount: 50, hours: 2 })).toEqual({
      count: 4,
      largest: 50,
      last: 8,
      differ: true,
    });
  });

  test('are none where nothing can be laid', () => {
    expect(oneByOne([{ amount: 5, hours: 1 }], { amount: 50, hours: 0 })).toBeUndefined();
    expect(oneByOne([], { amount: 50, hours: 2 })).toBeUndefined();
    expect(
      oneByOne([{ amount: Number.POSITIVE_INFINITY, hours: 1 }], { hours: 2 }),
    ).toBeUndefined();
  });

  test('hold what is laid, as a stopwatch has it', () => {
    const spell = fc.record({
      amount: fc.integer({ min: 1, max: 200 }),
      hours: fc.integer({ min: 1, max: 20 }),
    });
    const most = fc.record({
      amount: fc.integer({ min: 5, max: 90 }),
      hours: fc.integer({ min: 1, max: 8 }),
    });
    fc.assert(
      fc.property(fc.array(spell, { minLength: 1, maxLength: 5 }), most, (spells, max) => {
        const sizes = byStopwatch(spells, max);
        const found = oneByOne(spells, max)!;
        expect(found.count).toBe(sizes.length);
        expect(found.largest).toBeCloseTo(Math.max(...sizes), 6);
        expect(found.last).toBeCloseTo(sizes.at(-1)!, 6);
      }),
      { numRuns: 200 },
    );
  });
});

/** Batch by batch: mixed, and laid until it is gone, too old, or all is laid. */
function byStopwatch(spells: readonly Spell[], most: { amount: number; hours: number }): number[] {
  const left = spells.map((s) => ({ ...s, pace: s.amount / s.hours }));
  const sizes: number[] = [];
  while (left.length) {
    let [size, time] = [0, most.hours];
    while (left.length && time > 1e-7 && most.amount - size > 1e-7) {
      const now = left[0]!;
      const part = Math.min(now.amount, most.amount - size, time * now.pace);
      size += part;
      time -= part / now.pace;
      now.amount -= part;
      if (now.amount < 1e-7) left.shift();
    }
    sizes.push(size);
  }
  return sizes;
}

/** A one-brick wall, then ten square metres pointed in the same mix by the same hands. */
test('pointing takes small batches, though a wall is laid in the same mix', () => {
  const job = jobOf(`perpend 1
use uk
labour
  bricklayer £30 per h
  gang 1 bricklayer
wall north
  bond english
  thick 1 brick
  length 4.49 m
  height 16 courses
repair face
  stands-in cement
  repoint 10 m2 raked 20 mm
`);
  const pointing = (amountOf(job, 'face.mortar') * 1.1) / 10;
  const laying = (amountOf(job, 'north.mortar') * 1.1) / amountOf(job, 'north.hours');
  expect(amountOf(job, 'batch.general')).toBeCloseTo(2 * laying, 6);
  expect(amountOf(job, 'last.general')).toBeLessThanOrEqual(2 * pointing + 1e-6);
  // At the most one batch is begun on the wall and ended on the face.
  const least = Math.floor(amountOf(job, 'north.hours') / 2) + Math.floor(10 / 2);
  expect(amountOf(job, 'batches.general')).toBeGreaterThanOrEqual(least);
});
