/** How far the courses of a wall may run into another. */
import type { WallSpec } from '../../types';
import type { Entry } from './types';

/**
 * By a quarter brick or more, and never so far that the front of the other would not stand before them: those by half a brick,
 * which take least cutting, first. `thickness` is the other wall’s, in half bricks.
 */
export function entriesFor(spec: WallSpec, thickness: number): Entry[] {
  const quarter = (spec.unit.length + spec.joints.perpend) / 4;
  const most = 2 * thickness - 2;
  const order = [2, 1, 4, 3, 6, 5].filter((quarters) => quarters <= most);
  return order.map((quarters) => {
    return { quarters, by: quarters * quarter - spec.joints.perpend, end: 'stopped' };
  });
}
