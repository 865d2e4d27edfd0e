import type { Segment, SettingOut } from '../setting-out';
import { bricksOf, piecesIn } from './bricks';
import type { Topping } from './coping';
import { toppingBoxes, toppingKeys, toppingLabels, toppingTop } from './coping';
import { heightChain, lengthChains } from './dimensions';
import { keysOf } from './keys';
import type { Box, Drawing, Label, Stroke } from './model';
import { inMillimetres } from './model';

/** What to draw of a wall, and what stands on it. */
export interface ElevationOptions {
  title: string;
  /** Only this much of it, mm along the wall and courses; all of it when left out. */
  visible?: { from: number; to: number; courses: { from: number; to: number } };
  /** Copings and caps, on the wall and on its piers. */
  toppings?: readonly Topping[];
  /** The course a damp-proof course lies under, or that the bricks that make one reach up to. */
  dpc?: number;
  /** Most bricks drawn one by one; past that, brickwork is drawn as a plain area. */
  mostBricks?: number;
}

const MOST_BRICKS = 20_000;
/** Heights of letters on paper, mm. */
const NAME = 3;
const SMALL = 1.8;

interface View {
  out: SettingOut;
  left: number;
  right: number;
  from: number;
  to: number;
}

function viewOf(out: SettingOut, { visible }: ElevationOptions): View {
  const { length, courses } = out.spec;
  return {
    out,
    left: Math.max(0, visible?.from ?? 0),
    right: Math.min(length, visible?.to ?? length),
    from: Math.max(0, visible?.courses.from ?? 0),
    to: Math.min(courses, visible?.courses.to ?? courses),
  };
}

function eachSegment(view: View, visit: (segment: Segment, from: number, to: number) => void) {
  for (const band of view.out.bands) {
    const from = Math.max(band.from, view.from);
    const to = Math.min(band.to, view.to);
    for (const segment of band.segments)
      if (to > from && segment.to > view.left && segment.from < view.right)
        visit(segment, from, to);
  }
}

/** Bricks there would be to draw, near enough: a part of a segment counts as its share of it. */
function brickCount(view: View): number {
  let count = 0;
  eachSegment(view, (segment, from, to) => {
    const seen = Math.min(segment.to, view.right) - Math.max(segment.from, view.left);
    const share = seen / (segment.to - segment.from);
    const each = segment.runs.reduce((sum, run) => sum + piecesIn(run), 0) / segment.runs.length;
    count += each * share * (to - from);
  });
  return count;
}

function brickBoxes(view: View): { boxes: Box[]; labels: Label[] } {
  const boxes: Box[] = [];
  const labels: Label[] = [];
  const { gauge, spec } = view.out;
  const { height } = spec.unit;
  eachSegment(view, (segment, from, to) => {
    for (let course = from; course < to; course++)
      for (const { piece, from: x, to: end } of bricksOf(segment, course, view.left, view.right)) {
        const y = course * gauge + spec.joints.bed;
        const width = end - x;
        boxes.push({ style: piece, x, y, width, height });
        if (piece !== 'cut') continue;
        const room = { width, height };
        const text = inMillimetres(width);
        labels.push({ text, x: x + width / 2, y: y + height / 2, size: SMALL, room });
      }
  });
  return { boxes, labels };
}

function plainAreas(view: View): Box[] {
  const boxes: Box[] = [];
  eachSegment(view, (segment, from, to) => {
    const x = Math.max(segment.from, view.left);
    const width = Math.min(segment.to, view.right) - x;
    const y = from * view.out.gauge;
    boxes.push({ style: 'brickwork', x, y, width, height: (to - from) * view.out.gauge });
  });
  return boxes;
}

/** Openings crossed corner to corner, named in the middle. */
function openingMarks(view: View): { boxes: Box[]; strokes: Stroke[]; labels: Label[] } {
  const { gauge, spec } = view.out;
  const boxes = spec.openings.map((o): Box => {
    const sill = o.sill * gauge;
    const height = (o.top ?? spec.courses) * gauge - sill;
    return { style: 'opening', x: o.from, y: sill, width: o.width, height };
  });
  const strokes = boxes.flatMap(({ x, y, width, height }): Stroke[] => [
    { style: 'opening', from: { x, y }, to: { x: x + width, y: y + height } },
    { style: 'opening', from: { x, y: y + height }, to: { x: x + width, y } },
  ]);
  const labels = boxes.map((box, i) => named(spec.openings[i]!.name, box));
  return { boxes, strokes, labels };
}

