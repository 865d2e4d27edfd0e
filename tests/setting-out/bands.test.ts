import { describe, expect, test } from 'vitest';
import {
  type PierSpec,
  setOut,
  sumTallies,
  tally,
  tallyPier,
} from '../../server/engine/setting-out';
import { everyCourse, lapOf } from './expand';
import { BONDS, overAll, UK, UK_JOINTS, wall } from './fixtures';
import { sketches } from './sketch';

const opening = { name: 'gate', from: overAll(12), width: 9 * 112.5 + 10, sill: 0, top: null };

/** One and a half bricks square: whole bricks and three-quarter bats, two plans in turn (common practice). */
const pier: PierSpec = {
  name: 'hanging',
  from: 1340,
  width: 327.5,
  depth: 327.5,
  courses: 14,
  plans: [
    [
      { piece: 'whole', count: 3 },
      { piece: 'three-quarter', count: 2 },
    ],
    [
      { piece: 'whole', count: 4 },
      { piece: 'half', count: 1 },
    ],
  ],
};

describe('bands', () => {
  test('a gap from ground to top leaves one band of two stretches', () => {
    const out = setOut(wall({ length: overAll(40), openings: [opening] }));
    expect(out.bands).toHaveLength(1);
    const [left, right] = out.bands[0]!.segments;
    expect([left!.halves, right!.halves]).toEqual([12, 19]);
    expect([left!.to, right!.from]).toEqual([1340, 2362.5]);
  });

  test('a window makes three: below, beside, above', () => {
    const window = { ...opening, sill: 3, top: 8 };
    const out = setOut(wall({ length: overAll(40), openings: [window] }));
    expect(out.bands.map((b) => [b.from, b.to, b.segments.length])).toEqual([
      [0, 3, 1],
      [3, 8, 2],
      [8, 10, 1],
    ]);
  });

  test('the bond is broken under the opening, and the break named, where the two sides do not run together', () => {
    const window = { name: 'w', from: overAll(12), width: 9 * 112.5 + 10, sill: 4, top: 8 };
    const spec = { bond: BONDS.english, thickness: 2, length: overAll(33), openings: [window] };
    const out = setOut(wall(spec as Parameters<typeof wall>[0]));
    const below = out.bands[0]!.segments[0]!;
    expect(below.halves).toBe(33);
    expect(below.broken).toEqual([
      { at: expect.closeTo(1340 + 1022.5 / 2, 6), why: 'bond', where: 'opening', opening: 'w' },
    ]);
    expect(out.bands[1]!.segments.map((s) => s.broken)).toEqual([[], []]);
    // Perpends run plumb past the reveal: twelve halves on each side are six stretchers.
    expect(sketches(below)[0]).toMatch(/^S\d+ H S\d+$/);
  });

  test('courses past a sill or head keep the patterns of the stretches beside it: no straight joints there', () => {
    // English, each stretch on whole or half bricks, several breaks to carry past each opening.
    const openings = [
      { name: 'a', from: 665, width: 572.5, sill: 4, top: 8 },
      { name: 'b', from: 2127.5, width: 460, sill: 2, top: 6 },
      { name: 'c', from: 3815, width: 460, sill: 2, top: 10 },
    ];
    const spec = wall({ bond: BONDS.english, thickness: 2, length: overAll(57), courses: 14 });
    const rows = everyCourse(setOut({ ...spec, openings }));
    for (let i = 1; i < rows.length; i++)
      for (const { bricks: below } of rows[i - 1]!.segments)
        for (const { bricks } of rows[i]!.segments)
          expect(lapOf(below, bricks), `course ${i}`).toBeGreaterThan(56.2);
  });

  test('what stands outside the wall is cut off, what overlaps is told, what is nothing makes nothing', () => {
    const odd = [
      { name: 'a', from: -500, width: 800, sill: 0, top: 4 },
      { name: 'b', from: 200, width: 600, sill: 2, top: 99 },
      { name: 'c', from: 99999, width: 100, sill: 0, top: null },
      { name: 'd', from: 1000, width: 0, sill: 0, top: null },
    ];
    const out = setOut(wall({ openings: odd }));
    expect(out.clashes).toEqual([{ a: 'a', b: 'b' }]);
    expect(out.bands.map((b) => b.segments.map((s) => s.from))).toEqual([[300], [800], [0, 800]]);
    expect(setOut(wall({ length: 0 })).bands).toEqual([]);
    expect(setOut(wall({ courses: 0 })).bands).toEqual([]);
    expect(tally(setOut(wall({ courses: 0 }))).wholes).toBe(0);
  });

  test('an opening as wide as the wall leaves courses with nothing in them', () => {
    const all = { name: 'all', from: 0, width: 2240, sill: 4, top: 6 };
    const out = setOut(wall({ openings: [all] }));
    expect(out.bands.map((b) => b.segments.length)).toEqual([1, 0, 1]);
  });
});

describe('piers', () => {
  test('a wall stops against a pier with a joint: coordinating size (CO), and CO+ between two', () => {
    const far = { ...pier, name: 'far', from: 1340 + 10 + 327.5 + 910 };
    const spec = wall({ length: 5000, piers: [{ ...pier, from: 1350 }, far] });
    const [left, between] = setOut(spec).bands[0]!.segments;
    // 1350 and 910 mm are the CO size of 6 bricks and the CO+ size of 4: Technical Information Sheet 9, Table 1.
    expect([left!.halves, left!.fits, left!.right]).toEqual([12, true, 'butted']);
    expect(left!.runs[0]!.joint).toBeCloseTo(10, 9);
    expect(between!.to - between!.from).toBeCloseTo(910, 9);
    expect([between!.halves, between!.runs[0]!.joint]).toEqual([8, expect.closeTo(10, 9)]);
  });

  test('a pier that the wall is bonded into takes its teeth', () => {
    const spec = wall({ length: 5000, piers: [{ ...pier, from: 1350, joins: 'toothed' }] });
    const left = setOut(spec).bands[0]!.segments[0]!;
    expect(left.runs.map((run) => run.length)).toEqual([1350, 1462.5]);
  });

  test('above a pier lower than itself the wall runs on', () => {
    const spec = wall({ length: 5000, courses: 10, piers: [{ ...pier, courses: 6 }] });
    expect(setOut(spec).bands.map((b) => [b.to, b.segments.length])).toEqual([
      [6, 2],
      [10, 1],
    ]);
  });

  test('a pier is counted from its plans, its own courses, in any range of them', () => {
    const all = tallyPier(pier, UK, UK_JOINTS);
    expect([all.wholes, all.threeQuarters, all.halves]).toEqual([7 * 7, 14, 7]);
    expect(all.grossVolume).toBeCloseTo(327.5 ** 2 * 75 * 14, 3);
    const bottom = tallyPier(pier, UK, UK_JOINTS, { from: 0, to: 3 });
    expect([bottom.wholes, bottom.threeQuarters, bottom.halves]).toEqual([10, 4, 1]);
    const rest = tallyPier(pier, UK, UK_JOINTS, { from: 3, to: null });
    expect(sumTallies([bottom, rest])).toEqual({
      ...all,
      brickVolume: expect.closeTo(all.brickVolume, 3),
      grossVolume: expect.closeTo(all.grossVolume, 3),
    });
  });
});
