/** Bricks in a face where another wall runs in: the ends of the courses that do, and what is laid round them. */
import type { FaceEnd } from '../../brickwork/wall/meet/arms';
import { placePatches } from '../../setting-out';
import { written } from '../brickwork';
import type { Units } from '../lengths';
import type { Box, Label, Style } from '../model';
import { styleOf } from '../plan/plan';
import { clip, type View } from '../sheet/view';

export type Ends = (face: 'front' | 'back', course: number) => readonly FaceEnd[];

/** Mm that a brick may be short of a face and still lie in it. */
const OVER = 1;

interface Shown {
  readonly from: number;
  readonly to: number;
  readonly style: Style;
}

/** The end of a brick shows its width, whatever its length is; one that lies along shows its side. */
function endOf({ piece, from, to }: FaceEnd, { out }: View): Shown {
  const side = to - from > out.spec.unit.width + OVER;
  const plain = piece === 'whole' || piece === 'cut';
  return { from, to, style: plain ? (side ? 'stretcher' : 'header') : piece };
}

function laidRound({ out }: View, course: number, face: 'front' | 'back'): Shown[] {
  const inFace = ({ y, across }: { y: number; across: number }) =>
    face === 'front' ? y < OVER : y + across > out.thickness - OVER;
  return placePatches(out, course)
    .filter(inFace)
    .map((piece) => ({ from: piece.x, to: piece.x + piece.along, style: styleOf(piece) }));
}

/** What is added to the bricks of the rows, as far as it is in view. */
export function metIn(view: View, face: 'front' | 'back', ends: Ends | undefined, units: Units) {
  const boxes: Box[] = [];
  const labels: Label[] = [];
  const { gauge, spec, patches } = view.out;
  if (!ends && !patches) return { boxes, labels };
  for (let course = view.from; course < view.to; course++) {
    const theirs = ends?.(face, course) ?? [];
    const shown = [...theirs.map((e) => endOf(e, view)), ...laidRound(view, course, face)];
    for (const { from: x, to, style } of shown) {
      const y = course * gauge + spec.joints.bed;
      const box = clip(view, { style, x, y, width: to - x, height: spec.unit.height });
      if (!box) continue;
      boxes.push(box);
      if (style === 'cut') labels.push(written(to - x, box, units));
    }
  }
  return { boxes, labels };
}