function named(text: string, { x, y, width, height }: Box): Label {
  return { text, x: x + width / 2, y: y + height / 2, size: NAME, room: { width, height } };
}

function pierMarks({ out }: View): { boxes: Box[]; strokes: Stroke[]; labels: Label[] } {
  const { gauge, spec } = out;
  const boxes = spec.piers.map((p): Box => {
    return { style: 'pier', x: p.from, y: 0, width: p.width, height: p.courses * gauge };
  });
  const strokes = spec.piers.flatMap((p) =>
    Array.from({ length: Math.max(0, p.courses - 1) }, (_, i): Stroke => {
      const y = (i + 1) * gauge;
      return { style: 'course', from: { x: p.from, y }, to: { x: p.from + p.width, y } };
    }),
  );
  return { boxes, strokes, labels: boxes.map((box, i) => named(spec.piers[i]!.name, box)) };
}

function groundAndDpc(view: View, dpc: number | undefined): Stroke[] {
  const { out, left, right } = view;
  const over = Math.max(100, (right - left) / 40);
  const level = (style: 'ground' | 'dpc', y: number, by: number): Stroke => {
    return { style, from: { x: left - by, y }, to: { x: right + by, y } };
  };
  const ground = view.from === 0 ? [level('ground', 0, over)] : [];
  return dpc === undefined ? ground : [...ground, level('dpc', dpc * out.gauge, over / 2)];
}

/** Words for whoever cannot see the drawing. */
function describe(view: View, shown: boolean): string {
  const { spec } = view.out;
  const names = [...spec.openings, ...spec.piers].map((thing) => thing.name);
  const bricks = shown ? 'every brick shown' : 'bricks not shown one by one';
  const with_ = names.length > 0 ? `, with ${names.join(', ')}` : '';
  const size = `${inMillimetres(spec.length)} mm long, ${spec.courses} courses high`;
  return `Elevation of a wall ${size}, in ${spec.bond.name} bond${with_}; ${bricks}.`;
}

/**
 * The face of a wall: every brick in the part asked for, openings, piers, what stands on top, gauge
 * rod and dimensions. Single bricks exist only here, and only as many as `mostBricks`.
 */
export function elevation(out: SettingOut, options: ElevationOptions): Drawing {
  const view = viewOf(out, options);
  const shown = brickCount(view) <= (options.mostBricks ?? MOST_BRICKS);
  const bricks = shown ? brickBoxes(view) : { boxes: plainAreas(view), labels: [] };
  const parts = [openingMarks(view), pierMarks(view)];
  const toppings = options.toppings ?? [];
  const boxes = [
    ...parts.flatMap((part) => part.boxes),
    ...bricks.boxes,
    ...toppings.flatMap(toppingBoxes),
  ];
  const piers = out.spec.piers.map((pier) => pier.courses * out.gauge);
  const top = Math.max(view.to * out.gauge, ...piers, ...toppings.map(toppingTop));
  return {
    title: options.title,
    description: describe(view, shown),
    extent: { left: view.left, right: view.right, bottom: view.from * out.gauge, top },
    boxes,
    strokes: [...parts.flatMap((p) => p.strokes), ...groundAndDpc(view, options.dpc)],
    labels: [
      ...bricks.labels,
      ...parts.flatMap((part) => part.labels),
      ...toppings.flatMap(toppingLabels),
    ],
    chains: [...lengthChains(out, view.left, view.right), heightChain(out, top)],
    rod: { gauge: out.gauge, courses: Math.round(top / out.gauge - 0.5), every: 4 },
    keys: [...keysOf(boxes, options.dpc !== undefined), ...toppingKeys(toppings)],
    notes: shown ? [] : ['Too many bricks to draw one by one.'],
  };
}
