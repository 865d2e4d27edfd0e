/** Copings and caps from above: every piece, its length through the work, and the faces below it. */
import { cutLabel, type Run, runBoxes, type Topping, toppingKeys } from './coping';
import { lengthOn, type Units, withUnit } from './lengths';
import type { Box, Drawing, Label, Stroke } from './model';
import { breakLine } from './plan';
import type { DrawingSet, Group } from './set';

export interface TopPlanOptions {
  title: string;
  units?: Units;
  /** Of the wall that the tops stand on, mm. */
  thickness: number;
}

/** A run is drawn in lengths of this, mm of the work, one under another. */
const STRIP = { millimetres: 2400, feet: 1900 };
const SCALE = { millimetres: 10, feet: 8 };
const MOST_STRIPS = 40;

interface Faces {
  front: number;
  back: number;
}

/** A top on plan: the middle of it over the middle of what it stands on. Without a depth it is as deep as that. */
function depthsOf(
  { deep, ...top }: Topping,
  { front, back }: Faces,
): [y: number, across: number][] {
  const sides = deep ?? [back - front];
  const joint = top.kind === 'cap' ? 0 : top.joint;
  const whole = sides.reduce((sum, side) => sum + side + joint, -joint);
  let y = (front + back - whole) / 2;
  return sides.map((side) => {
    const at: [number, number] = [y, side];
    y += side + joint;
    return at;
  });
}

function piecesOf(topping: Topping, faces: Faces): Box[] {
  const rows = depthsOf(topping, faces);
  if (topping.kind === 'cap') {
    const { from: x, to } = topping;
    return rows.map(([y, height]) => ({ style: 'cap', x, y, width: to - x, height }));
  }
  return runBoxes(topping).flatMap((box) => rows.map(([y, height]) => ({ ...box, y, height })));
}

interface Strip {
  from: number;
  to: number;
  /** Whether the run goes on past it. */
  before: boolean;
  after: boolean;
}

function stripsOf({ from, to }: Topping, units: Units): Strip[] {
  const count = Math.max(1, Math.ceil((to - from) / STRIP[units] - 1e-6));
  const drawn = Math.min(count, MOST_STRIPS);
  return Array.from({ length: drawn }, (_, i) => {
    const start = from + i * STRIP[units];
    const end = Math.min(to, start + STRIP[units]);
    return { from: start, to: end, before: i > 0, after: i < count - 1 };
  });
}

function clipped(box: Box, { from, to }: Strip): Box[] {
  const x = Math.max(box.x, from);
  const width = Math.min(box.x + box.width, to) - x;
  return width > 0.05 ? [{ ...box, x, width }] : [];
}

/** The faces below, which the coping hides. */
function hidden({ front, back }: Faces, { from, to }: Strip): Stroke[] {
  return [front, back].map((y) => ({ style: 'hidden', from: { x: from, y }, to: { x: to, y } }));
}

/** The ends of the strip and those of its cuts, along the wall. */
function stopsOf(boxes: readonly Box[], { from, to }: Strip): number[] {
  const cuts = boxes.filter((box) => box.style === 'cut');
  const all = [from, to, ...cuts.flatMap(({ x, width }) => [x, x + width])];
  return all.sort((a, b) => a - b).filter((x, i) => i === 0 || x - all[i - 1]! > 0.5);
}

function stripDrawing(
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
  const whole = boxes.filter((box) => box.style === 'cut' && all.includes(box));
  const cuts = boxes.filter((box) => box.style === 'cut');
  const labels: Label[] = (whole.length ? whole : cuts).map((box) => cutLabel(box, units));
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
    labels,
    chains: [
      { side: 'below', form: 'running', stops: stopsOf(boxes, strip), origin },
      { side: 'right', form: 'between', stops: through },
    ],
    rod: null,
    keys: [...toppingKeys([topping]), ...(cuts.length ? [cutKey(topping as Run, units)] : [])],
    notes: [],
  };
}

function cutKey({ cut }: Run, units: Units) {
  return {
    style: 'cut' as const,
    text: `cut ${withUnit(lengthOn(units, cut?.length ?? 0), units)}`,
  };
}

function groupsOf(
  topping: Topping,
  title: string,
  { thickness, units = 'millimetres' }: TopPlanOptions,
): Group[] {
  const faces = topping.faces ?? { front: 0, back: thickness };
  const boxes = piecesOf(topping, faces);
  return stripsOf(topping, units).map((strip, i) => ({
    title: i ? `${title}, carried on` : title,
    drawings: [stripDrawing(topping, boxes, strip, faces, units)],
  }));
}

/** What a run is called, and where it begins, as there may be several; a cap by its sides. */
function titleOf(topping: Topping, units: Units): string {
  const text = toppingKeys([topping])[0]!.text;
  const name = `${text[0]!.toUpperCase()}${text.slice(1)}`;
  const length = (mm: number) => lengthOn(units, mm);
  const { from, to, deep } = topping;
  if (topping.kind !== 'cap')
    return `${name}, ${withUnit(length(from), units)} to ${withUnit(length(to), units)}`;
  const sides = [to - from, ...(deep ?? [])].map(length).join(' x ');
  return `${name}, ${withUnit(sides, units)}`;
}

export function topPlans(toppings: readonly Topping[], options: TopPlanOptions): DrawingSet {
  const { units = 'millimetres', title } = options;
  const groups = toppings.flatMap((topping) => groupsOf(topping, titleOf(topping, units), options));
  const shown = groups.slice(0, MOST_STRIPS);
  const long = toppings.some((t) => t.to - t.from > MOST_STRIPS * STRIP[units]);
  const more = long || shown.length < groups.length ? ['Only the first part is drawn.'] : [];
  return {
    title,
    description: `From above: ${toppings.map((topping) => titleOf(topping, units)).join('; ')}.`,
    units,
    scale: SCALE[units],
    groups: shown,
    notes: [
      'Seen from above, the front face below. Dashed: the faces of the work it stands on.',
      ...more,
    ],
  };
}
