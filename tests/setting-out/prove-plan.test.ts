/** On plan: pieces and joints fill each course to the square millimetre, and pieces add up to wholes. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type PlacedPiece,
  placeCourse,
  type SettingOut,
  setOut,
  tally,
  type WallSpec,
} from '../../server/engine/setting-out';
import { rulesOf } from '../../server/engine/setting-out/place/built';
import {
  areaOf,
  type PlanOutline,
  provePlan,
  slabsOf,
} from '../../server/engine/setting-out/prove';
import { coordinatedWall, plainWall } from './arbitrary';

const JOINT = { least: 7, most: 13 };
const S = (x: number, y: number): PlacedPiece => ({
  piece: 'whole',
  x,
  y,
  along: 215,
  across: 102.5,
});
const H = (x: number): PlacedPiece => ({ piece: 'whole', x, y: 0, along: 102.5, across: 215 });
const box = (width: number, height = 215): PlanOutline => {
  return { x: 0, y: 0, width, height, left: 'stopped', right: 'stopped' };
};

describe('a plan made by hand', () => {
  /** One-brick Flemish: two stretchers side by side and a header in turn (Barry). */
  const sound = [S(0, 0), S(0, 112.5), H(225), S(337.5, 0), S(337.5, 112.5)];
  const kinds = (pieces: readonly PlacedPiece[], outline = box(552.5)) =>
    provePlan(0, pieces, [outline], JOINT).map(({ kind }) => kind);

  test('is sound', () => {
    expect(kinds(sound)).toEqual([]);
    expect(kinds([])).toEqual(['gap']);
  });

  test.each([
    ['gap', 'the back leaf left out', sound.toSpliced(1, 1)],
    ['overlap', 'a leaf on the other', sound.with(1, S(0, 100))],
    ['overlap', 'a header into a stretcher', sound.with(2, H(210))],
    ['joint-out', 'a joint closed up', sound.with(2, H(220))],
    ['gap', 'a joint opened', sound.with(2, H(229.5))],
    ['outside', 'a piece past the end', [...sound, H(562.5)]],
    ['outside', 'a piece past the back', sound.with(1, S(0, 120))],
    ['no-piece', 'a piece of nothing', [...sound, { ...H(0), along: Number.NaN }]],
  ] as const)('%s: %s', (kind, _, pieces) => {
    expect(kinds(pieces)).toContain(kind);
  });

  test('tells where it first is', () => {
    expect(provePlan(3, sound.toSpliced(3, 1), [box(552.5)], JOINT)[0]).toMatchObject({
      kind: 'gap',
      course: 3,
      at: expect.closeTo(334, 0),
    });
  });
});

test('the sweep finds the area of a union as counting cells does', () => {
  const cell = fc.nat(12);
  const area = fc.record({ x: cell, y: cell, width: fc.nat(5), height: fc.nat(5) });
  fc.assert(
    fc.property(fc.array(area, { maxLength: 8 }), (areas) => {
      const cells = new Set<number>();
      let sum = 0;
      for (const { x, y, width, height } of areas)
        for (let i = x; i < x + width; i++)
          for (let j = y; j < y + height; j++) {
            cells.add(i * 100 + j);
            sum++;
          }
      const found = areaOf(slabsOf(areas));
      expect(found).toEqual({ covered: cells.size, sum });
    }),
    { numRuns: 300 },
  );
});

/** The outline of each stretch as its course has it, teeth and all. */
function outlineOf({ bands, thickness }: SettingOut, course: number): PlanOutline[] {
  const band = bands.find(({ from, to }) => course >= from && course < to);
  return (band?.segments ?? []).map((segment) => {
    const run = segment.runs[course % segment.runs.length]!;
    const kind = (jointed: 0 | 1) => (jointed ? ('butted' as const) : ('stopped' as const));
    const left = kind(run.endJoints.left);
    const right = kind(run.endJoints.right);
    return { x: segment.from + run.from, y: 0, width: run.length, height: thickness, left, right };
  });
}

function cycleOf({ bond, courses }: WallSpec): number[] {
  return Array.from({ length: Math.min(bond.courses.length, courses) }, (_, i) => i);
}

describe('every course of every layout on plan', () => {
  test('of any length and ends closes to the square millimetre', () => {
    fc.assert(
      fc.property(plainWall, (spec) => {
        const out = setOut(spec);
        for (const course of cycleOf(spec)) {
          const outline = outlineOf(out, course);
          expect(provePlan(course, placeCourse(out, course), outline, rulesOf(spec).joint)).toEqual(
            [],
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  test('past openings', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const out = setOut(spec);
        for (const { from } of out.bands) {
          const outline = outlineOf(out, from);
          expect(provePlan(from, placeCourse(out, from), outline, rulesOf(spec).joint)).toEqual([]);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('conservation', () => {
  const volume = ({ along, across }: PlacedPiece, height: number) => along * across * height;

  test('pieces on plan are the pieces counted, and their volumes the bricks’', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const out = setOut(spec);
        const pieces = Array.from({ length: spec.courses }, (_, course) =>
          placeCourse(out, course),
        ).flat();
        const of = (piece: PlacedPiece['piece']) => pieces.filter((p) => p.piece === piece).length;
        const counted = tally(out);
        const cuts = counted.cuts.reduce((sum, { count }) => sum + count, 0);
        expect([of('whole'), of('half'), of('three-quarter'), of('closer'), of('cut')]).toEqual([
          counted.wholes,
          counted.halves,
          counted.threeQuarters,
          counted.closers,
          cuts,
        ]);
        const laid = pieces.reduce((sum, p) => sum + volume(p, spec.unit.height), 0);
        expect(laid / counted.brickVolume).toBeCloseTo(1, 9);
      }),
      { numRuns: 100 },
    );
  });

  test('pieces sum to wholes: with their joints halves are half, closers a quarter, three quarters what they say', () => {
    const PARTS = { whole: 1, half: 1 / 2, 'three-quarter': 3 / 4, closer: 1 / 2, cut: 0 };
    fc.assert(
      fc.property(coordinatedWall, ({ spec, halves, holes }) => {
        const out = setOut(spec);
        for (const { from } of out.bands) {
          const pieces = placeCourse(out, from);
          const bricks = pieces.reduce((sum, { piece }) => sum + PARTS[piece], 0);
          const open = holes.filter(({ sill, top }) => sill <= from && top > from);
          const clear = halves - open.reduce((sum, { width }) => sum + width, 0);
          // A half brick of length is half a brick in a half-brick wall, and one in a one-brick wall.
          expect(bricks).toBeCloseTo((clear * spec.thickness) / 2, 9);
        }
      }),
      { numRuns: 150 },
    );
  });
});
