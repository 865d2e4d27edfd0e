import type { Mark, Sheet } from '../../server/engine/drawing';

/** Every x and y that a mark names, mm on paper. */
export function cornersOf(mark: Mark): { xs: number[]; ys: number[] } {
  if (mark.kind === 'line') return { xs: [mark.x1, mark.x2], ys: [mark.y1, mark.y2] };
  if (mark.kind === 'shape')
    return { xs: mark.points.map((p) => p.x), ys: mark.points.map((p) => p.y) };
  const { x, y } = mark;
  if (mark.kind === 'text') return { xs: [x], ys: [y] };
  return { xs: [x, x + mark.width], ys: [y, y + mark.height] };
}

/** Everything that is written on a sheet. */
export function wordsOn({ marks }: Sheet): string[] {
  return marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
}
