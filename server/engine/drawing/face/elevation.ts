import { phrase } from '../../../../shared/phrase';
import type { FaceShape } from '../../brickwork/faces';
import type { SettingOut } from '../../setting-out';
import { brickBoxes, brickCount, plainAreas } from '../brickwork';
import { heightChain, lengthChains, toothedSpan } from '../dimensions';
import { keysOf, movementKey } from '../keys';
import { lengthOn, type Units, withUnit } from '../lengths';
import type { Box, Drawing } from '../model';
import type { PlacedPier } from '../pier-bricks';
import { clip, type View, type Visible, viewOf } from '../sheet/view';
import { groundAndDpc, movementMarks, openingMarks } from '../things';
import {
  type Topping,
  toppingBoxes,
  toppingKeys,
  toppingLabels,
  toppingNotes,
  toppingTops,
} from '../top/coping';
import { type BandShown, bandKeys, bandsOver } from './bands-in-face';
import { shapeKeys, shapeSizes, shapesIn } from './face-shapes';
import { type Ends, metIn } from './met-in-face';
import { mirrored } from './mirrored';
import { piersIn } from './piers-in-face';
import {
  type Projection,
  projectionBoxes,
  projectionKeys,
  projectionLabels,
  projectionSpan,
  withProjections,
} from './projections';

/** What to draw of a wall, and what stands on it. */
export interface ElevationOptions {
  title: string;
  /** `front` when left out. The back is seen from behind, its left end the wall's right. */
  face?: 'front' | 'back';
  /** Only this much of it; all of it when left out. */
  visible?: Visible;
  /** Piers whose plans are known, drawn brick by brick; the others are ruled in courses. */
  piers?: readonly PlacedPier[];
  /** Courses `from` (inclusive) to `to` (exclusive) in another brick. */
  bands?: readonly BandShown[];
  /** Courses that stand out before the face. */
  projections?: readonly Projection[];
  /** Heads, lintels, arches and sills, over the bricks of the wall. */
  shapes?: readonly FaceShape[];
  /** Copings and caps, on the wall and on its piers. */
  toppings?: readonly Topping[];
  /** The course a damp-proof course lies under, or that the bricks that make one reach up to. */
  dpc?: number;
  /** What shows of walls that run into it, in one course. */
  ends?: Ends;
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
function describe({ out, whole }: View, shown: boolean, units: Units, back: boolean): string {
  const { spec } = out;
  const names = [...spec.openings, ...spec.piers].map((thing) => thing.name);
  const bricks = shown ? phrase`every brick shown` : phrase`bricks not shown one by one`;
  const things = names.length > 0 ? phrase`, with ${names.join(', ')}` : '';
  const long = withUnit(lengthOn(units, spec.length), units);
  const size = phrase`${long} long, ${spec.courses} courses high`;
  const part = whole ? phrase`Elevation` : phrase`Part of the elevation`;
  const side = back ? phrase`of the back ` : '';
  return phrase`${part} ${side}of a wall ${size}, in ${spec.bond.name} bond${things}; ${bricks}.`;
}

/** The row of the wall that shows at the back, in the place of the front's. */
function backOf(out: SettingOut): SettingOut {
  return { ...out, bands: out.rows.at(-1)?.bands ?? out.bands };
}

/**
 * A face of a wall: every brick in the part asked for, openings, piers, what stands on top, gauge
 * rod and dimensions. Single bricks exist only here, and only as many as `mostBricks`.
 */
export function elevation(out: SettingOut, options: ElevationOptions): Drawing {
  if (options.face !== 'back') return faceOf(out, options);
  const { length } = out.spec;
  const seen = options.visible;
  const visible = seen && { ...seen, from: length - seen.to, to: length - seen.from };
  return mirrored(faceOf(backOf(out), { ...options, visible }), length);
}

/** Those of its rows, and those where another wall runs in. */
function bricksIn(view: View, { face = 'front', ends }: ElevationOptions, units: Units) {
  const own = brickBoxes(view, units);
  const met = metIn(view, face, ends, units);
  return { boxes: [...own.boxes, ...met.boxes], labels: [...own.labels, ...met.labels] };
}

/** The front face of what is given. */
function faceOf(out: SettingOut, options: ElevationOptions): Drawing {
  const { units = 'millimetres' } = options;
  const view = viewOf(out, options.visible);
  const shown = brickCount(view) <= (options.mostBricks ?? MOST_BRICKS);
  const { projections = [] } = options;
  const bricks = shown
    ? withProjections(bricksIn(view, options, units), projections, view, units)
    : { boxes: plainAreas(view), labels: [] };
  const piers = piersIn(view, shown ? (options.piers ?? []) : [], options.face ?? 'front', units);
  const things = [...openingMarks(view), ...piers.plain];
  const toppings = view.whole ? (options.toppings ?? []) : [];
  const above = toppings.flatMap(toppingBoxes).flatMap((box) => clip(view, box) ?? []);
  const boxes = [
    ...things.flatMap((thing) => thing.boxes),
    ...bricks.boxes,
    ...piers.boxes,
    ...bandsOver([...bricks.boxes, ...piers.boxes], options.bands ?? [], view),
    ...projectionBoxes(projections, view),
    ...above,
  ];
  const extent = extentOf(boxes, view);
  const past = toothedSpan(out, bricks.boxes, projectionSpan(projections, view));
  const shapes = shapesIn(view, options.shapes ?? []);
  const strokes = things.flatMap((thing) => thing.strokes);
  const moving = movementMarks(view);
  const names = things.flatMap((thing) => thing.labels);
  return {
    title: options.title,
    units,
    description: describe(view, shown, units, options.face === 'back'),
    extent,
    boxes,
    shapes,
    strokes: [...strokes, ...moving, ...groundAndDpc(view, options.dpc)],
    labels: [
      ...bricks.labels,
      ...shapeSizes(shapes, view, units),
      ...piers.labels,
      ...names,
      ...projectionLabels(projections, view, bricks.labels),
      ...toppings.flatMap((t) => toppingLabels(t, units)),
    ],
    chains: [
      ...lengthChains(out, view.left, view.right, past),
      heightChain(out, extent.bottom, view.to * out.gauge, toppingTops(toppings)),
    ],
    rod: { gauge: out.gauge, courses: view.to, every: 4 },
    keys: [
      ...keysOf([...boxes, ...shapes], options.dpc !== undefined),
      ...movementKey(moving),
      ...bandKeys(boxes, options.bands ?? []),
      ...projectionKeys(projections, units),
      ...shapeKeys(shapes, toppingKeys(toppings)),
    ],
    notes: [
      ...(shown ? [] : [phrase`Too many bricks to draw one by one.`]),
      ...toppingNotes(toppings),
    ],
  };
}
