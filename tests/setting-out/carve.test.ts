/** Gaps let into a wall after its bond. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bricksOf,
  carve,
  type Gap,
  letIn,
  type SettingOut,
  setOut,
  tally,
  tallyFace,
} from '../../server/engine/setting-out';
import { took } from '../harness/took';
import { BONDS, LIMITS, UK, UK_JOINTS } from './fixtures';

const wall = (bond: keyof typeof BONDS, thickness: 1 | 2, length: number, courses: number) =>
  setOut({
    unit: UK,
    joints: UK_JOINTS,
    bond: BONDS[bond],
    thickness,
    length,
    courses,
    left: 'stopped',
    right: 'stopped',
    openings: [],
    piers: [],
    limits: LIMITS,
  });

const pieces = (out: SettingOut, course: number) =>
  out.bands
    .filter((band) => course >= band.from && course < band.to)
    .flatMap((band) => band.segments.flatMap((segment) => [...bricksOf(segment, course)]));

describe('by hand, ten stretchers to a course', () => {
  const out = wall('stretcher', 1, 2240, 6);

  test('a brick that the gap takes part of is cut to a joint from it', () => {
    const carved = carve(out, [{ course: 2, from: 1000, to: 1240 }]);
    const found = pieces(carved, 2).map(({ piece, from, to }) => `${piece} ${from} ${to}`);
    expect(found).toEqual([
      'stretcher 0 215',
      'stretcher 225 440',
      'stretcher 450 665',
      'stretcher 675 890',
      'cut 900 990',
      'cut 1250 1340',
      'stretcher 1350 1565',
      'stretcher 1575 1790',
      'stretcher 1800 2015',
      'stretcher 2025 2240',
    ]);
    for (const course of [0, 1, 3, 4, 5])
      expect(pieces(carved, course)).toEqual(pieces(out, course));
  });

  test('on perpends nothing is cut', () => {
    const carved = carve(out, [{ course: 2, from: 900, to: 1340 }]);
    expect(pieces(carved, 2)).toHaveLength(8);
    expect(tallyFace(carved).cut).toBe(0);
  });

  test('a piece under the least cut is none: the brick beside it is cut with it', () => {
    // 930 - 900 = 30 mm would be left; 215 + 10 + 30 = 255 mm. Two of 122.5 would stand 20 mm from the perpend at 782.5
    // above and below: they lap that by what rules still call a lap, 225 x 2.2 / 12 = 41.25 mm.
    const carved = carve(out, [{ course: 2, from: 940, to: 1340 }]);
    const [, , , a, b] = pieces(carved, 2);
    expect([a, b].map((p) => p!.to - p!.from)).toEqual([61.25, 183.75]);
    expect(782.5 - (a!.to + 5)).toBe(41.25);
    expect(b!.to).toBe(930);
  });

  test('beside an upright end a three-quarter bat laps by a quarter', () => {
    const carved = carve(out, [{ course: 2, from: 940, to: 1340, upright: true }]);
    const [, , , a, b] = pieces(carved, 2);
    expect(a).toMatchObject({ piece: 'three-quarter', from: 675, to: 833.75 });
    expect(b).toMatchObject({ piece: 'cut', from: 843.75, to: 930 });
    expect(carved.poorLaps).toEqual([]);
  });

  test('a perpend over the upright joint of an end is told, with its course and place', () => {
    // 782.5 is a perpend of the courses above and below; the joint of an end at 787.5 stands there.
    const carved = carve(out, [{ course: 2, from: 787.5, to: 1340, upright: true }]);
    expect(carved.poorLaps).toEqual([
      { course: 2, at: 782.5, lap: 0, carved: true },
      { course: 3, at: 782.5, lap: 0, carved: true },
    ]);
    expect(carve(out, [{ course: 2, from: 900, to: 1340, upright: true }]).poorLaps).toEqual([]);
  });

  test('nothing is laid where there is no room for the least cut between two gaps', () => {
    const gaps = [
      { course: 2, from: 700, to: 1000 },
      { course: 2, from: 1027.5, to: 1340 },
    ];
    const between = pieces(carve(out, gaps), 2).filter((p) => p.from > 700 && p.to < 1340);
    expect(between).toEqual([]);
  });

  test('a course that is told in parts stays open where another wall runs in', () => {
    const opened = letIn(out, [{ from: 1345, to: 1447.5, parity: 0, courses: { from: 0, to: 6 } }]);
    const carved = carve(opened, [{ course: 2, from: 450, to: 900 }]);
    const at = (wall: SettingOut) => pieces(wall, 2).map(({ from, to }) => [from, to]);
    const beside = at(opened).filter(([from, to]) => to! < 450 - 9 || from! > 900 + 9);
    for (const piece of at(carved)) expect(piece[1]! - piece[0]!).toBeLessThanOrEqual(215);
    expect(at(carved).filter(([from]) => from! > 1100)).toEqual(
      beside.filter(([from]) => from! > 1100),
    );
  });

  test('a joint that may be wider takes up what is left', () => {
    const carved = carve(out, [{ course: 2, from: 902, to: 1340 }]);
    expect(pieces(carved, 2).map(({ piece }) => piece)).not.toContain('cut');
  });

  test('at an end of the wall only what is left of it stays', () => {
    const carved = carve(out, [{ course: 2, from: -50, to: 440 }]);
    expect(pieces(carved, 2)[0]).toMatchObject({ from: 450, to: 665 });
    expect(pieces(carve(out, [{ course: 2, from: -1, to: 2241 }]), 2)).toEqual([]);
  });
});

describe('whatever the wall and the gap', () => {
  const cases = fc.record({
    bond: fc.constantFrom(
      'english' as const,
      'flemish' as const,
      'englishGarden' as const,
      'stretcher' as const,
    ),
    halves: fc.integer({ min: 12, max: 60 }),
    course: fc.integer({ min: 0, max: 7 }),
    from: fc.double({ min: 300, max: 700, noNaN: true }),
    width: fc.double({ min: 150, max: 500, noNaN: true }),
  });

  test('no brick reaches into it, none is cut too short, joints are what they were, and nothing else moves', () => {
    fc.assert(
      fc.property(cases, ({ bond, halves, course, from, width }) => {
        const thickness = bond === 'stretcher' ? 1 : 2;
        const out = wall(bond, thickness, halves * 112.5 - 10, 8);
        const gap: Gap = { course, from, to: Math.min(from + width, halves * 112.5 - 10 - 300) };
        const carved = carve(out, [gap]);
        for (let i = 0; i < 8; i++)
          if (i !== course) expect(pieces(carved, i)).toEqual(pieces(out, i));
        const left = pieces(carved, course).filter((p) => p.to <= gap.from);
        const right = pieces(carved, course).filter((p) => p.from >= gap.to);
        expect(left.length + right.length).toBe(pieces(carved, course).length);
        const ends = [gap.from - left.at(-1)!.to, right[0]!.from - gap.to];
        for (const joint of ends) {
          expect(joint).toBeGreaterThanOrEqual(10 - 1e-6);
          expect(joint).toBeLessThanOrEqual(13 + 1e-6);
        }
        for (const side of [left, right])
          for (const [i, piece] of side.slice(1).entries())
            expect(piece.from - side[i]!.to).toBeCloseTo(10, 6);
        for (const { piece, from: a, to: b } of [...left, ...right])
          if (piece === 'cut') {
            expect(b - a).toBeGreaterThanOrEqual(LIMITS.leastCut - 1e-6);
            expect(b - a).toBeLessThanOrEqual(215 + 1e-6);
          }
        const lost = tally(out).grossVolume - tally(carved).grossVolume;
        expect(lost).toBeCloseTo((gap.to - gap.from) * 75 * out.thickness, 0);
      }),
      { numRuns: 300 },
    );
  });

  test('gaps side by side and one over another are as if let in one after the other', () => {
    const out = wall('flemish', 2, 4490, 9);
    const gaps = [1, 2, 3].flatMap((course) => [
      { course, from: 900 + course * 7, to: 1500 },
      { course, from: 2500, to: 3000 + course },
    ]);
    const once = carve(out, gaps);
    const twice = carve(carve(out, gaps.slice(0, 3)), gaps.slice(3));
    for (let i = 0; i < 9; i++) expect(pieces(once, i)).toEqual(pieces(twice, i));
    expect(tally(once)).toEqual(tally(twice));
  });

  test('takes no longer for a wall of a million bricks', () => {
    const out = wall('stretcher', 1, 225_000_000 - 10, 100_000);
    const carved = () => carve(out, [{ course: 50_000, from: 1e8 + 40, to: 1e8 + 1000 }]);
    expect(carved().bands).toHaveLength(3);
    expect(took(carved, 5)).toBeLessThan(200);
  });
});
