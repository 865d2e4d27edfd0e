/** The courses of a pier standing free on one bonded into a wall, begun so that they lap what is under them. */
import type { CoursePlan } from './types';

/** Mm: joints nearer than this stand over one another. */
const SAME = 5;

/** Mm over the faces of the pier, from the same corner as the pieces are placed from. */
interface Faces {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly back: number;
}

/** Which of `courses` lies first on `below`: the one with the fewest of its upright joints over others, in all faces. */
export function firstOnTop(
  below: CoursePlan,
  courses: readonly CoursePlan[],
  faces: Faces,
): number {
  const under = jointsIn(below, faces);
  const over = courses.map((course) => shared(under, jointsIn(course, faces)));
  return Math.max(0, over.indexOf(Math.min(...over)));
}

/** Joints of each face, mm along it. */
function jointsIn({ pieces }: CoursePlan, { left, right, front, back }: Faces): number[][] {
  const near = (a: number, b: number) => Math.abs(a - b) < SAME;
  const along = (face: number, side: 'near' | 'far') =>
    pieces
      .filter((p) => near(side === 'near' ? p.y : p.y + p.across, face))
      .map((p) => p.x)
      .filter((x) => x > left + SAME && x < right - SAME);
  const through = (face: number, side: 'near' | 'far') =>
    pieces
      .filter((p) => near(side === 'near' ? p.x : p.x + p.along, face))
      .map((p) => p.y)
      .filter((y) => y > front + SAME && y < back - SAME);
  return [along(front, 'near'), along(back, 'far'), through(left, 'near'), through(right, 'far')];
}

function shared(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number {
  const over = (x: number, face: number) => b[face]!.some((y) => Math.abs(x - y) < SAME);
  return a.reduce((sum, joints, face) => sum + joints.filter((x) => over(x, face)).length, 0);
}
