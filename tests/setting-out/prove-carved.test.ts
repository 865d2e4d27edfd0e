/** Walls with arches let into them: every course closed against the arch, and what is lost is opening and arch. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import {
  archCourses,
  archGaps,
  archOf,
  carve,
  placeCourse,
  ringArea,
  type SettingOut,
  setOut,
  soffitArea,
} from '../../server/engine/setting-out';
import { builtBack, builtFace, rulesOf } from '../../server/engine/setting-out/place/built';
import { proveFace, provePlan } from '../../server/engine/setting-out/prove';
import { BONDS, overAll, wall } from './fixtures';
import { area, ofLap } from './proofs';
import { ENGLISH } from './thick';

const GAUGE = 75;
const BED = 10;
const WALLS = [
  { bond: BONDS.stretcher, thickness: 1 },
  { bond: BONDS.english, thickness: 2 },
  { bond: BONDS.flemish, thickness: 2 },
  { bond: ENGLISH[3], thickness: 3 },
  { bond: ENGLISH[4], thickness: 4 },
] as const;

/** An arch over the middle of a wall, its springing at a course. */
const cases = fc.record({
  kind: fc.constantFrom(...WALLS),
  halves: fc.integer({ min: 26, max: 40 }),
  span: fc.integer({ min: 4, max: 10 }).map((n) => 112.5 * n + 10),
  rise: fc.double({ min: 0.12, max: 0.5, noNaN: true }),
  rings: fc.integer({ min: 1, max: 3 }),
  springing: fc.integer({ min: 1, max: 4 }),
});

type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;

function built({ kind, halves, span, rise, rings, springing }: Case) {
  const length = overAll(halves);
  const middle = 112.5 * Math.floor(halves / 2) - 5;
  const opening = { name: 'o', from: middle - span / 2, width: span, sill: 0, top: springing };
  const out = setOut(wall({ ...kind, length, courses: 26, openings: [opening] }));
  const arch = archOf({ span, rise: rise * span, rings, ring: 102.5, bed: 10 })!;
  const at = { middle, course: springing };
  const gaps = archGaps(archCourses(arch, at, { gauge: GAUGE, bed: BED }), at);
  return { out, carved: carve(out, gaps), arch, gaps, opening, middle };
}

/**
 * Half the width of arch and opening at a height over the springing, from the circle of the back and the line of the
 * skewback through its centre alone (Euclid III: a skewback is a radius).
 */
function halfWidth({ back, drop, lean }: ReturnType<typeof built>['arch'], height: number): number {
  const up = height + drop;
  const onBack = Math.sqrt(Math.max(0, back ** 2 - up ** 2));
  return up < back * Math.cos(lean) ? up * Math.tan(lean) : onBack;
}

/** What no brick may reach into in a course: the narrower of the arch at its bricks’ foot and at their head. */
function gapIn({ arch, opening }: ReturnType<typeof built>, course: number): number {
  if (course < opening.top) return opening.width / 2;
  const foot = (course - opening.top) * GAUGE + BED;
  return Math.min(halfWidth(arch, foot), halfWidth(arch, foot + GAUGE - BED));
}

describe('a wall with an arch over an opening', () => {
  test('is closed on plan in every course, each row to a joint from the arch', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const all = built(each);
        const { out, carved, middle } = all;
        const { joint } = rulesOf(out.spec);
        for (let course = 0; course < 26; course++) {
          const half = gapIn(all, course);
          // In the opening itself bricks come to the reveal; against the arch there is half a joint of its own.
          const off = course < all.opening.top ? 0 : joint.most / 2;
          const right = { from: middle + half + off, to: out.spec.length };
          const clear =
            half > 0
              ? [{ from: 0, to: middle - half - off }, right]
              : [{ from: 0, to: out.spec.length }];
          const outline = clear.map(({ from, to }) => area(from, 0, to, out.thickness));
          expect(provePlan(course, placeCourse(carved, course), outline, joint)).toEqual([]);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('has no joint out of its limits and no sliver in either face', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const { carved } = built(each);
        const faces = [builtFace(carved), builtBack(carved)];
        const faults = faces.flatMap((face) => proveFace(face, rulesOf(carved.spec)));
        expect(faults.filter((f) => !ofLap(f))).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test('pieces, joints and gaps are the face; gaps are within opening and arch, to the wedges that cut bricks lose', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const { out, carved, arch, gaps } = built(each);
        const lost = faceArea(out) - faceArea(carved);
        expect(lost).toBeCloseTo(
          gaps.reduce((sum, g) => sum + (g.to - g.from) * GAUGE, 0),
          3,
        );
        // A wedge is as wide as the arch widens through one course, the highest as the crown is.
        const wedges = soffitArea(arch) + ringArea(arch) - lost;
        expect(wedges).toBeGreaterThan(0);
        expect(wedges).toBeLessThan(2 * GAUGE * (arch.span / 2 + arch.back));
      }),
      { numRuns: 25 },
    );
  });
});

/** Bricks with their joints, mm². */
function faceArea({ bands, gauge }: SettingOut): number {
  return bands.reduce((sum, { from, to, segments }) => {
    const long = segments.reduce((all, s) => all + s.to - s.from, 0);
    return sum + (to - from) * gauge * long;
  }, 0);
}
