/** What stands out before a face, stretch by stretch: round an outer corner past the end of its wall, in an inner one short of it. */
import type { FaceArea, FaceProjection } from '../../brickwork/faces';
import type { SettingOut } from '../../setting-out';
import { brickBoxes } from '../brickwork';
import type { Units } from '../lengths';
import type { Box, Label } from '../model';
import { clip, type View } from '../sheet/view';

/** Mm of the wall, and what lies there where it has bricks of its own. */
export interface Stretch extends FaceArea {
  readonly laid?: SettingOut;
  /** Ends where rows of two walls meet. */
  readonly corner: { readonly left: boolean; readonly right: boolean };
}

type Seen = FaceProjection & { readonly seen?: 'front' | 'back' };

/** Ends nearer than this are the same end, mm. */
const SAME = 0.5;

export const atStart = (x: number) => Math.abs(x) < SAME;

export const atEnd = (x: number, { out }: View) => Math.abs(x - out.spec.length) < SAME;

/** Of several rows the outermost, which hides the others. */
export function stretchesOf({ areas, laid, turned, seen = 'front' }: Seen, view: View): Stretch[] {
  const rows = turned?.filter(({ face }) => face === seen) ?? [];
  const none = { left: false, right: false };
  if (!rows.length) return areas.map((area) => ({ ...area, laid, corner: none }));
  const outermost = Math.max(...rows.map(({ row }) => row));
  const outer = rows.filter(({ row }) => row === outermost);
  return outer.flatMap(({ zones, past, laid, areas: own = areas }) =>
    own.flatMap((area) =>
      zones.flatMap(({ from: low, to: high, courses }): Stretch[] => {
        const middle = (area.from + area.to) / 2;
        const from = Math.max(area.courses.from, courses.from);
        const to = Math.min(area.courses.to, courses.to ?? area.courses.to);
        if (middle < low || middle > high || !(to > from)) return [];
        const corner = { left: atStart(area.from), right: atEnd(area.to, view) };
        const left = area.from - (corner.left ? past.left : 0);
        const right = area.to + (corner.right ? past.right : 0);
        return [{ from: left, to: right, courses: { from, to }, laid, corner }];
      }),
    ),
  );
}

/** Its bricks that are in view; at a corner, in every second course, the end of a brick of the other row. */
export function bricksIn(stretch: Stretch, view: View, units: Units) {
  const { laid, from, to, courses } = stretch;
  if (!laid) return { boxes: [], labels: [] };
  const left = view.whole ? from : Math.max(from, view.left);
  const right = view.whole ? to : Math.min(to, view.right);
  const seen = { from: Math.max(courses.from, view.from), to: Math.min(courses.to, view.to) };
  if (!(right > left && seen.to > seen.from)) return { boxes: [], labels: [] };
  const own = brickBoxes({ out: laid, left, right, ...seen, whole: false }, units);
  const ends = headersAt(stretch, laid, own.boxes, { left: left === from, right: right === to });
  return { ...own, boxes: [...own.boxes, ...ends.flatMap((box) => clip(view, box) ?? [])] };
}

function headersAt(
  { corner, from, to }: Stretch,
  { spec }: SettingOut,
  boxes: readonly Box[],
  inView: Stretch['corner'],
): Box[] {
  const joint = spec.joints.perpend;
  return byCourse(boxes).flatMap(({ y, height, left, right }): Box[] => {
    const first = left - joint;
    const last = right + joint;
    const header = (x: number, width: number): Box[] =>
      width > joint ? [{ style: 'header', x, y, width, height }] : [];
    return [
      ...(corner.left && inView.left ? header(from, first - from) : []),
      ...(corner.right && inView.right ? header(last, to - last) : []),
    ];
  });
}

/** Where the bricks of each course begin and end. */
function byCourse(boxes: readonly Box[]) {
  const courses = new Map<number, { y: number; height: number; left: number; right: number }>();
  for (const { x, y, width, height } of boxes) {
    const { left, right } = courses.get(y) ?? { left: x, right: x };
    const ends = { left: Math.min(left, x), right: Math.max(right, x + width) };
    courses.set(y, { y, height, ...ends });
  }
  return [...courses.values()];
}

/** What of a brick of the face shows beside what stands before it. */
export function besides(box: Box, over: readonly Stretch[], gauge: number): Box[] {
  const y = box.y + box.height / 2;
  return over
    .filter(({ courses }) => y > courses.from * gauge && y < courses.to * gauge)
    .reduce((left, { from, to }) => left.flatMap((part) => outside(part, from, to)), [box]);
}

function outside(box: Box, from: number, to: number): Box[] {
  const end = box.x + box.width;
  if (end <= from || box.x >= to) return [box];
  return [
    ...(from - box.x > SAME ? [{ ...box, width: from - box.x }] : []),
    ...(end - to > SAME ? [{ ...box, x: to, width: end - to }] : []),
  ];
}

export function isIn({ x, y }: Label, over: readonly Stretch[], gauge: number): boolean {
  return over.some(
    ({ from, to, courses }) =>
      x > from && x < to && y > courses.from * gauge && y < courses.to * gauge,
  );
}
