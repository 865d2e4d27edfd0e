import type { Box, Label, Stroke, Style } from './model';
import type { View } from './view';
import { clip } from './view';

/** Height of the letters of a name, mm on paper. */
const NAME = 3;
/** A pier higher than this many courses is drawn plain. */
const MOST_COURSES = 2000;

/** What is drawn of something besides bricks. */
export interface Things {
  boxes: Box[];
  strokes: Stroke[];
  labels: Label[];
}

function level(style: Style, y: number, from: number, to: number): Stroke {
  return { style, from: { x: from, y }, to: { x: to, y } };
}

function named(text: string, { x, y, width, height }: Box): Label {
  return { text, x: x + width / 2, y: y + height / 2, size: NAME, room: { width, height } };
}

/** Clips a box with what is drawn on it; nothing where none of it is in view. */
function onBox(view: View, whole: Box, name: string, strokes: (box: Box) => Stroke[]): Things[] {
  const box = clip(view, whole);
  return box ? [{ boxes: [box], strokes: strokes(box), labels: [named(name, box)] }] : [];
}

/** Openings crossed corner to corner, named in the middle. */
export function openingMarks(view: View): Things[] {
  const { gauge, spec } = view.out;
  const crossed = ({ x, y, width, height }: Box): Stroke[] => [
    { style: 'opening', from: { x, y }, to: { x: x + width, y: y + height } },
    { style: 'opening', from: { x, y: y + height }, to: { x: x + width, y } },
  ];
  return spec.openings.flatMap(({ name, from: x, width, sill, top }) => {
    const y = sill * gauge;
    const height = (top ?? spec.courses) * gauge - y;
    return onBox(view, { style: 'opening', x, y, width, height }, name, crossed);
  });
}

/** Piers as plain areas ruled in courses: which bricks show is for their plans to say. */
export function pierMarks(view: View): Things[] {
  const { gauge, spec } = view.out;
  const ruled = ({ x, y, width, height }: Box): Stroke[] => {
    const first = Math.ceil(y / gauge + 1e-6);
    const count = Math.ceil((y + height) / gauge - 1e-6) - first;
    if (count > MOST_COURSES) return [];
    return Array.from({ length: Math.max(0, count) }, (_, i) =>
      level('course', (first + i) * gauge, x, x + width),
    );
  };
  return spec.piers.flatMap(({ name, from: x, width, courses }) =>
    onBox(view, { style: 'pier', x, y: 0, width, height: courses * gauge }, name, ruled),
  );
}

/** The ground under the wall, and a damp-proof course through it, but not across its openings. */
export function groundAndDpc(view: View, dpc: number | undefined): Stroke[] {
  const { out, left, right } = view;
  const over = (right - left) / 60;
  const strokes = view.from === 0 ? [level('ground', 0, left - over, right + over)] : [];
  if (dpc === undefined || dpc < view.from || dpc > view.to) return strokes;
  const gaps = out.spec.openings
    .filter((o) => o.sill <= dpc && (o.top ?? Number.POSITIVE_INFINITY) > dpc)
    .sort((a, b) => a.from - b.from);
  let from = left - over / 2;
  for (const gap of [...gaps, { from: right + over / 2, width: 0 }]) {
    const to = Math.min(gap.from, right + over / 2);
    if (to > from) strokes.push(level('dpc', dpc * out.gauge, from, to));
    from = Math.max(from, gap.from + gap.width);
  }
  return strokes;
}
