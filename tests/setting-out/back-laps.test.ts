/** The back of walls of more than a brick: what laps too little there is told, beside what the front has. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import { carve, type PoorLap, type SettingOut, setOut } from '../../server/engine/setting-out';
import { builtBack, rulesOf } from '../../server/engine/setting-out/place/built';
import { proveFace } from '../../server/engine/setting-out/prove';
import { overAll, wall } from './fixtures';
import { ofLap } from './proofs';
import { libraryBonds, unlike } from './thick';

const KINDS = unlike(
  libraryBonds().filter(
    ({ n, bond, thickness }) => n === undefined && bond.lap > 0 && thickness > 2,
  ),
).map((each) => ({ ...each, name: `${each.library} ${each.name} ${each.thickness}` }));

const inBack = ({ poorLaps }: SettingOut): PoorLap[] => poorLaps.filter((lap) => lap.back);

/** Under what rules still call a lap, 41 mm of 56. */
function faultsOf(out: SettingOut) {
  const back = builtBack(out).map((course) => ({ ...course, broken: [] }));
  return proveFace(back, { ...rulesOf(out.spec), lap: (225 * 2.2) / 12 - 0.5 }).filter(ofLap);
}

const openings = fc.record({
  from: fc.integer({ min: 450, max: 1500 }),
  width: fc.integer({ min: 450, max: 1200 }),
  after: fc.integer({ min: 450, max: 1500 }),
});

describe.each(KINDS)('$name', ({ bond, thickness }) => {
  const specOf = (from: number, width: number, after: number) =>
    wall({
      bond,
      thickness,
      length: from + width + after,
      courses: 12,
      openings: [{ name: 'o', from, width, sill: 3, top: 8 }],
    });

  test('in brickwork sizes the back laps, and nothing is told of it', () => {
    for (const width of [910, 1022.5, 1135]) {
      const out = setOut(specOf(overAll(10), width, overAll(11)));
      expect(faultsOf(out)).toEqual([]);
      expect(inBack(out)).toEqual([]);
    }
  });

  test('of any sizes, with a lintel or none, nothing laps too little in the back that is not told', () => {
    fc.assert(
      fc.property(openings, fc.boolean(), ({ from, width, after }, lintel) => {
        const plain = setOut(specOf(from, width, after));
        const gap = { course: 8, from: from - 100, to: from + width + 100, upright: true };
        const out = lintel ? carve(plain, [gap]) : plain;
        const told = inBack(out);
        for (const { course, at } of faultsOf(out))
          expect(told.some((lap) => lap.course === course && Math.abs(lap.at - at) < 1)).toBe(true);
      }),
      { numRuns: 12 },
    );
  });
});

test('by hand: the end of a lintel over a joint of the back', () => {
  // Two bricks of English bond. In a course whose back is headers from the reveal on, 665 mm, the first is 102.5 mm long and its perpend
  // is at 557.5; the joint at the end of a lintel that bears 100 mm, right over it, is at 560, 2.5 mm from that.
  const { bond } = libraryBonds().find(
    (b) => b.library === 'uk' && b.name === 'english' && b.thickness === 4,
  )!;
  const spec = wall({
    bond,
    thickness: 4,
    length: 2802.5,
    courses: 12,
    openings: [{ name: 'o', from: 665, width: 1022.5, sill: 3, top: 8 }],
  });
  const out = carve(setOut(spec), [{ course: 8, from: 565, to: 1787.5, upright: true }]);
  expect(inBack(out)[0]).toMatchObject({ course: 8, at: 560, lap: 2.5, carved: true });
});
