/** Courses in another brick: lines over the bricks of the face. */
import type { Box, Key } from './model';
import { clip, eachSegment, type View } from './view';

export interface BandShown {
  /** Of the brick. */
  name: string;
  /** Courses, the first included, the last not. */
  from: number;
  to: number;
}

/** Each stretch of brickwork in view, as far as bands go through it. */
export function bandsIn(view: View, bands: readonly BandShown[]): Box[] {
  const { gauge, spec } = view.out;
  const boxes: Box[] = [];
  eachSegment(view, (segment, from, to) => {
    for (const band of bands) {
      const [low, high] = [Math.max(from, band.from), Math.min(to, band.to)];
      if (!(high > low)) continue;
      const y = low * gauge + spec.joints.bed;
      const { from: x } = segment;
      const height = high * gauge - y;
      const box = clip(view, { style: 'band', x, y, width: segment.to - x, height });
      if (box) boxes.push(box);
    }
  });
  return boxes;
}

export function bandKeys(boxes: readonly Box[], bands: readonly BandShown[]): Key[] {
  if (!boxes.some(({ style }) => style === 'band')) return [];
  const names = [...new Set(bands.map(({ name }) => name))];
  return [{ style: 'band', text: `courses in ${names.join(', ')}` }];
}
