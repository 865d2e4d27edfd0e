/** Leaves that nothing ties: by hand, and of every bond that a library gives for more than half a brick. */
import { describe, expect, test } from 'vitest';
import { type PlacedPiece, placeCourse, setOut } from '../../server/engine/setting-out';
import { proveTied } from '../../server/engine/setting-out/prove';
import { overAll, wall } from './fixtures';
import { libraryBonds, unlike } from './thick';

const whole = (x: number, y: number, along: number, across: number): PlacedPiece => {
  return { piece: 'whole', x, y, along, across };
};
const stretchers = (y: number) => [0, 225, 450].map((x) => whole(x, y, 215, 102.5));
const headers = (y: number) => [0, 112.5, 225].map((x) => whole(x, y, 102.5, 215));
/** The joints between half bricks of 102.5 mm and joints of 10. */
const LINES = [107.5, 220, 332.5];

const at = (courses: readonly (readonly PlacedPiece[])[], lines: readonly number[]) =>
  proveTied(courses, lines).map(({ kind, measured }) => [kind, measured]);

describe('one brick thick', () => {
  const leaves = [...stretchers(0), ...stretchers(112.5)];

  test('two leaves of stretchers are untied, in as many courses as there are', () => {
    expect(at([leaves], [LINES[0]!])).toEqual([['untied', 107.5]]);
    expect(at([leaves, leaves, leaves], [LINES[0]!])).toEqual([['untied', 107.5]]);
  });

  test('one header in one course ties them', () => {
    expect(at([leaves, leaves, [whole(0, 0, 102.5, 215)]], [LINES[0]!])).toEqual([]);
  });

  test('a piece that ends at the joint does not cross it', () => {
    expect(at([[whole(0, 0, 215, 107.5), whole(0, 107.5, 215, 107.5)]], [107.5])).toHaveLength(1);
  });
});

test('a brick and a half thick: headers in front and stretchers behind leave the back by itself', () => {
  const lines = LINES.slice(0, 2);
  const front = [...headers(0), ...stretchers(225)];
  expect(at([front, front], lines)).toEqual([['untied', 220]]);
  const turned = [...stretchers(0), ...headers(112.5)];
  expect(at([front, turned], lines)).toEqual([]);
});

test('where nothing is laid there is nothing to tie, and numbers that nobody means break nothing', () => {
  expect(at([], LINES)).toEqual([]);
  expect(at([[], []], LINES)).toEqual([]);
  expect(at([[whole(Number.NaN, Number.NaN, 1e300, -1)]], [Number.NaN, Infinity])).toHaveLength(2);
});

describe('every bond of every library thicker than half a brick', () => {
  const all = libraryBonds()
    .filter(({ thickness }) => thickness > 1)
    .map((each) => ({ ...each, name: `${each.library} ${each.name} ${each.thickness}` }));

  test.each(unlike(all))('$name is tied through over its repeat', ({ bond, thickness }) => {
    const courses = bond.courses.length;
    const out = setOut(wall({ bond, thickness, length: overAll(48), courses }));
    const laid = Array.from({ length: courses }, (_, course) => placeCourse(out, course));
    expect(laid.flat().length).toBeGreaterThan(0);
    expect(proveTied(laid, LINES.slice(0, thickness - 1))).toEqual([]);
  });
});
