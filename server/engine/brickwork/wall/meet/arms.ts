/** A wall as another one shows it that it stands against: where, and what of it lies in the faces of the other. */
import {
  backInPlace,
  begunWith,
  type Courses,
  layCorners,
  type Parity,
  type PlacedPiece,
  placeCourse,
  type SettingOut,
  type Side,
} from '../../../setting-out';
import type { LaidAlone } from './alone';
import type { Standing } from './standing';
import type { Tee } from './tees';
import type { turnsOf } from './turns';

/** Ends of the bricks of a wall that runs in, in one course of the other: mm along it. */
export interface FaceEnd {
  readonly piece: PlacedPiece['piece'];
  readonly from: number;
  readonly to: number;
  readonly course: number;
}

export interface Arm {
  /** Its two sides, mm from the left end of the other wall, and the courses of that which it stands against. */
  readonly from: number;
  readonly to: number;
  readonly courses: Courses;
  readonly tee: Tee;
  /** What shows of it in a face of the other wall, in one of its courses; nothing where it is tied. */
  readonly ends?: (face: 'front' | 'back', course: number) => readonly FaceEnd[];
}

/** Mm that a brick may be short of a face and still lie in it. */
const OVER = 1;

/** The wall with the courses that run in, measured from its own end. */
export function runningIn(
  { out: alone }: LaidAlone,
  { out, on }: Standing,
  begun: Parity,
  ways: ReturnType<typeof turnsOf>,
): SettingOut {
  return backInPlace(layCorners(begunWith(out, begun), ways), alone.spec, on);
}

/** @param laid made when somebody asks what shows: only a drawing does */
export function endsOf(tee: Tee, laid: () => SettingOut): Arm['ends'] {
  let out: SettingOut | undefined;
  return (face, course) => {
    out ??= laid();
    return endsIn(tee, out, face, course);
  };
}

/** Mm from the face that it stands against into the other wall: where a piece begins and ends. */
function reachOf({ x, along }: PlacedPiece, side: Side, length: number) {
  return side === 'left'
    ? { from: 0 - x - along, to: 0 - x }
    : { from: x - length, to: x + along - length };
}

function endsIn(
  { side, distance, levels, with: other }: Tee,
  out: SettingOut,
  face: 'front' | 'back',
  course: number,
): FaceEnd[] {
  const { length, joints } = out.spec;
  const { courses, lift } = levels;
  if (course < courses.from || course >= courses.to) return [];
  const [low, high] = side === 'left' ? [undefined, OVER] : [length - OVER, undefined];
  const shows = (piece: PlacedPiece) => {
    const { from, to } = reachOf(piece, side, length);
    const through = to > other.out.thickness - OVER;
    return face === 'front' ? through : to > OVER && from < joints.perpend + OVER;
  };
  return placeCourse(out, course - lift, low, high)
    .filter(shows)
    .map(({ piece, y, across }) => {
      // Its front is on the right where its left end is here.
      const from = distance + (side === 'left' ? out.thickness - y - across : y);
      return { piece, from, to: from + across, course };
    });
}
