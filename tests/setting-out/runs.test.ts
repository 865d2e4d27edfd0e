import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type FacePiece,
  type SettingOut,
  setOut,
  tally,
  tallyFace,
} from '../../server/engine/setting-out';
import { coordinatedWall, plainWall, rudeWall } from './arbitrary';
import { type Brick, everyCourse } from './expand';
import { UK } from './fixtures';

const NEAR = 6;

/** Face lengths of UK pieces: 215 x 102.5 with 10 mm joints, by arithmetic. */
const FACE: Partial<Record<FacePiece, number>> = {
  stretcher: 215,
  header: 102.5,
  half: 102.5,
  'three-quarter': 158.75,
  closer: 46.25,
};

describe('every course closes', () => {
  test.each([
    ['any plain wall', plainWall],
    ['any wall with openings and piers', rudeWall],
  ])('%s: pieces and joints make exactly the length of the run', (_, walls) => {
    fc.assert(
      fc.property(walls, (spec) => {
        for (const { course, segments } of everyCourse(setOut(spec)))
          for (const { segment, bricks } of segments) {
            const run = segment.runs[course % segment.runs.length]!;
            if (bricks.length === 0) continue;
            const left = segment.from + run.from;
            expect(bricks[0]!.from).toBeCloseTo(left + run.endJoints.left * run.joint, NEAR);
            const end = bricks.at(-1)!.to + run.endJoints.right * run.joint;
            expect(end).toBeCloseTo(left + run.length, NEAR);
          }
      }),
      { numRuns: 1500 },
    );
  });

  test('pieces have their own lengths, and no cut is longer than a brick or less than nothing', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const wrong = everyCourse(setOut(spec))
          .flatMap((row) => row.segments.flatMap((s) => s.bricks))
          .filter(({ from, to, piece }) => {
            const length = to - from;
            const right = piece === 'cut' || Math.abs(length - FACE[piece]!) < 1e-6;
            return !right || length <= 0 || length > 215 + 1e-6;
          });
        expect(wrong).toEqual([]);
      }),
      { numRuns: 1500 },
    );
  });

  test('where it is said to fit, every joint is within the limits and nothing is cut for length', () => {
    fc.assert(
      fc.property(plainWall, (spec) => {
        const { least, most } = spec.limits;
        const segment = setOut(spec).bands[0]!.segments[0]!;
        for (const run of segment.runs) {
          const cuts = run.groups.flatMap((g) => g.pieces).filter((p) => p.piece === 'cut');
          if (!segment.fits) continue;
          expect(cuts).toEqual([]);
          const pieces = run.groups.reduce(
            (sum, g) => sum + g.times * g.pieces.reduce((n, p) => n + p.count, 0),
            0,
          );
          if (pieces > 1) {
            expect(run.joint).toBeGreaterThan(least - 1e-6);
            expect(run.joint).toBeLessThan(most + 1e-6);
          }
        }
      }),
      { numRuns: 1500 },
    );
  });
});

/** A queen closer at the very end of a course is a sliver that falls out. */
const endsInCloser = (bricks: readonly Brick[]) =>
  bricks[0]?.piece === 'closer' || bricks.at(-1)?.piece === 'closer';

describe('closers', () => {
  test('never stand at the very end, always next to a header, and only in a one-brick wall', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        for (const { segments } of everyCourse(setOut(spec)))
          for (const { bricks } of segments) {
            expect(endsInCloser(bricks)).toBe(false);
            for (const [i, brick] of bricks.entries()) {
              if (brick.piece !== 'closer') continue;
              expect(spec.thickness).toBe(2);
              expect([bricks[i - 1]!.piece, bricks[i + 1]!.piece]).toContain('header');
            }
          }
      }),
      { numRuns: 500 },
    );
  });
});

describe('tallies', () => {
  const volumeOf = ({ piece, from, to }: Brick, thickness: number) => {
    if (piece === 'closer') return 46.25 * UK.length * UK.height;
    const leaves = piece === 'header' ? 1 : thickness;
    const length = piece === 'header' ? UK.length : to - from;
    return leaves * length * UK.width * UK.height;
  };

  test('equal a count of every brick, one at a time, in the face, in pieces and in volume', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const bricks = everyCourse(out).flatMap((c) => c.segments.flatMap((s) => s.bricks));
        const count = (piece: FacePiece) => bricks.filter((b) => b.piece === piece).length;
        const face = tallyFace(out);
        for (const piece of Object.keys(face) as FacePiece[])
          expect(face[piece]).toBe(count(piece));
        const all = tally(out);
        const leaves = spec.thickness;
        expect(all.wholes).toBe(count('stretcher') * leaves + count('header'));
        expect(all.halves).toBe(count('half') * leaves);
        expect(all.threeQuarters).toBe(count('three-quarter') * leaves);
        expect(all.closers).toBe(count('closer'));
        const cuts = all.cuts.reduce((sum, cut) => sum + cut.count, 0);
        expect(cuts).toBe(count('cut') * leaves);
        const volume = bricks.reduce((sum, b) => sum + volumeOf(b, leaves), 0);
        expect(all.brickVolume / volume || 1).toBeCloseTo(1, 9);
      }),
      { numRuns: 600 },
    );
  });

  test('bricks and mortar make the gross volume: mortar is what the joints hold', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const all = tally(out);
        let gross = 0;
        for (const { course, segments } of everyCourse(out))
          for (const { segment } of segments)
            gross += segment.runs[course % segment.runs.length]!.length * 75 * out.thickness;
        expect(all.grossVolume / gross || 1).toBeCloseTo(1, 9);
        expect(all.grossVolume).toBeGreaterThanOrEqual(all.brickVolume);
      }),
      { numRuns: 600 },
    );
  });

  test('any split of the courses adds up to the whole', () => {
    fc.assert(
      fc.property(rudeWall, fc.integer({ min: 0, max: 9 }), (spec, at) => {
        const out = setOut(spec);
        const low = tally(out, { from: 0, to: at });
        const high = tally(out, { from: at, to: null });
        const all = tally(out);
        for (const key of ['wholes', 'halves', 'threeQuarters', 'closers'] as const)
          expect(low[key] + high[key]).toBe(all[key]);
        const sum = low.brickVolume + high.brickVolume;
        expect(sum / all.brickVolume || 1).toBeCloseTo(1, 9);
      }),
      { numRuns: 400 },
    );
  });
});

function faceArea(out: SettingOut): number {
  return tally(out).grossVolume / out.thickness;
}

describe('area', () => {
  test('a wall with no toothed end faces its length by its height, less its openings', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const out = setOut(spec);
        const gone = spec.openings.reduce((sum, o) => sum + o.width * (o.top! - o.sill) * 75, 0);
        expect(faceArea(out)).toBeCloseTo(spec.length * spec.courses * 75 - gone, 2);
      }),
      { numRuns: 400 },
    );
  });
});
