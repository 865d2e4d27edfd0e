/** Courses that stand out before a face: their own bricks where they have some, an outline, and how far out in the key. */
import type { FaceProjection } from '../../brickwork/needs';
import { brickBoxes } from '../brickwork';
import { lengthOn, type Units, withUnit } from '../lengths';
import type { Box, Key, Label } from '../model';
import { clip, type View } from '../sheet/view';

export interface Projection extends FaceProjection {
  name: string;
}

/** More courses than this are outlined together. */
const MOST_APART = 20;
/** Height of the letters on an outline, mm on paper. */
const SMALL = 2;

/** Each course by itself where each stands out further than the one below. */
function outlines({ areas, each }: Projection, view: View): Box[] {
  const { gauge } = view.out;
  return areas.flatMap(({ from: x, to, courses }) => {
    const high = courses.to - courses.from;
    const apart = each && high <= MOST_APART ? high : 1;
    return Array.from({ length: apart }, (_, i): Box => {
      const y = (courses.from + (i * high) / apart) * gauge;
      return { style: 'projecting', x, y, width: to - x, height: (high / apart) * gauge };
    });
  });
}

/** The bricks of a row of its own before the face. */
function ownBricks({ laid, areas }: Projection, view: View, units: Units) {
  if (!laid) return { boxes: [], labels: [] };
  const parts = areas.map(({ from, to, courses }) => {
    const left = Math.max(from, view.left);
    const right = Math.min(to, view.right);
    const seen = { from: Math.max(courses.from, view.from), to: Math.min(courses.to, view.to) };
    return brickBoxes({ out: laid, left, right, ...seen, whole: false }, units);
  });
  return { boxes: parts.flatMap((p) => p.boxes), labels: parts.flatMap((p) => p.labels) };
}

function hides({ laid, areas }: Projection, gauge: number) {
  return ({ x, y }: { x: number; y: number }) =>
    laid !== undefined &&
    areas.some(
      ({ from, to, courses }) =>
        x > from && x < to && y > courses.from * gauge && y < courses.to * gauge,
    );
}

/** What shows of the face and of what stands out before it. */
export function withProjections(
  face: { boxes: Box[]; labels: Label[] },
  projections: readonly Projection[],
  view: View,
  units: Units,
): { boxes: Box[]; labels: Label[] } {
  let { boxes, labels } = face;
  for (const projection of projections) {
    const hidden = hides(projection, view.out.gauge);
    const own = ownBricks(projection, view, units);
    const middle = ({ x, y, width, height }: Box) => ({ x: x + width / 2, y: y + height / 2 });
    boxes = [...boxes.filter((box) => !hidden(middle(box))), ...own.boxes];
    labels = [...labels.filter((label) => !hidden(label)), ...own.labels];
  }
  return { boxes, labels };
}

/** Outlines, over everything in the face. */
export function projectionBoxes(projections: readonly Projection[], view: View): Box[] {
  return projections.flatMap((p) => outlines(p, view)).flatMap((box) => clip(view, box) ?? []);
}

/** Its name in each stretch of it. */
export function projectionLabels(projections: readonly Projection[], { out }: View): Label[] {
  return projections.flatMap(({ name: text, areas }) =>
    areas.map(({ from, to, courses }): Label => {
      const y = ((courses.from + courses.to) / 2) * out.gauge;
      const room = { width: to - from, height: (courses.to - courses.from) * out.gauge };
      return { text, x: (from + to) / 2, y, size: SMALL, room };
    }),
  );
}

export function projectionKeys(projections: readonly Projection[], units: Units): Key[] {
  return projections
    .filter(({ areas }) => areas.length > 0)
    .map(({ name, out, each }) => {
      const far = withUnit(lengthOn(units, out), units);
      const text = each ? `${name}, each course ${far} out` : `${name}, ${far} out`;
      return { style: 'projecting', text };
    });
}
