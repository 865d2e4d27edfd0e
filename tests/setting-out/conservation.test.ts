/** What goes in comes out: areas to the square millimetre, pieces to wholes, parts to the whole, and a wall to its mirror image. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bricksNeeded,
  type LaidRun,
  type SettingOut,
  setOut,
  sumTallies,
  type Tally,
  tally,
  tallyFace,
  type WallSpec,
} from '../../server/engine/setting-out';
import { coordinatedWall, plainWall, rudeWall } from './arbitrary';
import { BONDS, UK } from './fixtures';

/** Course by course, what openings and piers leave of a wall, mm: intervals merged, with nothing of the engine's. */
function clearLength(spec: WallSpec, course: number): number {
  const piers = spec.piers.map((p) => ({ ...p, sill: 0, top: p.courses }));
  const holes = [...spec.openings, ...piers]
    .filter((h) => h.sill <= course && (h.top ?? spec.courses) > course)
    .map((h) => [Math.max(0, h.from), Math.min(spec.length, h.from + h.width)] as const)
    .filter(([from, to]) => to > from)
    .sort((a, b) => a[0] - b[0]);
  let taken = 0;
  let reached = 0;
  for (const [from, to] of holes) {
    taken += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return spec.length - taken;
}

function piecesAndJoints(run: LaidRun): { pieces: number; length: number } {
  let pieces = 0;
  let length = 0;
  for (const group of run.groups)
    for (const piece of group.pieces) {
      pieces += piece.count * group.times;
      length += piece.count * group.times * piece.length;
    }
  return { pieces, length };
}

const jointsIn = (run: LaidRun, pieces: number) =>
  pieces - 1 + run.endJoints.left + run.endJoints.right;

/** Each course of each stretch, once for every course of the wall. */
function* coursesOf(out: SettingOut) {
  for (const { from, to, segments } of out.bands)
    for (let course = from; course < to; course++)
      for (const segment of segments)
        yield { course, segment, run: segment.runs[course % segment.runs.length]! };
}

describe('areas, to the square millimetre', () => {
  test('stretches and what interrupts them make the face of the wall', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const found = new Array<number>(spec.courses).fill(0);
        for (const { course, segment } of coursesOf(out))
          found[course]! += segment.to - segment.from;
        const off = found.map((length, course) => Math.abs(length - clearLength(spec, course)));
        expect(Math.max(...off) * out.gauge).toBeLessThan(1);
      }),
      { numRuns: 150 },
    );
  });

  test('pieces and joints make each course', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        for (const { segment, run } of coursesOf(out)) {
          const { pieces, length } = piecesAndJoints(run);
          if (pieces === 0) continue;
          const laid = length + jointsIn(run, pieces) * run.joint;
          expect(Math.abs(laid - run.length) * out.gauge).toBeLessThan(1);
          if (segment.left !== 'toothed' && segment.right !== 'toothed')
            expect(run.length).toBeCloseTo(segment.to - segment.from, 6);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('mortar of a half-brick wall is its beds and perpends', () => {
    fc.assert(
      fc.property(rudeWall, (rude) => {
        const spec = { ...rude, thickness: 1 as const };
        const out = setOut(spec);
        let mortar = 0;
        for (const { run } of coursesOf(out)) {
          const { length } = piecesAndJoints(run);
          mortar += run.length * spec.joints.bed * UK.width;
          mortar += (run.length - length) * UK.height * UK.width;
        }
        const { grossVolume, brickVolume, cuts } = tally(out);
        fc.pre(cuts.every((cut) => cut.length > 0));
        expect(Math.abs(grossVolume - brickVolume - mortar)).toBeLessThan(1 + mortar * 1e-9);
      }),
      { numRuns: 200 },
    );
  });
});

/** Bricks that the pieces are parts of: by their lengths, with a joint each. */
function equivalent({ wholes, halves, threeQuarters, closers, cuts }: Tally): number {
  const cut = cuts.reduce((sum, { length, count }) => sum + ((length + 10) / 225) * count, 0);
  return wholes + halves / 2 + closers / 2 + threeQuarters * 0.75 + cut;
}

