/** How far the things of a file reach. */
import type { Point } from '../../engine/drawing';
import type { Tag } from './tags';

export interface Extent {
  low: Point;
  high: Point;
}

/** Over all points of entities, whose codes are 10 and 20, and 11 and 21. A hatch has the outline it fills. */
export function extentOf(entities: readonly Tag[]): Extent {
  const low = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY };
  const high = { x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY };
  const take = (axis: 'x' | 'y', value: number) => {
    low[axis] = Math.min(low[axis], value);
    high[axis] = Math.max(high[axis], value);
  };
  let kind: string | number = '';
  for (const [code, value] of entities) {
    if (code === 0) kind = value;
    if (typeof value !== 'number' || kind === 'HATCH') continue;
    if (code === 10 || code === 11) take('x', value);
    if (code === 20 || code === 21) take('y', value);
  }
  if (low.x > high.x) return { low: { x: 0, y: 0 }, high: { x: 0, y: 0 } };
  return { low, high };
}
