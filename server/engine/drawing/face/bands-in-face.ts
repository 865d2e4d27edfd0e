/** Courses in another brick: lines over the bricks of the face. */
import { phrase } from '../../../../shared/phrase';
import type { Box, Key } from '../model';
import type { View } from '../sheet/view';

export interface BandShown {
  /** Of the brick. */
  name: string;
  /** Courses, the first included, the last not. */
  from: number;
  to: number;
}

/** Over each brick of them, or over as much of a plain area as they go through. */
export function bandsOver(
  bricks: readonly Box[],
  bands: readonly BandShown[],
  { out: { gauge } }: View,
): Box[] {
  return bands.flatMap(({ from, to }) =>
    bricks.flatMap((brick): Box[] => {
      const y = Math.max(brick.y, from * gauge);
      const height = Math.min(brick.y + brick.height, to * gauge) - y;
      return height > 0 ? [{ ...brick, style: 'band', y, height }] : [];
    }),
  );
}

export function bandKeys(boxes: readonly Box[], bands: readonly BandShown[]): Key[] {
  if (!boxes.some(({ style }) => style === 'band')) return [];
  const names = [...new Set(bands.map(({ name }) => name))];
  return [{ style: 'band', text: phrase`courses in ${names.join(', ')}` }];
}
