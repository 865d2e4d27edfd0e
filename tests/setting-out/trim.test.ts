/** Courses cut back at an end: what stays, stays where it was; whatever the numbers, an answer comes. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { took } from '../harness/took';
import '../harness/seed';
import {
  bondsAt,
  type CornerWall,
  layCorners,
  letIn,
  setOut,
  tally,
  wayAt,
} from '../../server/engine/setting-out';
import { bricksOf } from './expand';
import { BOND_NAMES, BONDS, LIMITS, overAll, wall } from './fixtures';

const bond = fc.constantFrom(...BOND_NAMES);
const way = (by: number) => ({ parity: 0 as const, by, courses: [{ from: 0, to: 100 }] });

describe('a course cut back', () => {
  test('keeps every piece beyond the line where it was, and ends at it with one joint', () => {
    const by = fc.double({ min: 20, max: 800, noNaN: true });
    const side = fc.constantFrom('left' as const, 'right' as const);
    fc.assert(
      fc.property(bond, fc.integer({ min: 12, max: 40 }), by, side, (name, n, far, end) => {
        const thickness = name === 'stretcher' ? 1 : 2;
        const out = setOut(
          wall({ bond: BONDS[name], thickness, length: overAll(n), limits: LIMITS }),
        );
        const cut = layCorners(out, { [end]: way(far) });
        const [before, after] = [out, cut].map((w) => w.bands[0]!.segments[0]!);
        const line = end === 'left' ? far : out.spec.length - far;
        const clear = (b: { from: number; to: number }) =>
          end === 'left' ? b.from >= line + LIMITS.most : b.to <= line - LIMITS.most;
        const all = [...bricksOf(before!, 0)];
        const left = [...bricksOf(after!, 0)];
        // Of the piece across the line too little may be left to cut: then the next is cut with it.
        const beyond = (b: { from: number; to: number }) =>
          (end === 'left' ? b.to - line : line - b.from) - 10;
        const sliver = all.some((b) => !clear(b) && beyond(b) > -10 && beyond(b) < LIMITS.leastCut);
        const whole = all.filter(clear);
        const kept = whole.filter(
          (_, i) => !sliver || i !== (end === 'left' ? 0 : whole.length - 1),
        );
        for (const b of left) expect(b.to - b.from).toBeGreaterThan(46);
        const there = new Set(left.map((b) => `${b.from.toFixed(6)} ${b.to.toFixed(6)}`));
        for (const b of kept) expect(there).toContain(`${b.from.toFixed(6)} ${b.to.toFixed(6)}`);
        for (const b of left) {
          const gap = end === 'left' ? b.from - line : line - b.to;
          expect(gap).toBeGreaterThan(LIMITS.least - 1e-6);
        }
        const run = after!.runs[0]!;
        const pieces = left.reduce((sum, b) => sum + b.to - b.from, 0);
        const joints = left.length - 1 + run.endJoints.left + run.endJoints.right;
        expect(pieces + joints * run.joint).toBeCloseTo(run.length, 6);
        expect(bricksOf(after!, 1)).toEqual(bricksOf(before!, 1));
      }),
      { numRuns: 60 },
    );
  });

  test('may leave nothing of a wall that is shorter than the other is thick', () => {
    const out = setOut(wall({ length: 215 }));
    const cut = layCorners(out, { left: way(400) });
    expect(tally(cut).grossVolume).toBeCloseTo(215 * 102.5 * 75 * 5, 3);
    expect(tally(cut).wholes + tally(cut).halves).toBe(2 * 5 + 0);
  });
});

describe('whatever the numbers, an answer comes, and soon', () => {
  const any = fc.oneof(
    fc.constantFrom(0, -1, 1e-9, 0.1, 10, 65, 215, 1e6, 1e12, 1e300, Number.NaN, Infinity),
    fc.double({ min: -1000, max: 100000 }),
  );
  const part = fc.record({
    unit: fc.oneof(
      fc.record({ length: any, width: any, height: any }),
      fc.constant({ length: 215, width: 102.5, height: 65 }),
    ),
    joints: fc.oneof(fc.record({ bed: any, perpend: any }), fc.constant({ bed: 10, perpend: 10 })),
    length: any,
    courses: fc.oneof(any, fc.nat(20)),
    bond: bond.map((name) => BONDS[name]),
    thickness: fc.constantFrom(1 as const, 2 as const),
  });

  test('round a corner and at a junction', () => {
    fc.assert(
      fc.property(part, part, any, any, (one, two, from, to) => {
        const end = { begun: 0, inside: false };
        const a: CornerWall = { ...end, out: setOut(wall(one)), side: 'right', gives: 0 };
        const b: CornerWall = { ...end, out: setOut(wall(two)), side: 'left', gives: 1 };
        expect(typeof bondsAt(a, b)).toBe('boolean');
        const laid = layCorners(a.out, { right: wayAt(a, b) });
        const courses = { from: 0, to: a.out.spec.courses };
        const room = letIn(b.out, [{ from, to, parity: 0, courses }]);
        for (const out of [laid, room]) {
          const { wholes, brickVolume, grossVolume } = tally(out);
          expect(Number.isNaN(wholes + brickVolume + grossVolume)).toBe(false);
          expect(wholes).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 250, interruptAfterTimeLimit: 180_000, markInterruptAsFailure: true },
    );
  });

  test('ten million bricks round a corner take no longer than ten', () => {
    const long = setOut(wall({ length: overAll(2 * 1e5), courses: 100 }));
    const end = { begun: 0, inside: false };
    const a: CornerWall = { ...end, out: long, side: 'right', gives: 0 };
    const b: CornerWall = { ...end, out: long, side: 'left', gives: 1 };
    const work = () => tally(layCorners(long, { right: wayAt(a, b) })).wholes;
    expect(work()).toBeGreaterThan(9.9e6);
    // A hundred times what was measured, 1 ms.
    expect(took(work, 5)).toBeLessThan(100);
  });
});
