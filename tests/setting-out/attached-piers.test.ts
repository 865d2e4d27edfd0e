/** Piers bonded into walls: wall and pier together closed, lapped and tied, in every bond. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AttachedLaid,
  attachPiers,
  type PlacedPiece,
  placeCourse,
  type SettingOut,
  setOut,
  tally,
  type WallSpec,
} from '../../server/engine/setting-out';
import { BONDS, EXACT, wall } from './fixtures';

const JOINT = 10;
const HALF = 112.5;
const QUARTER = HALF / 2;

interface Case {
  readonly bond: 'stretcher' | 'english' | 'flemish' | 'englishGarden';
  /** Half bricks from the wall’s left end, along the pier, and out of the wall. */
  readonly at: number;
  readonly width: number;
  readonly front: number;
  readonly back: number;
}

interface Built {
  readonly out: SettingOut;
  readonly laid: AttachedLaid | undefined;
  readonly from: number;
  readonly through: number;
  readonly spec: WallSpec;
}

function build({ bond, at, width, front, back }: Case): Built {
  const thickness = bond === 'stretcher' ? 1 : 2;
  const from = at * HALF;
  const depth = (thickness + front + back) * HALF - JOINT;
  const pier = { name: 'p', from, width: width * HALF - JOINT, depth, courses: 8, plans: [] };
  const spec = wall({
    bond: BONDS[bond],
    thickness,
    length: 24 * HALF - JOINT,
    courses: 8,
    limits: EXACT,
    piers: [pier],
  });
  const shape = { width, wall: thickness, front, back };
  const { spec: told, laid } = attachPiers(spec, [{ index: 0, shape }], setOut);
  return { out: setOut(told), laid: laid.get(0), from, through: thickness * HALF - JOINT, spec };
}

/** Wall and pier of one course together, mm from the wall’s left end and front. */
function courseOf({ out, laid, from }: Built, course: number): PlacedPiece[] {
  const pier = laid!.courses[course % laid!.courses.length]!.pieces;
  return [...placeCourse(out, course), ...pier.map((p) => ({ ...p, x: p.x + from }))];
}

function worstOverlap(pieces: readonly PlacedPiece[]): number {
  let worst = 0;
  for (const [i, a] of pieces.entries())
    for (const b of pieces.slice(i + 1)) {
      const wide = Math.min(a.x + a.along, b.x + b.along) - Math.max(a.x, b.x);
      const deep = Math.min(a.y + a.across, b.y + b.across) - Math.max(a.y, b.y);
      worst = Math.max(worst, Math.min(wide, deep));
    }
  return worst;
}

/** Where pieces begin whose front (or back) lies on a line. */
function perpends(pieces: readonly PlacedPiece[], line: number, side: 'front' | 'back'): number[] {
  const on = pieces.filter((p) => Math.abs((side === 'front' ? p.y : p.y + p.across) - line) < 1);
  const sorted = on.map((p) => p.x).sort((a, b) => a - b);
  return sorted.slice(1);
}

const least = (a: readonly number[], b: readonly number[]) =>
  Math.min(Number.POSITIVE_INFINITY, ...a.flatMap((x) => b.map((y) => Math.abs(x - y))));

const CASES: readonly Case[] = (
  ['stretcher', 'english', 'flemish', 'englishGarden'] as const
).flatMap((bond) =>
  [0, 9, 18].flatMap((at) =>
    [2, 3, 4].flatMap((width) =>
      [
        { front: 0, back: 1 },
        { front: 1, back: 0 },
        { front: 0, back: 2 },
      ].map((out) => ({ bond, at, width, ...out })),
    ),
  ),
);

/** No plan is found for a pier a brick and a half wide, a brick out, between the ends of a garden wall: it is told to be unbonded. */
const isHard = ({ bond, at, width, back }: Case) =>
  bond === 'englishGarden' && at > 0 && width === 3 && back === 2;

const titled = CASES.filter((c) => !isHard(c)).map((c) => ({ ...c, title: JSON.stringify(c) }));

