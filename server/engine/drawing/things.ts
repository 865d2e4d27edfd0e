import { levelAt, topOf } from '../setting-out';
import type { Box, Label, Stroke, Style } from './model';
import { clip, type View } from './sheet/view';

export { groundAndDpc } from './face/ground';

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
    const height = (top ?? levelAt(topOf(spec), x)) * gauge - y;
    return onBox(view, { style: 'opening', x, y, width, height }, name, crossed);
  });
}

/** Piers as plain areas ruled in courses, but for those drawn brick by brick, by name. */
export function pierMarks(view: View, drawn: ReadonlySet<string> = new Set()): Things[] {
  const { gauge, spec } = view.out;
  const ruled = ({ x, y, width, height }: Box): Stroke[] => {
    const first = Math.ceil(y / gauge + 1e-6);
    const count = Math.ceil((y + height) / gauge - 1e-6) - first;
    if (count > MOST_COURSES) return [];
    return Array.from({ length: Math.max(0, count) }, (_, i) =>
      level('course', (first + i) * gauge, x, x + width),
    );
  };
  const plain = spec.piers.filter(({ name }) => !drawn.has(name));
  return plain.flatMap(({ name, from: x, width, courses, base = 0 }) => {
    const box: Box = { style: 'pier', x, y: base * gauge, width, height: courses * gauge };
    return onBox(view, box, name, ruled);
  });
}

/** Joints that let the wall move: a line up the middle of each, as high as the wall stands there. */
export function movementMarks(view: View): Stroke[] {
  const { gauge, spec } = view.out;
  return (spec.movement ?? []).flatMap(({ from, width }): Stroke[] => {
    const x = from + width / 2;
    const to = Math.min(view.to, spec.courses);
    if (x < view.left || x > view.right || to <= view.from) return [];
    return [{ style: 'movement', from: { x, y: view.from * gauge }, to: { x, y: to * gauge } }];
  });
}
