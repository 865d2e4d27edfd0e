/** A length of a coping from above. */

import { cutKey } from '../keys';
import { lengthOn, type Units } from '../lengths';
import type { Box, Drawing, Label, Stroke } from '../model';
import { breakLine } from '../plan/plan';
import { cutLabel, type Topping, toppingKeys } from './coping';

/** Of what a coping stands on, mm from the wall's front. */
export interface Faces {
  front: number;
  back: number;
}

export interface Strip {
  from: number;
  to: number;
  /** Whether the run goes on past it. */
  before: boolean;
  after: boolean;
}

function clipped(box: Box, { from, to }: Strip): Box[] {
  const x = Math.max(box.x, from);
  const width = Math.min(box.x + box.width, to) - x;
  return width > 0.05 ? [{ ...box, x, width }] : [];
}

/** The whole of its length is written on a cut, however much of it is on the strip. */
function cutLabels(box: Box, strip: Strip, units: Units): Label[] {
  const text = lengthOn(units, box.width);
  return clipped(box, strip).map((part) => ({ ...cutLabel(part, units), text, cut: box.width }));
}

/** The faces below, which the coping hides. */
function hidden({ front, back }: Faces, { from, to }: Strip): Stroke[] {
  return [front, back].map((y) => ({ style: 'hidden', from: { x: from, y }, to: { x: to, y } }));
}

/** The ends of the strip, and where each of its cuts begins: how long it is stands on it. */
function stopsOf(boxes: readonly Box[], { from, to }: Strip): number[] {
  const cuts = boxes.filter((box) => box.style === 'cut');
  const all = [from, to, ...cuts.map(({ x }) => x)];
  return all.sort((a, b) => a - b).filter((x, i) => i === 0 || x - all[i - 1]! > 0.5);
}

export function stripDrawing(
  topping: Topping,
  all: readonly Box[],
  strip: Strip,
  faces: Faces,
  units: Units,
): Drawing {
  const boxes = all.flatMap((box) => clipped(box, strip));
  const [bottom, top] = [
    Math.min(faces.front, ...boxes.map((box) => box.y)),
    Math.max(faces.back, ...boxes.map((box) => box.y + box.height)),
  ];
  const depth = { front: bottom, back: top };
  const cuts = all.filter((box) => box.style === 'cut');
  // Along a wall from its left end; a cap by itself.
  const origin = topping.kind === 'cap' ? topping.from : 0;
  const through = [...new Set([bottom, faces.front, faces.back, top])].sort((a, b) => a - b);
  return {
    title: '',
    description: '',
    units,
    extent: { left: strip.from, right: strip.to, bottom, top },
    boxes,
    shapes: [],
    strokes: [
      ...hidden(faces, strip),
      ...(strip.before ? breakLine(strip.from, depth) : []),
      ...(strip.after ? breakLine(strip.to, depth) : []),
    ],
    labels: cuts.flatMap((box) => cutLabels(box, strip, units)),
    chains: [
      { side: 'below', form: 'running', stops: stopsOf(boxes, strip), origin },
      { side: 'right', form: 'between', stops: through },
    ],
    rod: null,
    part: { top: { from: topping.from, to: topping.to, at: topping.at } },
    keys: [...toppingKeys([topping]), ...cutKey(cuts)],
    notes: [],
  };
}
