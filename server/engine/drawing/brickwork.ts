import { bricksOf, piecesIn } from './bricks';
import { lengthOn, type Units } from './lengths';
import type { Box, Label } from './model';
import { clip, eachSegment, type View } from './sheet/view';
import { cutLabel } from './top/coping';

/** Bricks there would be to draw, near enough: part of a segment counts as its share of it, and a course as one at least. */
export function brickCount(view: View): number {
  let count = 0;
  eachSegment(view, (segment, from, to) => {
    const seen = Math.min(segment.to, view.right) - Math.max(segment.from, view.left);
    const share = seen / (segment.to - segment.from);
    const each = segment.runs.reduce((sum, run) => sum + piecesIn(run), 0) / segment.runs.length;
    count += Math.max(1, each * share) * (to - from);
  });
  return count;
}

/** Every brick in view, and the length of each cut written on it. */
export function brickBoxes(view: View, units: Units): { boxes: Box[]; labels: Label[] } {
  const boxes: Box[] = [];
  const labels: Label[] = [];
  const { gauge, spec } = view.out;
  const { height } = spec.unit;
  const [low, high] = view.whole ? [undefined, undefined] : [view.left, view.right];
  eachSegment(view, (segment, from, to) => {
    // Courses of one run are alike but for their height.
    const rows: ReturnType<typeof bricksOf>[] = [];
    for (let course = from; course < to; course++) {
      const y = course * gauge + spec.joints.bed;
      const turn = course % segment.runs.length;
      rows[turn] ??= bricksOf(segment, course, low, high);
      for (const { piece, from: x, to: end } of rows[turn]) {
        const box = clip(view, { style: piece, x, y, width: end - x, height });
        if (!box) continue;
        boxes.push(box);
        if (piece === 'cut') labels.push(written(end - x, box, units));
      }
    }
  });
  return { boxes, labels };
}

/** The length of a cut, all of it, on as much of it as is in view. */
export function written(cut: number, box: Box, units: Units): Label {
  return { ...cutLabel(box, units), text: lengthOn(units, cut), cut };
}

/** Brickwork as plain areas, where there are too many bricks. */
export function plainAreas(view: View): Box[] {
  const boxes: Box[] = [];
  const { gauge } = view.out;
  eachSegment(view, ({ from: x, to: end }, from, to) => {
    const y = from * gauge;
    const height = (to - from) * gauge;
    const box = clip(view, { style: 'brickwork', x, y, width: end - x, height });
    if (box) boxes.push(box);
  });
  return boxes;
}
