/** Courses that stand out before a face: their own bricks where they have some, an outline, and how far out in the key. */
import { phrase } from '../../../../shared/phrase';
import type { FaceProjection } from '../../brickwork/faces';
import { lengthOn, type Units, withUnit } from '../lengths';
import type { Box, Key, Label } from '../model';
import { clip, type View } from '../sheet/view';
import { atEnd, atStart, besides, bricksIn, isIn, stretchesOf } from './stretches';

export interface Projection extends FaceProjection {
  name: string;
  /** The face that is drawn: `front` when left out. */
  seen?: 'front' | 'back';
}

/** More courses than this are outlined together. */
const MOST_APART = 20;

/** Each course by itself where each stands out further than the one below. */
function outlines(projection: Projection, view: View): Box[] {
  const { each, past } = projection;
  const { gauge } = view.out;
  return stretchesOf(projection, view).flatMap(({ from, to, courses }) => {
    const high = courses.to - courses.from;
    const apart = each && high <= MOST_APART ? high : 1;
    return Array.from({ length: apart }, (_, i): Box => {
      const y = (courses.from + (i * high) / apart) * gauge;
      const { left = 0, right = 0 } = past?.find((p) => p.course === courses.from + i) ?? {};
      const x = atStart(from) ? from - left : from;
      const end = atEnd(to, view) ? to + right : to;
      return { style: 'projecting', x, y, width: end - x, height: (high / apart) * gauge };
    });
  });
}

/** The bricks of a row of its own before the face. */
function ownBricks(projection: Projection, view: View, units: Units) {
  const parts = stretchesOf(projection, view).map((stretch) => bricksIn(stretch, view, units));
  return { boxes: parts.flatMap((p) => p.boxes), labels: parts.flatMap((p) => p.labels) };
}

/** What shows of the face and of what stands out before it. */
export function withProjections(
  face: { boxes: Box[]; labels: Label[] },
  projections: readonly Projection[],
  view: View,
  units: Units,
): { boxes: Box[]; labels: Label[] } {
  let { boxes, labels } = face;
  for (const projection of projections.filter(({ laid }) => laid)) {
    const over = stretchesOf(projection, view);
    const own = ownBricks(projection, view, units);
    boxes = [...boxes.flatMap((box) => besides(box, over, view.out.gauge)), ...own.boxes];
    labels = [...labels.filter((label) => !isIn(label, over, view.out.gauge)), ...own.labels];
  }
  return { boxes, labels };
}

/** Outlines, over everything in the face. */
export function projectionBoxes(projections: readonly Projection[], view: View): Box[] {
  return projections.flatMap((p) => outlines(p, view)).flatMap((box) => clip(view, box) ?? []);
}

/** From where to where they reach in view, the ends of the wall at least, mm. */
export function projectionSpan(projections: readonly Projection[], view: View) {
  const boxes = projectionBoxes(projections, view);
  return {
    left: Math.min(view.left, ...boxes.map(({ x }) => x)),
    right: Math.max(view.right, ...boxes.map(({ x, width }) => x + width)),
  };
}

/** Height of the letters on an outline, mm on paper. */
const SMALL = 2;

/**
 * Its name in each stretch of it, on the bricks of a course: a joint or an outline would cross it. It stands in the middle,
 * or as near to that as no size of a cut does.
 */
export function projectionLabels(
  projections: readonly Projection[],
  view: View,
  sizes: readonly Label[],
): Label[] {
  return projections.flatMap((projection) =>
    stretchesOf(projection, view).map((stretch): Label => {
      const { from, to, courses } = stretch;
      const { gauge } = view.out;
      const room = { width: to - from, height: (courses.to - courses.from) * gauge };
      const places = placesIn(stretch, view);
      const free = places.find((place) => !sizes.some((size) => touches(place, size, view)));
      return { text: projection.name, ...(free ?? places[0]!), size: SMALL, room };
    }),
  );
}

type Spot = Pick<Label, 'x' | 'y'>;

/** Tries to either side of the middle, in half bricks. */
const TRIES = 12;

/** The middle of the middle course first, then beside it, then so in the other courses. */
function placesIn({ from, to, courses }: ReturnType<typeof stretchesOf>[number], { out }: View) {
  const { gauge, spec } = out;
  const half = (spec.unit.length + spec.joints.perpend) / 2;
  const middle = Math.floor((courses.from + courses.to) / 2);
  const all = [middle, middle - 1, middle + 1].filter((c) => c >= courses.from && c < courses.to);
  const beside = Array.from(
    { length: TRIES },
    (_, i) => (i % 2 ? -1 : 1) * Math.ceil(i / 2) * half,
  );
  return (all.length ? all : [middle]).flatMap((course) =>
    beside
      .map((by): Spot => {
        return { x: (from + to) / 2 + by, y: course * gauge + (gauge + spec.joints.bed) / 2 };
      })
      .filter(({ x }, i) => i === 0 || (x > from + half && x < to - half)),
  );
}

/** A size in the same course, nearer than the words are long at the scales that cuts are sized at. */
function touches({ x, y }: Spot, size: Label, { out: { gauge, spec } }: View): boolean {
  const long = 1.5 * (spec.unit.length + spec.joints.perpend);
  return Math.abs(size.y - y) < gauge / 2 && Math.abs(size.x - x) < long;
}

export function projectionKeys(projections: readonly Projection[], units: Units): Key[] {
  return projections
    .filter(({ areas }) => areas.length > 0)
    .map(({ name, out, each }) => {
      const far = withUnit(lengthOn(units, out), units);
      const text = each ? phrase`${name}, each course ${far} out` : phrase`${name}, ${far} out`;
      return { style: 'projecting', text };
    });
}
