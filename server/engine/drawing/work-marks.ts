import type { Drawing, Label } from './model';
import type { Mark, Place } from './sheet/paper';
import { textWidth } from './sheet/paper';

/** A label where there is room for it: level, else turned, else not at all. */
function labelMark({ text, x, y, size, room, align = 'middle' }: Label, place: Place): Mark[] {
  const wide = textWidth(text, size);
  const fits = (width: number, height: number) =>
    !room || (width <= room.width / place.scale && height <= room.height / place.scale);
  const at = { kind: 'text' as const, size, text, align, backed: true };
  const [px, py] = [place.x(x), place.y(y)];
  if (fits(wide, size)) return [{ ...at, x: px, y: py + size * 0.36 }];
  if (fits(size, wide)) return [{ ...at, x: px + size * 0.36, y: py, turned: true }];
  return [];
}

/** The work itself on paper: boxes, shapes, lines, words. */
export function workMarks(drawing: Drawing, place: Place): Mark[] {
  const boxes = drawing.boxes.map(({ style, x, y, width, height }): Mark => {
    const [left, top] = [place.x(x), place.y(y + height)];
    const [w, h] = [width / place.scale, height / place.scale];
    return { kind: 'box', ink: style, x: left, y: top, width: w, height: h };
  });
  const shapes = drawing.shapes.map(({ style, points }): Mark => {
    const placed = points.map((p) => ({ x: place.x(p.x), y: place.y(p.y) }));
    return { kind: 'shape', ink: style, points: placed };
  });
  const strokes = drawing.strokes.map(({ style, from, to }): Mark => {
    const [x1, y1, x2, y2] = [place.x(from.x), place.y(from.y), place.x(to.x), place.y(to.y)];
    return { kind: 'line', ink: style, x1, y1, x2, y2 };
  });
  const labels = drawing.labels.flatMap((label) => labelMark(label, place));
  return [...boxes, ...shapes, ...strokes, ...labels];
}
