/** Bricks cut low to lie on a lintel between courses: they go on in the bond, none is a sliver, and all are in the cut list. */
import { describe, expect, test } from 'vitest';
import { placeCourse } from '../../server/engine/setting-out';
import { FIRM } from '../findings/tells';
import { jobOf } from './world';

const work = (bearing: number, bond = 'bond stretcher') => {
  const text = `perpend 1
use "firm.perp"
wall north
  brick   red
  ${bond}
  stands  held
  length  4490 mm
  height  14 courses
  opening window
    from    left 1340 mm
    width   910 mm
    sill    3 courses
    height  6 courses
    lintel  100 x 100 mm slab
    bearing ${bearing} mm
    fit     lintel-height cut
`;
  return jobOf(text, { 'firm.perp': FIRM }).works[0]!;
};

/** The low bricks of the cut list: (100 + 10 + 10) of 150 mm leave 30, in the second course over the opening. */
const low = (bearing: number, bond?: string) => {
  const parts = work(bearing, bond).facts.cuts!();
  return parts.flatMap(({ places }) => places).filter(({ high }) => high !== undefined);
};

describe('the row of low bricks on a lintel', () => {
  test('is in the cut list with its course, places and height', () => {
    // The eleventh course begins with a whole brick: its perpends are at 225 n - 5. From 1240 to 2350 that leaves, of the
    // bricks at 1125 and 2250, 100 mm each, and four whole ones between.
    expect(
      low(100).map(({ length, high, from, each }) => [
        length,
        Number(high!.toFixed(6)),
        from,
        each,
      ]),
    ).toEqual([
      [100, 30, 10, 2],
      [215, 30, 10, 4],
    ]);
    const at = low(100).flatMap((place) => place.at.map((spot) => spot.from));
    expect(at).toEqual([1240, 2250, 1350, 1575, 1800, 2025]);
    expect(100 + 10 + 4 * 225 + 100).toBe(910 + 2 * 100);
  });

  test.each([
    [100, 'bond stretcher'],
    [150, 'bond stretcher'],
    [205, 'bond stretcher'],
    [225, 'bond stretcher'],
    [150, 'thick 1 brick\n  bond english'],
    [225, 'thick 1 brick\n  bond flemish'],
  ])('with a bearing of %d in %s is no sliver, and laps the course over it', (bearing, bond) => {
    const places = low(bearing, bond);
    for (const { length } of places) expect(length).toBeGreaterThanOrEqual(50 - 1e-6);
    const starts = places.flatMap(({ at }) => at.map(({ from }) => from));
    const first = Math.min(...starts);
    expect(first).toBeCloseTo(1340 - bearing, 6);
    const { carved } = work(bearing, bond).facts;
    const over = placeCourse(carved!, 11).map(({ x }) => x);
    // What rules still call a lap: 225 x 2.2 / 12.
    for (const x of starts.filter((each) => each > first + 1))
      for (const other of over) expect(Math.abs(x - other)).toBeGreaterThan(41);
  });
});
