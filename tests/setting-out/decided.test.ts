import { describe, expect, test } from 'vitest';
import { setOut, type WallSpec } from '../../server/engine/setting-out';
import { BONDS, UK } from './fixtures';

const LIMITS = { least: 8, best: 10, most: 13, leastCut: 50 };

/** 3 m is 13 bricks and 75 mm: no number of half bricks at any accepted joint. */
const spec: WallSpec = {
  unit: UK,
  joints: { bed: 10, perpend: 10 },
  bond: BONDS.stretcher,
  thickness: 1,
  length: 3000,
  courses: 2,
  left: 'stopped',
  right: 'stopped',
  openings: [],
  piers: [],
  limits: LIMITS,
};

function pieces(wall: WallSpec) {
  const [segment] = setOut(wall).bands[0]!.segments;
  return segment!.runs.map((run) => ({
    run,
    all: run.groups.flatMap((g) =>
      Array.from({ length: g.times }, () => g.pieces)
        .flat()
        .flatMap((p) => Array.from({ length: p.count }, () => p)),
    ),
  }));
}

describe('what somebody decided for a stretch', () => {
  test('by rule it takes a cut', () => {
    expect(pieces(spec).every(({ all }) => all.some((p) => p.piece === 'cut'))).toBe(true);
  });

  test('joints: no cut, and the course still fills the length', () => {
    const joint = (3000 - 13 * 215) / 12;
    const decided = [{ from: 0, to: 3000, limits: { ...LIMITS, most: joint } }];
    for (const { run, all } of pieces({ ...spec, decided })) {
      expect(all.some((p) => p.piece === 'cut')).toBe(false);
      const length = all.reduce((sum, p) => sum + p.length, 0) + run.joint * (all.length - 1);
      expect(length).toBeCloseTo(3000, 6);
    }
  });

  test.each(['left', 'right'] as const)('the cut stands at the %s', (cutAt) => {
    const decided = [{ from: 0, to: 3000, limits: LIMITS, cutAt }];
    for (const { run, all } of pieces({ ...spec, decided })) {
      const at = all.findIndex((p) => p.piece === 'cut');
      const fromEnd = cutAt === 'left' ? at : all.length - 1 - at;
      expect(fromEnd).toBeLessThan(3);
      const length = all.reduce((sum, p) => sum + p.length, 0) + run.joint * (all.length - 1);
      expect(length).toBeCloseTo(3000, 6);
    }
  });

  test('a decision for another stretch changes nothing', () => {
    const decided = [{ from: 10, to: 3000, limits: { ...LIMITS, most: 40 } }];
    expect(setOut({ ...spec, decided }).bands).toEqual(setOut(spec).bands);
  });
});
