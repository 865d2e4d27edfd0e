import { describe, expect, test } from 'vitest';
import { findingsIn, silent } from './tells';

const wall = (opening: string) =>
  `perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  bond flemish\n  thick 1 brick\n  length 6.1 m\n  height 20 courses\n  opening a\n    from left 1.7 m\n    width ${opening}\n    sill 5 courses\n    height 9 courses\n`;

describe('perpends-aligned', () => {
  test('is told of a wall whose stretches work at different joints, with the course and the place', () => {
    const [found] = findingsIn(wall('1070 mm')).filter((f) => f.code === 'perpends-aligned');
    expect(found!.severity).toBe('information');
    // Where the wall's own name stands.
    expect(found!.place).toMatchObject({ line: 2, start: 5, end: 6 });
    expect(found!.message).toMatch(/between courses 5 and 6, [\d.]+ mm from the left end/);
  });

  test('is not told of openings in brickwork sizes', () => {
    // 112.5 n - 10 to the reveal, 112.5 n + 10 across: CO- and CO+ of the dimension tables.
    silent(
      wall('910 mm').replace('1.7 m', '1677.5 mm').replace('6.1 m', '6065 mm'),
      'perpends-aligned',
    );
    silent(
      wall('1135 mm').replace('1.7 m', '1677.5 mm').replace('6.1 m', '6065 mm'),
      'perpends-aligned',
    );
  });
});
