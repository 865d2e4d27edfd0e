/** How large a drawing is shown, and where it is scrolled to. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitting, intoView, MM, scrolled, wheeled, zoomed } from '../../client/preview/page/view';

describe('zoom', () => {
  test('goes up and down by the usual steps, to their ends', () => {
    expect([zoomed(1, 1), zoomed(1, -1), zoomed(1.1, 1), zoomed(16, 1), zoomed(0.25, -1)]).toEqual([
      1.25, 0.8, 1.25, 16, 0.25,
    ]);
  });

  test('of the wheel is the same there and back', () => {
    expect(wheeled(wheeled(1, -100), 100)).toBeCloseTo(1);
    expect(wheeled(1, -1e9)).toBeLessThan(2);
  });

  test('what is under the pointer stays there', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 900, noNaN: true }),
        fc.double({ min: 0.3, max: 8, noNaN: true }),
        (point, to) => {
          const scroll = scrolled(120, point, 1, to);
          expect((scroll + point) / to).toBeCloseTo(120 + point, 6);
        },
      ),
    );
  });

  test('fits what is wide by its width, what is tall not by its height', () => {
    const room = { width: 100 * MM, height: 50 * MM };
    expect(fitting(200, 40, room, false)).toBeCloseTo(0.5);
    expect(fitting(100, 100, room, false)).toBeCloseTo(0.5);
    expect(fitting(100, 100, room, true)).toBeCloseTo(1);
  });
});

describe('bringing into view', () => {
  const seen = { from: 100, to: 300 };
  test.each([
    ['in view', { from: 120, to: 180 }, undefined],
    ['mostly in view, and larger than that', { from: 50, to: 400 }, undefined],
    ['before', { from: 0, to: 40 }, 0],
    ['behind', { from: 500, to: 540 }, 420],
    ['half in view', { from: 290, to: 310 }, 200],
  ])('what is %s', (_, span, scroll) => {
    expect(intoView(span, seen)).toBe(scroll);
  });
});
