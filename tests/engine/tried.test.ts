import { describe, expect, test } from 'vitest';
import { jobOf } from './world';

const wall = (lines: string) => `perpend 1
use uk
wall north
  stands  held
  height  8 courses
${lines}`;

const waysOf = (text: string, code: string) =>
  jobOf(text, {})
    .findings.filter((f) => f.code === code)
    .flatMap((f) => f.ways);

describe('ways out are tried before they are offered', () => {
  // A window of 950 mm, 440 mm from either end: 1022.5 and 1135 mm would still go in.
  const roomy = wall(
    '  length 1830 mm\n  opening w\n    from left 440 mm\n    width 950 mm\n    sill 4 courses\n',
  );
  // The same at the very end: anything wider reaches beyond the wall, and the opening would be left out.
  const tight = wall(
    '  length 1390 mm\n  opening w\n    from left 440 mm\n    width 950 mm\n    sill 4 courses\n',
  );

  test('all of them where all do what they say', () => {
    expect(waysOf(roomy, 'opening-width').map((w) => w.title)).toEqual(
      expect.arrayContaining(['Make it 910 mm', 'Make it 1022.5 mm']),
    );
  });

  test('not one that leaves an error', () => {
    expect(waysOf(tight, 'opening-width').map((w) => w.title)).toEqual(['Make it 910 mm']);
  });

  test('an opening measured from the right is moved by its own line, not by the length of the wall', () => {
    const text = wall('  length 3000 mm\n  opening g\n    from right 500 mm\n    width 910 mm\n');
    const ways = waysOf(text, 'fit-run');
    expect(ways.length).toBeGreaterThan(0);
    expect(ways.filter((w) => w.title.startsWith('Make the wall'))).toEqual([]);
  });

  test('a wall with very many findings offers its ways untried: one by one they would take a quarter of an hour', () => {
    const openings = Array.from(
      { length: 900 },
      (_, i) =>
        `  opening o${i}\n    from left ${i * 1000 + 440} mm\n    width 137 mm\n    sill 1 courses\n    height 1 courses\n`,
    );
    const text = wall(`  length 905 m\n${openings.join('')}`);
    const ways = waysOf(text, 'opening-width');
    expect(ways.length).toBeGreaterThan(900);
  }, 90_000);
});
