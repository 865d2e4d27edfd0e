/**
 * Mortar by where it lies. What the tally says is held against the pieces themselves: each course placed on plan, and
 * what is open between them measured in strips across the wall.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type PlacedPiece,
  placeCourse,
  type SettingOut,
  setOut,
  sumTallies,
  tally,
} from '../../server/engine/setting-out';
import { rudeWall } from './arbitrary';
import { BONDS, type BondName, ONE_BRICK_BONDS, wall } from './fixtures';

/** Strips that nothing lies in are upright joints; what is open in the others is between leaves. Mm², one course. */
function openOnPlan(pieces: readonly PlacedPiece[], length: number, depth: number) {
  const edges = [...new Set([0, length, ...pieces.flatMap((p) => [p.x, p.x + p.along])])];
  edges.sort((a, b) => a - b);
  let perpend = 0;
  let collar = 0;
  for (let i = 1; i < edges.length; i++) {
    const [from, to] = [edges[i - 1]!, edges[i]!];
    const middle = (from + to) / 2;
    const here = pieces.filter((p) => p.x < middle && p.x + p.along > middle);
    const filled = here.reduce((sum, p) => sum + p.across, 0);
    if (here.length) collar += (depth - filled) * (to - from);
    else perpend += depth * (to - from);
  }
  return { perpend, collar };
}

function byPieces(out: SettingOut) {
  let [perpend, collar, bed] = [0, 0, 0];
  for (let course = 0; course < out.spec.courses; course++) {
    const open = openOnPlan(placeCourse(out, course), out.spec.length, out.thickness);
    perpend += open.perpend * out.spec.unit.height;
    collar += open.collar * out.spec.unit.height;
    bed += out.spec.length * out.thickness * out.spec.joints.bed;
  }
  return { perpend, collar, bed };
}

function byTally(out: SettingOut) {
  const { grossVolume, brickVolume, bedVolume = 0, perpendVolume = 0 } = tally(out);
  const collar = grossVolume - brickVolume - bedVolume - perpendVolume;
  return { perpend: perpendVolume, collar, bed: bedVolume };
}

const LENGTHS = [2240, 2690, 3365, 5052.5];

function expectAlike(out: SettingOut): void {
  const [counted, placed] = [byTally(out), byPieces(out)];
  for (const key of ['bed', 'perpend', 'collar'] as const)
    expect(Math.abs(counted[key] - placed[key]), key).toBeLessThan(1 + placed[key] * 1e-9);
}

describe('beds, perpends and collar joints', () => {
  test.each(LENGTHS)('half a brick thick, %d mm', (length) => {
    const out = setOut(wall({ bond: BONDS.stretcher, thickness: 1, length, courses: 7 }));
    expectAlike(out);
    expect(Math.abs(byTally(out).collar)).toBeLessThan(1);
  });

  test.each(ONE_BRICK_BONDS as readonly BondName[])('a brick thick, %s', (name) => {
    for (const length of LENGTHS)
      expectAlike(setOut(wall({ bond: BONDS[name], thickness: 2, length, courses: 8 })));
  });

  // Arithmetic: a header as long as two widths and a joint leaves nothing between leaves. Of eight courses in header
  // bond four end in a pair of three-quarter bats, 158.75 mm long, at each end.
  test('header bond has a collar joint in its end bats only, stretchers back to back all along', () => {
    const of = (name: BondName) =>
      byTally(setOut(wall({ bond: BONDS[name], thickness: 2, length: 4490, courses: 8 })));
    expect(of('header').collar).toBeCloseTo(4 * 2 * 158.75 * 10 * 65, 3);
    expect(of('english').collar).toBeGreaterThan(4 * 20 * 215 * 10 * 65 * 0.9);
  });

  test('none is less than nothing, and they and the bricks make the work, whatever the wall', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const { grossVolume, brickVolume, cuts } = tally(out);
        fc.pre(cuts.every((cut) => cut.length > 0));
        const { bed, perpend, collar } = byTally(out);
        const least = -(1 + grossVolume * 1e-9);
        expect(Math.min(bed, perpend, collar)).toBeGreaterThan(least);
        expect(brickVolume + bed + perpend + collar).toBeCloseTo(grossVolume, 0);
      }),
      { numRuns: 50 },
    );
  });

  test('parts of the courses add up to the whole', () => {
    const out = setOut(wall({ bond: BONDS.flemish, thickness: 2, length: 4490, courses: 9 }));
    const parts = sumTallies([tally(out, { from: 0, to: 4 }), tally(out, { from: 4, to: null })]);
    const whole = tally(out);
    expect(parts.bedVolume).toBeCloseTo(whole.bedVolume!, 0);
    expect(parts.perpendVolume).toBeCloseTo(whole.perpendVolume!, 0);
  });
});
