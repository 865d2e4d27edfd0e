/** Copings and caps from above: every piece, its length through the work, and the faces below it. */

import { phrase } from '../../../../shared/phrase';
import { lengthOn, type Units, withUnit } from '../lengths';
import type { Box } from '../model';
import type { DrawingSet, Group } from '../sheet/set';
import { runBoxes, type Topping, toppingKeys } from './coping';
import { type Faces, type Strip, stripDrawing } from './top-strip';

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

/** A top on plan: the middle of it over the middle of what it stands on. Without a depth it is as deep as that. */
function depthsOf(
  { deep, ...top }: Topping,
  { front, back }: Faces,
): [y: number, across: number][] {
  const sides = deep ?? [back - front];
  const joint = top.kind === 'cap' ? 0 : (top.between ?? top.joint);
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
  return rows.flatMap(([y, height], i) =>
    runBoxes({ ...topping, ...topping.rows?.[i] }).map((box) => ({ ...box, y, height })),
  );
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

function groupsOf(
  topping: Topping,
  title: string,
  { thickness, units = 'millimetres' }: TopPlanOptions,
): Group[] {
  const faces = topping.faces ?? { front: 0, back: thickness };
  const boxes = piecesOf(topping, faces);
  return stripsOf(topping, units).map((strip, i) => ({
    title: i ? phrase`${title}, carried on` : title,
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
    return phrase`${name}, ${withUnit(length(from), units)} to ${withUnit(length(to), units)}`;
  const sides = [to - from, ...(deep ?? [])].map(length).join(' x ');
  return `${name}, ${withUnit(sides, units)}`;
}

/** Courses that lie on one another are told apart. */
function numbered(titles: readonly string[]): string[] {
  return titles.map((title, i) => {
    const alike = titles.flatMap((other, at) => (other === title ? at : []));
    return alike.length > 1 ? phrase`${title}, course ${alike.indexOf(i) + 1}` : title;
  });
}

export function topPlans(toppings: readonly Topping[], options: TopPlanOptions): DrawingSet {
  const { units = 'millimetres', title } = options;
  const titles = numbered(toppings.map((topping) => titleOf(topping, units)));
  const groups = toppings.flatMap((topping, i) => groupsOf(topping, titles[i]!, options));
  const shown = groups.slice(0, MOST_STRIPS);
  const long = toppings.some((t) => t.to - t.from > MOST_STRIPS * STRIP[units]);
  const more = long || shown.length < groups.length ? [phrase`Only the first part is drawn.`] : [];
  return {
    title,
    description: phrase`From above: ${titles.join('; ')}.`,
    units,
    scale: SCALE[units],
    groups: shown,
    notes: [
      phrase`Seen from above, the front face below. Dashed: the faces of the work it stands on.`,
      ...more,
    ],
  };
}
