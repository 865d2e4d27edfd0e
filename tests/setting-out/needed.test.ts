import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BricksNeeded,
  bricksNeeded,
  setOut,
  type Tally,
  tally,
} from '../../server/engine/setting-out';
import { BONDS, overAll, UK, wall } from './fixtures';

const none: Tally = {
  wholes: 0,
  halves: 0,
  threeQuarters: 0,
  closers: 0,
  cuts: [],
  brickVolume: 0,
  grossVolume: 0,
};

const need = (part: Partial<Tally>, kerf = 0, bats: { length: number; count: number }[] = []) =>
  bricksNeeded({ ...none, ...part }, UK, 10, kerf, bats);

/** Whichever way they are nested, exactly the pieces of the tally come out, and each brick has room for its own. */
function holds({ cuttings, total, cut, wholes }: BricksNeeded, part: Partial<Tally>, kerf: number) {
  const out = new Map<string, number>();
  for (const { bat = UK.length, times, pieces } of cuttings) {
    const each = pieces.flatMap((p) => Array<number>(p.count).fill(p.length));
    const needs = each.reduce((a, b) => a + b, 0) + (each.length - 1) * kerf;
    expect(needs).toBeLessThanOrEqual(bat + 1e-6);
    for (const { piece, length, count } of pieces) {
      const key = piece === 'cut' ? `cut ${length}` : piece;
      out.set(key, (out.get(key) ?? 0) + count * times);
    }
  }
  const all = { ...none, ...part };
  const wanted = new Map<string, number>([
    ['half', all.halves],
    ['three-quarter', all.threeQuarters],
    ['closer', all.closers],
    ...all.cuts.map(({ length, count }): [string, number] => [`cut ${length}`, count]),
  ]);
  for (const [key, count] of wanted) expect(out.get(key) ?? 0).toBe(count);
  const fresh = cuttings.reduce((sum, c) => sum + (c.bat === undefined ? c.times : 0), 0);
  expect([cut, total]).toEqual([fresh, wholes + fresh]);
}

describe('bricks for pieces', () => {
  test('two half bats or two closers from a brick, one three-quarter bat', () => {
    expect(need({ wholes: 10, halves: 4, threeQuarters: 4, closers: 6 }).total).toBe(
      10 + 2 + 4 + 3,
    );
  });

  test('an odd closer is had of the half brick that an odd half bat leaves', () => {
    const part = { halves: 5, closers: 7 };
    expect(need(part).total).toBe(6);
    holds(need(part), part, 0);
  });

  test('a saw that takes more than the 10 mm between two halves leaves one from a brick', () => {
    expect(need({ halves: 6 }, 10).total).toBe(3);
    expect(need({ halves: 6 }, 10.5).total).toBe(6);
    expect(need({ closers: 6 }, 10).total).toBe(3);
    expect(need({ closers: 6 }, 10.5).total).toBe(6);
  });

  test('cuts from a brick where they and the kerfs between them go into 215 mm', () => {
    const cuts = [
      { length: 70, count: 3 },
      { length: 145, count: 2 },
    ];
    expect(need({ cuts }).total).toBe(3);
    // 70 + 3 + 145 = 218 and 3 x 70 + 2 x 3 = 216 do not go in.
    expect(need({ cuts }, 3).total).toBe(4);
    // The last of two ends where the brick does: one kerf, not two.
    expect(need({ cuts: [{ length: 106, count: 2 }] }, 3).total).toBe(1);
    expect(need({ cuts: [{ length: 51.5, count: 4 }] }, 3).total).toBe(1);
    expect(need({ cuts: [{ length: 51.6, count: 4 }] }, 3).total).toBe(2);
  });

  test('what a three-quarter bat leaves serves for a short cut: 158.75 + 3 + 53.25 = 215', () => {
    const part = { threeQuarters: 2, cuts: [{ length: 53.25, count: 2 }] };
    expect(need(part, 3).total).toBe(2);
    holds(need(part, 3), part, 3);
  });

  test('bats at hand come first, and are told how many are left', () => {
    const bats = [{ length: 102.5, count: 40 }];
    const found = need({ wholes: 3, halves: 12, cuts: [{ length: 120, count: 2 }] }, 3, bats);
    expect([found.total, found.cut, found.bats[0]!.count]).toEqual([3 + 2, 2, 28]);
    // A bat of 102.5 mm is long enough for a cut of 60 and not for two.
    const cuts = need({ cuts: [{ length: 60, count: 50 }] }, 3, bats);
    expect([cuts.cut, cuts.bats[0]!.count]).toEqual([4, 0]);
  });

  test('nonsense has an answer: slivers, pieces longer than a brick, more than anyone cuts', () => {
    expect(need({ cuts: [{ length: 0, count: 5 }] }, -4).total).toBe(1);
    expect(need({ cuts: [{ length: 5000, count: 5 }] }, 3).total).toBe(5);
    expect(need({ halves: 1e12 }, 3).total).toBe(5e11);
    expect(need({ halves: 3 }, 3, [{ length: -1, count: 9 }]).total).toBe(2);
    const many = Array.from({ length: 3000 }, (_, i) => ({ length: 50 + i / 20, count: 1 }));
    expect(need({ cuts: many }, 3).total).toBeGreaterThan(1500);
  });
});

/** Fewest bricks for a few pieces, every way to share them out tried. */
function fewest(cuts: readonly number[], kerf: number, most: number): number {
  const rooms: number[] = [];
  const place = (i: number): number => {
    if (rooms.length >= most) return most;
    if (i === cuts.length) return rooms.length;
    let best = most;
    for (const [b, room] of rooms.entries())
      if (cuts[i]! + kerf <= room) {
        rooms[b] = room - cuts[i]! - kerf;
        best = Math.min(best, place(i + 1));
        rooms[b] = room;
      }
    rooms.push(215 + kerf - cuts[i]! - kerf);
    best = Math.min(best, place(i + 1));
    rooms.pop();
    return best;
  };
  return place(0);
}

describe('nesting', () => {
  const few = fc.array(fc.integer({ min: 40, max: 210 }), { minLength: 1, maxLength: 7 });

  test('is the best there is for a few pieces, every way tried', () => {
    fc.assert(
      fc.property(few, fc.constantFrom(0, 3, 5), (lengths, kerf) => {
        const cuts = [...new Set(lengths)].map((length) => {
          return { length, count: lengths.filter((l) => l === length).length };
        });
        const found = need({ cuts }, kerf);
        holds(found, { cuts }, kerf);
        expect(found.total).toBe(fewest(lengths, kerf, lengths.length + 1));
      }),
      { numRuns: 400 },
    );
  });
});

test('a wall: the closers of an English wall cost half a brick each', () => {
  const spec = wall({ bond: BONDS.english, thickness: 2, length: overAll(12), courses: 4 });
  const all = tally(setOut(spec));
  expect(all.closers).toBe(4);
  expect(bricksNeeded(all, UK, 10).total).toBe(all.wholes + 2);
});
