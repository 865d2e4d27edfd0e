/** A wall parted by movement joints: as few lengths as may be, whole bricks in each, none longer than it may be. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import { panelsOf, setOut } from '../../server/engine/setting-out';
import { LIMITS, overAll, wall } from './fixtures';

const UK = { width: 10, module: 225, joint: 10, endJoint: 0, least: 4 } as const;

describe('panelsOf', () => {
  test('parts no wall that is short enough, and none into lengths that nobody builds', () => {
    expect(panelsOf({ ...UK, length: 5840, most: 6000 })).toEqual([]);
    expect(panelsOf({ ...UK, length: 5840, most: 300 })).toBeNull();
    expect(panelsOf({ ...UK, length: 5840, most: Number.NaN })).toBeNull();
    expect(panelsOf({ ...UK, length: 1e12, most: 6000 })).toBeNull();
  });

  test('every length but the last is whole bricks, and none is longer than it may be', () => {
    const halves = fc.integer({ min: 12, max: 400 });
    const most = fc.integer({ min: 2000, max: 12000 });
    fc.assert(
      fc.property(halves, most, fc.constantFrom(10, 16), (n, longest, width) => {
        const length = overAll(n);
        const gaps = panelsOf({ ...UK, width, length, most: longest })!;
        const starts = [0, ...gaps.map((g) => g.from + g.width)];
        const panels = starts.map((from, i) => (gaps[i]?.from ?? length) - from);
        for (const panel of panels) expect(panel).toBeLessThanOrEqual(longest);
        for (const panel of panels.slice(0, -1)) expect(((panel + 10) / 225) % 1).toBeCloseTo(0, 6);
        // One fewer would make the mean of them longer than it may be, or as long to within a brick.
        const fewer = gaps.length;
        if (fewer > 0)
          expect((length - width * (fewer - 1)) / fewer).toBeGreaterThan(longest - 225);
      }),
    );
  });

  test('a wall so parted works without a cut', () => {
    const length = overAll(160);
    const movement = panelsOf({ ...UK, length, most: 6000 })!;
    const out = setOut(wall({ length, movement, limits: LIMITS }));
    const segments = out.bands.flatMap((b) => b.segments);
    expect(segments.every((s) => s.fits && s.left === 'stopped' && s.right === 'stopped')).toBe(
      true,
    );
  });
});
