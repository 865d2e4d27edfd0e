import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Chunk, type DayPlan, timetable } from '../../server/engine/labour/timetable';

const PLAN: DayPlan = { start: 480, hours: 8, before: [], after: [], breaks: [] };
const chunk = (work: string, label: string, hours: number, lift?: number): Chunk => ({
  work,
  label,
  hours,
  lift,
});
const told = (chunks: readonly Chunk[], plan: DayPlan) =>
  timetable(chunks, plan).map((day) =>
    day.entries.map((e) => `${e.from}-${e.to} ${e.label}${e.work ? ` ${e.work}` : ''}`),
  );

describe('a timetable', () => {
  test('goes on the next day where a day is full', () => {
    expect(told([chunk('a', 'lay', 10)], PLAN)).toEqual([['480-960 lay a'], ['480-600 lay a']]);
  });

  test('has what goes before and after the work in every day', () => {
    const plan = {
      ...PLAN,
      before: [{ label: 'up', hours: 0.5 }],
      after: [{ label: 'down', hours: 0.5 }],
    };
    expect(told([chunk('a', 'lay', 8)], plan)).toEqual([
      ['480-510 up', '510-930 lay a', '930-960 down'],
      ['480-510 up', '510-570 lay a', '570-600 down'],
    ]);
  });

  test('parts a task at a break, which is not of the paid day', () => {
    const plan = { ...PLAN, breaks: [{ at: 750, minutes: 30 }] };
    expect(told([chunk('a', 'lay', 8)], plan)).toEqual([
      ['480-750 lay a', '750-780 Break', '780-990 lay a'],
    ]);
  });

  test('leaves out a break that no work comes after', () => {
    const plan = { ...PLAN, breaks: [{ at: 750, minutes: 30 }] };
    expect(told([chunk('a', 'lay', 2)], plan)).toEqual([['480-600 lay a']]);
  });

  test('puts a lift on the next day, and other work between', () => {
    const chunks = [
      chunk('pier', 'lift 1', 2, 1),
      chunk('pier', 'lift 2', 2, 2),
      chunk('pier', 'cap', 1),
      chunk('wall', 'point', 3),
    ];
    expect(told(chunks, PLAN)).toEqual([
      ['480-600 lift 1 pier', '600-780 point wall'],
      ['480-600 lift 2 pier', '600-660 cap pier'],
    ]);
    expect(timetable(chunks, PLAN)[0]!.waits).toBe('lift');
    expect(timetable(chunks, PLAN)[1]!.waits).toBeUndefined();
  });

  test('both skins of a lift go up on its day', () => {
    const chunks = [
      chunk('wall', 'face 1', 2, 1),
      chunk('wall', 'back 1', 1, 1),
      chunk('wall', 'face 2', 2, 2),
      chunk('wall', 'back 2', 1, 2),
    ];
    expect(told(chunks, PLAN)).toEqual([
      ['480-600 face 1 wall', '600-660 back 1 wall'],
      ['480-600 face 2 wall', '600-660 back 2 wall'],
    ]);
  });

  test('concrete sets over night', () => {
    const footing = { ...chunk('wall', 'concrete', 2), sets: true };
    const chunks = [footing, chunk('wall', 'lay', 2), chunk('other', 'point', 1)];
    expect(told(chunks, PLAN)).toEqual([
      ['480-600 concrete wall', '600-660 point other'],
      ['480-600 lay wall'],
    ]);
    expect(timetable(chunks, PLAN)[0]!.waits).toBe('set');
  });

  test('a break that falls into the cleaning down is not taken', () => {
    const plan = {
      ...PLAN,
      after: [{ label: 'down', hours: 0.5 }],
      breaks: [{ at: 600, minutes: 30 }],
    };
    expect(told([chunk('a', 'lay', 2)], plan)).toEqual([['480-600 lay a', '600-630 down']]);
    expect(told([chunk('a', 'lay', 1.75)], plan)).toEqual([['480-585 lay a', '585-615 down']]);
  });

  test('is none where nothing is left of the day', () => {
    const plan = { ...PLAN, before: [{ label: 'drive', hours: 8 }] };
    expect(timetable([chunk('a', 'lay', 1)], plan)).toEqual([]);
  });

  test('holds every hour of the work once, in days no longer than they are, without gaps', () => {
    const hours = fc.integer({ min: 1, max: 300 }).map((n) => n / 20);
    const work = fc.record({ name: fc.constantFrom('a', 'b', 'c'), hours, lift: fc.boolean() });
    fc.assert(
      fc.property(fc.array(work, { minLength: 1, maxLength: 9 }), fc.boolean(), (works, pause) => {
        const breaks = pause ? [{ at: 600, minutes: 20 }] : [];
        const before = [{ label: 'up', hours: 0.5 }];
        const chunks = works.map((w, i) =>
          chunk(w.name, `${i}`, w.hours, w.lift ? i + 1 : undefined),
        );
        const days = timetable(chunks, { ...PLAN, breaks, before });
        const done = days.flatMap((d) => d.entries).filter((e) => e.work);
        const total = done.reduce((sum, e) => sum + e.to - e.from, 0) / 60;
        expect(total).toBeCloseTo(
          works.reduce((sum, w) => sum + w.hours, 0),
          6,
        );
        for (const { entries } of days) {
          const paid = entries.filter((e) => !e.rest).reduce((sum, e) => sum + e.to - e.from, 0);
          expect(paid).toBeLessThanOrEqual(480 + 1e-6);
          for (const [i, e] of entries.entries()) if (i) expect(e.from).toBe(entries[i - 1]!.to);
        }
      }),
      { numRuns: 300 },
    );
  });
});
