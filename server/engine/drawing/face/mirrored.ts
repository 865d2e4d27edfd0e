import type { Chain, Drawing, Label, Point } from '../model';

const OTHER = { start: 'end', middle: 'middle', end: 'start' } as const;

/** What stands in a face, as it is seen from behind: left and right change about the middle of `length` mm. */
export function mirrored(drawing: Drawing, length: number): Drawing {
  const point = ({ x, y }: Point): Point => ({ x: length - x, y });
  const chain = (of: Chain): Chain =>
    of.side === 'below' ? { ...of, stops: of.stops.map((x) => length - x).reverse() } : of;
  const label = (of: Label): Label => ({ ...of, ...point(of), align: OTHER[of.align ?? 'middle'] });
  const { left, right } = drawing.extent;
  return {
    ...drawing,
    extent: { ...drawing.extent, left: length - right, right: length - left },
    boxes: drawing.boxes.map((box) => ({ ...box, x: length - box.x - box.width })),
    shapes: drawing.shapes.map((shape) => ({ ...shape, points: shape.points.map(point) })),
    strokes: drawing.strokes.map(({ style, from, to }) => ({
      style,
      from: point(from),
      to: point(to),
    })),
    labels: drawing.labels.map(label),
    chains: drawing.chains.map(chain),
  };
}