describe('an attached pier', () => {
  test.each(titled)('$title is closed, lapped and tied', (given) => {
    const built = build(given);
    const { laid, through, from } = built;
    expect(laid).toBeDefined();
    const { front, back, width } = given;
    const [near, far] = [-front * HALF, through + back * HALF];
    const courses = [...Array(8).keys()].map((i) => courseOf(built, i));
    for (const pieces of courses) {
      expect(worstOverlap(pieces)).toBeLessThan(1e-6);
      const filled = pieces.reduce((sum, p) => sum + (p.along + JOINT) * (p.across + JOINT), 0);
      const plan = 24 * HALF * (through + JOINT) + (front + back) * HALF * width * HALF;
      // The wall’s stretches in one brick stand a joint apart between their leaves: pieces and joints are all there is.
      expect(filled).toBeCloseTo(plan, 3);
    }
    for (const [i, pieces] of courses.entries()) {
      const next = courses[i + 1];
      if (!next) continue;
      for (const [line, side] of [
        [near, 'front'],
        [0, 'front'],
        [far, 'back'],
        [through, 'back'],
      ] as const) {
        // What stands out hides the wall behind it.
        const hidden = line === (side === 'front' ? near : far) ? 0 : width * HALF;
        const shown = (x: number) => x <= from + 1 || x >= from + hidden - 1;
        const [a, b] = [pieces, next].map((c) => perpends(c, line, side).filter(shown));
        expect(least(a!, b!)).toBeGreaterThanOrEqual(QUARTER - 1e-6);
      }
      const lines = [...(front ? [0] : []), ...(back ? [through] : [])];
      for (const line of lines)
        expect(Math.max(tie(pieces, line), tie(next, line))).toBeGreaterThan(56);
    }
    expect(from).toBe(given.at * HALF);
  });

  // Common practice, English bond, two bricks wide on a one-brick wall: whole bricks only, headers into the wall.
  test('two bricks wide on a wall of one brick in English bond takes no cut brick', () => {
    const { laid } = build({ bond: 'english', at: 10, width: 4, front: 0, back: 1 });
    expect(new Set(laid!.courses.flatMap((c) => c.pieces.map((p) => p.piece)))).toEqual(
      new Set(['whole']),
    );
    expect(laid!.cost).toBe(0);
  });

  test('gives and takes on plan what the wall stops short or runs in', () => {
    const { laid, out, through, spec } = build({
      bond: 'english',
      at: 10,
      width: 4,
      front: 0,
      back: 1,
    });
    const gauge = 75;
    const wallVolume = tally(out).grossVolume / gauge;
    const pier = [...Array(8).keys()].reduce((sum, i) => sum + laid!.beyond[i % 2]!, 0);
    // All courses together: the wall over its length less the pier’s own width, and what is beyond it.
    const { length, piers } = spec;
    expect(wallVolume + pier).toBeCloseTo(8 * through * (length - piers[0]!.width), 3);
  });

  test('on a wall thicker than a brick is not bonded: each row of it stops elsewhere', () => {
    const pier = { name: 'p', from: 10 * HALF, width: 440, depth: 440, courses: 8, plans: [] };
    const spec = wall({ thickness: 3, bond: BONDS.english, piers: [pier] });
    const shape = { width: 4, wall: 3, front: 0, back: 1 };
    const told = attachPiers(spec, [{ index: 0, shape }], setOut);
    expect([told.laid.size, told.spec]).toEqual([0, spec]);
  });

  test('never throws, whatever it is asked', () => {
    const number = fc.oneof(fc.integer({ min: -2, max: 7 }), fc.constantFrom(Number.NaN, 1e9, 0.3));
    fc.assert(
      fc.property(fc.constantFrom(...CASES), number, number, number, (some, at, width, back) => {
        const { laid } = build({ ...some, at, width, back });
        expect(laid === undefined || laid.courses.length > 0).toBe(true);
      }),
      { numRuns: 30 },
    );
  });
});

/** How far the best tie reaches into the wall past a line, mm. Bailey and Hancock, Brickwork 2: not less than 56. */
function tie(pieces: readonly PlacedPiece[], line: number): number {
  const reach = pieces.map((p) => Math.min(line - p.y, p.y + p.across - line));
  return Math.max(0, ...reach);
}
