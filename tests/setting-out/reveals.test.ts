/**
 * Reveals of openings in walls of quarter bond: the queen closer stands next to the reveal header, on alternate
 * courses. Barry, as at constructiontermsx.com, “Bricks bonding at angles and jambs”: jambs of openings are finished as
 * angles are, and “a closer is laid next to a quoin (corner) header”; zhclg.com, “Queen closer”: “next to the quoin or
 * stopped-end header on alternate courses”.
 */
import { describe, expect, test } from 'vitest';
import { bricksOf, setOut } from '../../server/engine/setting-out';
import { BONDS, EXACT, UK, UK_JOINTS } from './fixtures';

/** So many half bricks left of the opening, in it and right of it: CO-, CO+, CO-. */
const wall = (bond: keyof typeof BONDS, left: number, width: number, right: number) =>
  setOut({
    unit: UK,
    joints: UK_JOINTS,
    bond: BONDS[bond],
    thickness: 2,
    length: (left + width + right) * 112.5 - 10,
    courses: 12,
    left: 'stopped',
    right: 'stopped',
    openings: [{ name: 'o', from: left * 112.5 - 10, width: width * 112.5 + 10, sill: 3, top: 9 }],
    piers: [],
    limits: EXACT,
  });

/** Pieces from a reveal inward, of each course beside the opening. */
function inward(out: ReturnType<typeof wall>, side: 'left' | 'right'): string[][] {
  const band = out.bands.find((b) => b.from === 3)!;
  const segment = side === 'left' ? band.segments[0]! : band.segments.at(-1)!;
  return Array.from({ length: 6 }, (_, i) => {
    const pieces = [...bricksOf(segment, 3 + i)].map(({ piece }) => piece);
    return side === 'left' ? pieces.reverse() : pieces;
  });
}

/** Lengths on which the bond closes by itself, in half bricks. */
const CASES = [
  ['english', 8, 6, 8],
  ['english', 10, 8, 12],
  ['english', 6, 9, 6],
  ['flemish', 8, 10, 8],
  ['flemish', 11, 10, 5],
  ['flemish', 14, 10, 8],
] as const;

describe.each(CASES)('%s, %i half bricks, an opening of %i, %i', (bond, left, width, right) => {
  const out = wall(bond, left, width, right);

  test.each(['left', 'right'] as const)('at the %s reveal', (side) => {
    const courses = inward(out, side);
    const closed = courses.map((pieces) => pieces.slice(0, 2).join() === 'header,closer');
    // Alternate courses, and on the others a stretcher, which laps them by a quarter.
    expect(closed.filter(Boolean)).toHaveLength(3);
    for (const [i, each] of closed.entries()) {
      expect(each).toBe(!closed[(i + 1) % 6]);
      if (!each) expect(courses[i]![0]).toBe('stretcher');
      expect(courses[i]![0]).not.toBe('closer');
    }
  });

  test('every stretch works, and beside the opening no bond is broken', () => {
    for (const band of out.bands) for (const { fits } of band.segments) expect(fits).toBe(true);
    const beside = out.bands.find((b) => b.from === 3)!;
    for (const { broken } of beside.segments) expect(broken).toEqual([]);
  });
});
