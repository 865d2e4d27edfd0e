/** Plans of piers that stand alone: closed, lapped on every face, as the trade lays them. */
import { describe, expect, test } from 'vitest';
import {
  type CoreFill,
  type CoursePlan,
  faceOf,
  type PieceCount,
  type PierLaid,
  type PlacedPiece,
  pierPlans,
} from '../../server/engine/setting-out';
import { UK } from './fixtures';

const JOINT = 10;
const HALF = 112.5;
const HALVES = [1, 2, 3, 4, 5];
const SIZES = HALVES.flatMap((width) =>
  HALVES.filter((d) => d <= width).map((depth) => ({ width, depth })),
);
const SIDES = ['front', 'back', 'left', 'right'] as const;

const plan = (
  width: number,
  depth: number,
  more: { core?: CoreFill; counts?: PieceCount[][] } = {},
) => pierPlans({ width, depth, unit: UK, joint: JOINT, ...more })!;

const counts = (text: string): PieceCount[] =>
  text.split(', ').map((each) => {
    const [piece, count] = each.split(' ');
    return { piece: piece as PieceCount['piece'], count: Number(count) };
  });

const counted = (pieces: readonly PlacedPiece[], piece: string) =>
  pieces.filter((p) => p.piece === piece).length;

/** With its joint on two sides, as each piece takes its place. */
const areaOf = ({ along, across }: PlacedPiece) => (along + JOINT) * (across + JOINT);

function overlap(a: PlacedPiece, b: PlacedPiece): boolean {
  return (
    a.x < b.x + b.along + JOINT - 1e-6 &&
    b.x < a.x + a.along + JOINT - 1e-6 &&
    a.y < b.y + b.across + JOINT - 1e-6 &&
    b.y < a.y + a.across + JOINT - 1e-6
  );
}

const perpends = (course: CoursePlan, side: (typeof SIDES)[number]) =>
  faceOf(course, side)
    .map((p) => p.from)
    .filter((from) => from > 1);

/** Least distance between the perpends of two courses over all faces, mm. */
function lap({ courses: [a, b] }: PierLaid): number {
  const off = SIDES.flatMap((side) =>
    perpends(a!, side).flatMap((x) => perpends(b!, side).map((y) => Math.abs(x - y))),
  );
  return Math.min(Number.POSITIVE_INFINITY, ...off);
}

function expectClosed(laid: PierLaid, width: number, depth: number): void {
  for (const { pieces, core } of laid.courses) {
    for (const [i, a] of pieces.entries())
      for (const b of pieces.slice(i + 1)) expect(overlap(a, b)).toBe(false);
    const open = core.reduce((sum, c) => sum + (c.width - JOINT) * (c.height - JOINT), 0);
    const filled = pieces.reduce((sum, p) => sum + areaOf(p), 0);
    // To the square millimetre: pieces, their joints and the core are the whole of the plan.
    expect(filled + open).toBeCloseTo(width * HALF * (depth * HALF), 6);
  }
}

describe('a pier of half bricks each way', () => {
  test.each(SIZES)(
    '$width x $depth is closed by wholes, halves only inside, and laps half a brick',
    ({ width, depth }) => {
      const laid = plan(width, depth);
      expect([laid.width, laid.depth]).toEqual([width * HALF - JOINT, depth * HALF - JOINT]);
      expectClosed(laid, width, depth);
      for (const { pieces, hidden } of laid.courses) {
        // An odd number of half bricks leaves one half over; all else is whole, but for the bats at both ends of every
        // second course of two bricks by a half, without which its one perpend would go straight up.
        const bats = width === 4 && depth === 1 && pieces.length === 3 ? 2 : (width * depth) % 2;
        expect(counted(pieces, 'half')).toBe(bats);
        expect(counted(pieces, 'whole')).toBe(Math.floor((width * depth - bats) / 2));
        if (depth > 1)
          expect(pieces.filter((p) => p.piece === 'half').every((p) => hidden.includes(p))).toBe(
            true,
          );
      }
      expect(lap(laid)).toBeGreaterThanOrEqual(HALF - 1e-6);
    },
  );

  test('turned a quarter, it takes the same', () => {
    for (const { width, depth } of SIZES) {
      const [a, b] = [plan(width, depth), plan(depth, width)];
      expect(a.courses[0]!.pieces.length).toBe(b.courses[0]!.pieces.length);
      expect(a.coreHalves).toBe(b.coreHalves);
    }
  });

  test('one and a half bricks square: four whole bricks round a half bat (common practice)', () => {
    const [first] = plan(3, 3).courses;
    expect(first!.pieces.map((p) => p.piece).sort()).toEqual([
      'half',
      'whole',
      'whole',
      'whole',
      'whole',
    ]);
    expect(first!.hidden).toHaveLength(1);
    expect(first!.hidden[0]).toMatchObject({ x: HALF, y: HALF, along: 102.5, across: 102.5 });
  });

  test('no other sizes, and no nonsense', () => {
    for (const width of [0, -1, 6, 1.25, Number.NaN, Number.POSITIVE_INFINITY, 1e9])
      expect(pierPlans({ width, depth: 2, unit: UK, joint: JOINT })).toBeUndefined();
    expect(pierPlans({ width: 2, depth: 2, unit: UK, joint: Number.NaN })).toBeUndefined();
    expect(pierPlans({ width: 2, depth: 2, unit: UK, joint: 300 })).toBeUndefined();
  });
});

