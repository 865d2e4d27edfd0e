/** One course at one place of a wall on plan: the wall, what is behind it, its piers. */
import { phrase } from '../../../../shared/phrase';
import type { FaceProjection } from '../../brickwork/faces';
import { type Area, type PlacedPiece, placeCourse, type SettingOut } from '../../setting-out';
import type { Units } from '../lengths';
import type { Drawing } from '../model';
import { type PlacedPier, planIn } from '../pier-bricks';
import { inCorbel } from './corbel-plan';
import { planOf, type TurnedPiece } from './plan';
import type { PlanPlace } from './plan-places';
import { plinthRows } from './plinth-plan';

/** What is drawn of a wall on plan. */
export interface PlanWork {
  out: SettingOut;
  piers: readonly PlacedPier[];
  /** A skin behind it: `y` is its front, mm from the wall's own. */
  behind?: { out: SettingOut; y: number };
  plinth?: FaceProjection;
  corbel?: FaceProjection;
  units: Units;
}

/** Mm beyond a face or a point that still belong to it: toothing, a brick cut on plan. */
export const OVER = 1;

function moved<T extends { readonly x: number; readonly y: number }>(
  thing: T,
  x: number,
  y: number,
): T {
  return { ...thing, x: thing.x + x, y: thing.y + y };
}

/** Pieces of a skin of other sizes than the face's are blocks. */
export function isBlock(behind: SettingOut, face: SettingOut): boolean {
  return Math.abs(behind.spec.unit.height - face.spec.unit.height) > OVER;
}

/** The course of a skin behind at the height of a course of the face. */
function courseBehind(course: number, out: SettingOut, behind: SettingOut): number {
  return Math.floor((course * out.gauge) / behind.gauge + 1e-6);
}

/**
 * The course that is drawn over another one: the next, or where a skin behind has higher courses the first that
 * differs from it in both skins.
 */
export function upperOf({ out, behind }: PlanWork, lower: number, most: number): number {
  if (!behind) return lower + 1;
  const at = (course: number) => courseBehind(course, out, behind.out);
  const last = Math.min(most, lower + MOST_BETWEEN);
  for (let course = lower + 1; course < last; course += 2)
    if ((at(course) - at(lower)) % 2 === 1) return course;
  return lower + 1;
}

/** No unit is as high as so many courses of another. */
const MOST_BETWEEN = 40;

/** What stands behind a course of the face: its own course at that height, which may be much higher. */
function skinBehind({ out, behind }: PlanWork, course: number, low: number, high: number) {
  if (!behind) return [];
  const at = courseBehind(course, out, behind.out);
  const block = isBlock(behind.out, out);
  const pieces = placeCourse(behind.out, at, low, high);
  return pieces.map((piece): TurnedPiece => ({ ...moved(piece, 0, behind.y), block }));
}

/** With its plinth and its corbel. Only the bricks between two points of the wall are made, however long it is. */
export function skins(work: PlanWork, course: number, place: PlanPlace): TurnedPiece[] {
  const [low, high] = [place.left + OVER, place.right - OVER];
  const { out, plinth, corbel } = work;
  return [
    ...inCorbel(placeCourse(out, course, low, high), corbel, course),
    ...(plinth ? plinthRows(plinth, out, course, low, high) : []),
    ...skinBehind(work, course, low, high),
  ];
}

function piersAt({ piers }: PlanWork, course: number, place: PlanPlace) {
  const pieces: PlacedPiece[] = [];
  const cores: Area[] = [];
  for (const pier of piers) {
    const plan = planIn(pier, course);
    const { x, y } = pier;
    if (!plan) continue;
    pieces.push(...plan.pieces.map((p) => moved(p, x, y)));
    cores.push(...plan.core.map((c) => moved(c, x, y)));
  }
  const reaches = (x: number, wide: number) => x < place.right && x + wide > place.left;
  return {
    pieces: pieces.filter((p) => reaches(p.x, p.along)),
    cores: cores.filter((c) => reaches(c.x, c.width)),
  };
}

/** Left edges of the pieces in the front face, and the last one's right: where the perpends go. */
export function edgesOf(pieces: readonly PlacedPiece[], left: number, right: number): number[] {
  const front = Math.min(...pieces.map((p) => p.y));
  const face = pieces.filter((p) => p.y < front + OVER).sort((a, b) => a.x - b.x);
  const edges = face.map((p) => p.x).concat(face.slice(-1).map((p) => p.x + p.along));
  return edges.filter((x) => x > left - OVER && x < right + OVER);
}

/** Rising, those nearer than a millimetre once. */
export function apart(stops: readonly number[]): number[] {
  const rising = [...stops].sort((a, b) => a - b);
  return rising.filter((at, i) => i === 0 || at - rising[i - 1]! > OVER);
}

/** Of the wall itself, as it lies there: in a corbel it is further to the front. */
function facesOf(own: readonly PlacedPiece[], { thickness }: SettingOut): number[] {
  if (!own.length) return [0, thickness];
  return [Math.min(0, ...own.map((p) => p.y)), 0, Math.max(...own.map((p) => p.y + p.across))];
}

/** Nothing where the course has no brick there. */
export function courseAt(work: PlanWork, course: number, place: PlanPlace): Drawing[] {
  const { out, units, behind } = work;
  const piers = piersAt(work, course, place);
  const { plinth } = work;
  const [low, high] = [place.left + OVER, place.right - OVER];
  const rows = plinth ? plinthRows(plinth, out, course, low, high) : [];
  const own = inCorbel(placeCourse(out, course, low, high), work.corbel, course);
  const pieces = [...own, ...skinBehind(work, course, low, high), ...rows, ...piers.pieces];
  if (!pieces.length) return [];
  const faces = pieces.flatMap(({ y, across }) => [y, y + across]);
  const [front, back] = [Math.min(...faces), Math.max(...faces)];
  const ends = pieces.flatMap(({ x, along }) => [x, x + along]);
  const [first, last] = [Math.min(...ends), Math.max(...ends)];
  // At an opening beside the place nothing goes on, though the wall does.
  const near = 2 * out.spec.joints.perpend + OVER;
  const goesOn = {
    left: place.goesOn.left && place.left > OVER && first < place.left + near,
    right: place.goesOn.right && place.right < out.spec.length - OVER && last > place.right - near,
  };
  const left = goesOn.left ? place.left : first;
  const right = goesOn.right ? place.right : last;
  const skin = behind ? [behind.y, behind.y + behind.out.thickness] : [];
  const title = phrase`Course ${course + 1}`;
  return [
    planOf({
      title,
      description: phrase`${place.title}, course ${course + 1} on plan.`,
      units,
      unit: out.spec.unit,
      window: { left, right, front, back },
      goesOn,
      pieces,
      part: { course: course + 1 },
      faces: { front: 0, back: behind ? behind.y + behind.out.thickness : out.thickness },
      movement: (out.spec.movement ?? []).map(({ from, width }) => from + width / 2),
      cores: piers.cores,
      along: edgesOf(pieces, left, right),
      through: apart([front, ...facesOf(own, out), ...skin, back]),
    }),
  ];
}
