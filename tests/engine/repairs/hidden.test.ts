/** The share of a bond that no face shows, against pieces counted one by one where they lie on plan. */
import { describe, expect, test } from 'vitest';
import { hiddenShare } from '../../../server/engine/brickwork/repair/hidden';
import { placeCourse, setOut } from '../../../server/engine/setting-out';
import { BONDS, overAll, wall } from '../../setting-out/fixtures';
import { libraryBonds, unlike } from '../../setting-out/thick';

/** Whatever reaches the front shows; a half counts as half a brick, by its area on plan. */
function counted(bond: Parameters<typeof hiddenShare>[0], thickness: 1 | 2 | 3 | 4): number {
  const length = overAll(480);
  const courses = bond.courses.length;
  const out = setOut(wall({ bond, thickness, length, courses, left: 'toothed', right: 'toothed' }));
  let [shows, all] = [0, 0];
  for (let course = 0; course < courses; course++)
    for (const { y, along, across } of placeCourse(out, course, 3000, 51_000)) {
      all += along * across;
      if (y < 1) shows += along * across;
    }
  return 1 - shows / all;
}

describe('bricks that no face shows', () => {
  test.each(unlike(libraryBonds()).map((b) => [b.library, b.name, b.thickness, b.n, b] as const))(
    '%s: %s, %d half bricks thick (%s)',
    (_library, _name, thickness, _n, { bond }) => {
      expect(hiddenShare(bond, thickness)).toBeCloseTo(counted(bond, thickness), 1.7);
    },
  );

  // English: one brick of two behind every stretcher, in every second course. Flemish: one of three in each.
  test('a quarter in English bond a brick thick, a third in Flemish, none in half a brick', () => {
    expect(hiddenShare(BONDS.english, 2)).toBeCloseTo(1 / 4, 12);
    expect(hiddenShare(BONDS.flemish, 2)).toBeCloseTo(1 / 3, 12);
    expect(hiddenShare(BONDS.stretcher, 1)).toBe(0);
  });
});