describe('a pier whose pieces are told', () => {
  // English bond, common practice: headers with a closer beside each corner one, over stretchers.
  const TOLD: readonly { width: number; depth: number; courses: string[] }[] = [
    { width: 4, depth: 2, courses: ['whole 4', 'whole 3, closer 2'] },
    { width: 4, depth: 3, courses: ['whole 5, closer 2'] },
    { width: 4, depth: 4, courses: ['whole 6, closer 4'] },
    { width: 5, depth: 2, courses: ['whole 4, closer 2'] },
    { width: 5, depth: 4, courses: ['whole 8, closer 4'] },
    { width: 5, depth: 5, courses: ['whole 10, half 1, closer 4'] },
  ];

  test.each(TOLD)('$width x $depth of $courses laps a quarter', ({ width, depth, courses }) => {
    const laid = plan(width, depth, { counts: courses.map(counts) });
    expectClosed(laid, width, depth);
    expect(lap(laid)).toBeGreaterThanOrEqual(HALF / 2 - 1e-6);
    for (const [i, { pieces, hidden }] of laid.courses.entries()) {
      for (const { piece, count } of counts(courses[i % courses.length]!))
        expect(counted(pieces, piece)).toBe(count);
      expect(pieces.filter((p) => p.piece === 'half').every((p) => hidden.includes(p))).toBe(true);
    }
  });

  test('closers show their ends, a header away from a corner and never at it', () => {
    for (const { width, depth, courses } of TOLD)
      for (const course of plan(width, depth, { counts: courses.map(counts) }).courses)
        for (const side of SIDES) {
          const face = faceOf(course, side);
          for (const [i, { piece, length }] of face.entries()) {
            if (piece !== 'closer') continue;
            expect(length).toBeCloseTo(46.25, 9);
            expect(i === 1 || i === face.length - 2).toBe(true);
          }
        }
  });

  test('two bricks square in English bond: the second course is the first turned a quarter', () => {
    const { courses } = plan(4, 4, { counts: [counts('whole 6, closer 4')] });
    const heads = courses.map((c) =>
      SIDES.map((side) =>
        faceOf(c, side)
          .map((p) => p.piece)
          .join(' '),
      ),
    );
    const headers = 'header closer header closer header';
    const stretchers = 'stretcher stretcher';
    expect([...heads].sort()).toEqual([
      [headers, headers, stretchers, stretchers],
      [stretchers, stretchers, headers, headers],
    ]);
  });

  test('what does not fill the plan, or cannot lap, is not laid', () => {
    const laid = (told: PieceCount[][]) =>
      pierPlans({ width: 4, depth: 4, unit: UK, joint: JOINT, counts: told });
    expect(laid([counts('whole 7')])).toBeUndefined();
    expect(laid([counts('whole 9')])).toBeUndefined();
    expect(laid([[{ piece: 'cut', count: 3, length: 80 }]])).toBeUndefined();
    for (const count of [-4, Number.NaN, Number.POSITIVE_INFINITY, 1e12])
      expect(laid([[{ piece: 'whole', count }]])).toBeUndefined();
    expect(laid(Array.from({ length: 1000 }, () => counts('whole 6, closer 4')))).toBeUndefined();
    // Four stretchers over four stretchers: perpend over perpend.
    const flat = pierPlans({
      width: 1,
      depth: 5,
      unit: UK,
      joint: JOINT,
      counts: [counts('half 5')],
    });
    expect(flat).toBeUndefined();
  });
});

describe('the core', () => {
  test('is what whole bricks round the outside leave, in every course', () => {
    for (const { width, depth } of SIZES.filter((s) => s.depth > 2)) {
      const halves = plan(width, depth, { core: 'halves' });
      const inside = (width - 2) * (depth - 2);
      for (const { pieces, hidden } of halves.courses) {
        expect(hidden.map((p) => p.piece)).toEqual(Array(inside).fill('half'));
        expect(counted(pieces, 'whole')).toBe(width + depth - 2);
      }
      expect(halves.coreHalves).toBe(inside);
      expectClosed(halves, width, depth);
    }
  });

  test('of concrete is measured to the bricks round it', () => {
    const laid = plan(4, 4, { core: 'concrete' });
    // By hand: 440 less a header of 102.5 on either side.
    expect(laid.courses[0]!.core).toEqual([{ x: 102.5, y: 102.5, width: 235, height: 235 }]);
    expectClosed(laid, 4, 4);
    expect(plan(4, 4, { core: 'hollow' }).courses).toEqual(laid.courses);
  });

  test('is nothing where every brick shows', () => {
    for (const width of HALVES) {
      const laid = plan(width, 2, { core: 'concrete' });
      expect(laid.courses).toEqual(plan(width, 2).courses);
      expect(laid.coreHalves).toBe(0);
    }
  });
});

describe('a face', () => {
  test('is seen from outside, left to right, the same length from all', () => {
    for (const { width, depth } of SIZES) {
      const laid = plan(width, depth);
      for (const course of laid.courses)
        for (const side of SIDES) {
          const face = faceOf(course, side);
          const long = side === 'front' || side === 'back' ? laid.width : laid.depth;
          const end = face.at(-1)!;
          expect(face[0]!.from).toBe(0);
          expect(end.from + end.length).toBeCloseTo(long, 6);
        }
    }
  });

  test('of three halves by two: stretcher and header one way, header and stretcher from behind', () => {
    const [first] = plan(3, 2).courses;
    expect(faceOf(first!, 'front').map((p) => p.piece)).toEqual(['stretcher', 'header']);
    expect(faceOf(first!, 'back').map((p) => p.piece)).toEqual(['header', 'stretcher']);
    expect(faceOf(first!, 'right').map((p) => p.piece)).toEqual(['stretcher']);
    expect(faceOf(first!, 'left').map((p) => p.piece)).toEqual(['header', 'header']);
  });
});
