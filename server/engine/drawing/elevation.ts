import type { SettingOut } from '../setting-out';
import { brickBoxes, brickCount, plainAreas } from './brickwork';
import type { Topping } from './coping';
import { toppingBoxes, toppingKeys, toppingLabels, toppingNotes, toppingTops } from './coping';
import { heightChain, lengthChains } from './dimensions';
import { keysOf } from './keys';
import { lengthOn, type Units, withUnit } from './lengths';
import type { Box, Drawing } from './model';
import { groundAndDpc, openingMarks, pierMarks } from './things';
import type { View, Visible } from './view';
import { clip, viewOf } from './view';

/** What to draw of a wall, and what stands on it. */
export interface ElevationOptions {
  title: string;
  /** Only this much of it; all of it when left out. */
  visible?: Visible;
  /** Copings and caps, on the wall and on its piers. */
  toppings?: readonly Topping[];
  /** The course a damp-proof course lies under, or that the bricks that make one reach up to. */
  dpc?: number;
  /** Most bricks drawn one by one; past that, brickwork is drawn as a plain area. 20,000 when left out. */
  mostBricks?: number;
  /** What lengths are written in: millimetres when left out. */
  units?: Units;
}

const MOST_BRICKS = 20_000;

/** From the leftmost thing drawn to the rightmost, and up to the highest: toothing and overhangs stand out past the wall. */
function extentOf(boxes: readonly Box[], view: View) {
  let { left, right } = view;
  const bottom = view.from * view.out.gauge;
  let top = view.to * view.out.gauge;
  for (const { x, y, width, height } of boxes) {
    left = Math.min(left, x);
    right = Math.max(right, x + width);
    top = Math.max(top, y + height);
  }
  return { left, right, bottom, top };
}

/** Words for whoever cannot see the drawing. */
function describe({ out, whole }: View, shown: boolean, units: Units): string {
  const { spec } = out;
  const names = [...spec.openings, ...spec.piers].map((thing) => thing.name);
  const bricks = shown ? 'every brick shown' : 'bricks not shown one by one';
  const things = names.length > 0 ? `, with ${names.join(', ')}` : '';
  const long = withUnit(lengthOn(units, spec.length), units);
  const size = `${long} long, ${spec.courses} courses high`;
  const part = whole ? 'Elevation' : 'Part of the elevation';
  return `${part} of a wall ${size}, in ${spec.bond.name} bond${things}; ${bricks}.`;
}

/**
 * The face of a wall: every brick in the part asked for, openings, piers, what stands on top, gauge
 * rod and dimensions. Single bricks exist only here, and only as many as `mostBricks`.
 */
export function elevation(out: SettingOut, options: ElevationOptions): Drawing {
  const { units = 'millimetres' } = options;
  const view = viewOf(out, options.visible);
  const shown = brickCount(view) <= (options.mostBricks ?? MOST_BRICKS);
  const bricks = shown ? brickBoxes(view, units) : { boxes: plainAreas(view), labels: [] };
  const things = [...openingMarks(view), ...pierMarks(view)];
  const toppings = view.whole ? (options.toppings ?? []) : [];
  const above = toppings.flatMap(toppingBoxes).flatMap((box) => clip(view, box) ?? []);
  const boxes = [...things.flatMap((thing) => thing.boxes), ...bricks.boxes, ...above];
  const extent = extentOf(boxes, view);
  const strokes = things.flatMap((thing) => thing.strokes);
  const names = things.flatMap((thing) => thing.labels);
  return {
    title: options.title,
    units,
    description: describe(view, shown, units),
    extent,
    boxes,
    strokes: [...strokes, ...groundAndDpc(view, options.dpc)],
    labels: [...bricks.labels, ...names, ...toppings.flatMap((t) => toppingLabels(t, units))],
    chains: [
      ...lengthChains(out, view.left, view.right),
      heightChain(out, extent.bottom, view.to * out.gauge, toppingTops(toppings)),
    ],
    rod: { gauge: out.gauge, courses: view.to, every: 4 },
    keys: [...keysOf(boxes, options.dpc !== undefined, units), ...toppingKeys(toppings)],
    notes: [...(shown ? [] : ['Too many bricks to draw one by one.']), ...toppingNotes(toppings)],
  };
}