describe('pieces', () => {
  test('the bricks needed hold all the pieces, and are no more than they', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const all = tally(setOut(spec));
        const { total } = bricksNeeded(all, UK, 10);
        const pieces = all.halves + all.threeQuarters + all.closers;
        const cut = all.cuts.reduce((sum, { count }) => sum + count, 0);
        expect(total * UK.length * UK.width * UK.height).toBeGreaterThanOrEqual(
          all.brickVolume - 1,
        );
        expect(total).toBeLessThanOrEqual(all.wholes + pieces + cut);
      }),
      { numRuns: 150 },
    );
  });

  test('the face shows what the tally counts, a leaf at a time', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const out = setOut({ ...spec, thickness: 1 });
        const face = tallyFace(out);
        const all = tally(out);
        expect(all.wholes).toBe(face.stretcher);
        expect(all.halves).toBe(face.half + face.header);
        expect(all.threeQuarters).toBe(face['three-quarter']);
      }),
      { numRuns: 200 },
    );
  });

  test('twice the thickness takes twice the bricks', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const bricks = (thickness: 1 | 2) => equivalent(tally(setOut({ ...spec, thickness })));
        expect(bricks(2) / bricks(1)).toBeCloseTo(2, 6);
      }),
      { numRuns: 200 },
    );
  });
});

describe('parts of a wall', () => {
  test('its courses in any ranges sum to all of them', () => {
    const ranges = fc.array(fc.integer({ min: 0, max: 20 }), { maxLength: 4 });
    fc.assert(
      fc.property(rudeWall, ranges, (spec, at) => {
        const out = setOut(spec);
        const edges = [0, ...at.sort((a, b) => a - b), null];
        const parts = edges.slice(1).map((to, i) => tally(out, { from: edges[i] as number, to }));
        const [sum, all] = [sumTallies(parts), tally(out)];
        for (const key of ['wholes', 'halves', 'threeQuarters', 'closers'] as const)
          expect(sum[key]).toBe(all[key]);
        const counts = (t: Tally) => t.cuts.map(({ length, count }) => [length.toFixed(4), count]);
        expect(counts(sum)).toEqual(counts(all));
        expect(Math.abs(sum.brickVolume - all.brickVolume)).toBeLessThan(1);
        expect(Math.abs(sum.grossVolume - all.grossVolume)).toBeLessThan(1);
      }),
      { numRuns: 150 },
    );
  });

  test('what was laid before changes nothing', () => {
    fc.assert(
      fc.property(rudeWall, fc.array(plainWall, { maxLength: 3 }), (spec, others) => {
        const first = JSON.stringify(setOut(spec).bands);
        for (const other of others)
          setOut({ ...other, bond: spec.bond, thickness: spec.thickness });
        expect(JSON.stringify(setOut(spec).bands)).toBe(first);
      }),
      { numRuns: 200 },
    );
  });
});

/** A wall seen from behind. */
function mirrored(spec: WallSpec): WallSpec {
  return {
    ...spec,
    left: spec.right,
    right: spec.left,
    openings: spec.openings.map((o) => ({ ...o, from: spec.length - o.from - o.width })),
    piers: spec.piers.map((p) => ({ ...p, from: spec.length - p.from - p.width })),
  };
}

describe('a wall and its mirror image', () => {
  test('have the same area and take as many bricks, pieces counted as parts of one', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const [one, other] = [tally(setOut(spec)), tally(setOut(mirrored(spec)))];
        expect(equivalent(other)).toBeCloseTo(equivalent(one), 6);
        expect(Math.abs(other.grossVolume - one.grossVolume)).toBeLessThan(1);
      }),
      { numRuns: 150 },
    );
  });

  // A wall of an odd number of half bricks has another pattern from its right end than from its left, and it is set
  // out from the left: past openings its mirror image may take two halves for a whole.
  test('take the very same pieces in stretcher bond of whole bricks, openings and all', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec, halves }) => {
        fc.pre(halves % 2 === 0);
        const plain = { ...spec, bond: BONDS.stretcher };
        const counts = (of: WallSpec) => {
          const { wholes, halves: bats, threeQuarters, closers } = tally(setOut(of));
          return { wholes, bats, threeQuarters, closers };
        };
        expect(counts(mirrored(plain))).toEqual(counts(plain));
      }),
      { numRuns: 200 },
    );
  });
});
