/** Piers in a face, brick by brick, from their plans. */
import type { CoursePlan, PlacedPiece, UnitSize } from '../setting-out';
import type { Units } from './lengths';
import type { Box, Style } from './model';
import { cutLabel } from './top/coping';

/** A pier by its plans: its courses in turn from its lowest, over and over. */
export interface PlacedPier {
  name: string;
  /** Its left face, mm from the wall's left end, and its front, mm from the wall's own. */
  x: number;
  y: number;
  /** The course it starts at, and how many it is high. */
  base: number;
  high: number;
  courses: readonly CoursePlan[];
  /** From its course `from` up it is laid by others. */
  above?: { from: number; courses: readonly CoursePlan[] };
}

/** What a pier has in a course of the wall; nothing under and over it. */
export function planIn(
  { base, high, courses, above }: PlacedPier,
  course: number,
): CoursePlan | undefined {
  if (course < base || course >= base + high) return undefined;
  const at = course - base;
  const free = above && at >= above.from;
  const own = free ? above.courses : courses;
  return own.length ? own[(free ? at - above.from : at) % own.length] : undefined;
}

/** What shows of a brick behind others through the joint between them is not drawn, mm. */
const SLIVER = 30;

type Span = [from: number, to: number];

/** What of a span is not behind others. */
function open(span: Span, before: readonly Span[]): Span[] {
  let parts = [span];
  for (const [from, to] of before) {
    const cut = parts.flatMap(([a, b]): Span[] => [
      [a, Math.min(b, from)],
      [Math.max(a, to), b],
    ]);
    parts = cut.filter(([a, b]) => b - a > SLIVER);
  }
  return parts;
}

/** Whole bricks by the side they show; a three-quarter bat across shows its end. */
function shownAs({ piece, along, across }: PlacedPiece): Style {
  const end = along < across;
  if (piece === 'whole') return end ? 'header' : 'stretcher';
  return piece === 'three-quarter' && end ? 'header' : piece;
}

/** What of a course is seen from before or behind, mm along the wall: the nearest bricks, and others beside them. */
export function seenFrom({ pieces }: CoursePlan, face: 'front' | 'back') {
  const far = ({ y, across }: PlacedPiece) => (face === 'front' ? y : -(y + across));
  const before: Span[] = [];
  return [...pieces]
    .sort((a, b) => far(a) - far(b) || a.x - b.x)
    .flatMap((piece) => {
      const span: Span = [piece.x, piece.x + piece.along];
      const parts = open(span, before);
      before.push(span);
      return parts.map(([x, to]) => ({ style: shownAs(piece), x, width: to - x }));
    });
}

export interface PierFaceView {
  face: 'front' | 'back';
  unit: UnitSize;
  bed: number;
  units: Units;
  courses: { from: number; to: number };
}

/** The bricks of the courses asked for; sizes are written on cuts. */
export function pierBricks(pier: PlacedPier, { face, unit, bed, units, courses }: PierFaceView) {
  const all = [...pier.courses, ...(pier.above?.courses ?? [])];
  const shown = new Map(all.map((course) => [course, seenFrom(course, face)]));
  const boxes: Box[] = [];
  const end = Math.min(pier.base + pier.high, courses.to);
  for (let course = Math.max(pier.base, courses.from); course < end; course++) {
    const plan = planIn(pier, course);
    const y = course * (unit.height + bed) + bed;
    for (const { style, x, width } of (plan && shown.get(plan)) ?? [])
      boxes.push({ style, x: pier.x + x, y, width, height: unit.height });
  }
  const cuts = boxes.filter(({ style }) => style === 'cut');
  return { boxes, labels: cuts.map((box) => cutLabel(box, units)) };
}
