/** Two courses of a tee on plan: the wall that goes on lying along the sheet, the one that runs into it standing behind. */
import { phrase } from '../../../../shared/phrase';
import type { PlacedPiece } from '../../setting-out';
import type { Drawing } from '../model';
import type { Group } from '../sheet/set';
import { apart, edgesOf, type PlanWork, skins } from './course-plan';
import { planOf, type TurnedPiece } from './plan';

/** A wall that runs into the face of another. Both as they are drawn on plan by themselves. */
export interface Tee {
  title: string;
  through: PlanWork;
  into: PlanWork;
  /** The end of the wall that runs in. */
  side: 'left' | 'right';
  /** Mm from the left end of the other to the near side of it. */
  distance: number;
  /** The wall drawn is the one that runs in. */
  own: boolean;
  /** The course of the wall that runs in, and that of the other, that stands on the ground there. */
  ground?: number;
  otherGround?: number;
}

/** Bricks drawn of each wall from the other on. */
const INTO = 2;

/** Through a wall and what stands behind it, mm. */
function depthOf({ out, behind }: PlanWork): number {
  return behind ? behind.y + behind.out.thickness : out.thickness;
}

/** A piece of the wall that runs in, turned to where it lies in the measures of the other, against whose back it stands. */
function turnedInto(tee: Tee, piece: PlacedPiece): TurnedPiece {
  const { through, into, side, distance } = tee;
  const { x, y, along, across } = piece;
  const off = side === 'left' ? x : into.out.spec.length - x - along;
  // Its front is on the right where its left end is here.
  const inward = side === 'left' ? depthOf(into) - y - across : y;
  return { ...piece, x: distance + inward, y: depthOf(through) + off, turned: true };
}

function reachIn({ into, side }: Tee, brick: number) {
  const { length } = into.out.spec;
  return side === 'left' ? [0, INTO * brick] : [length - INTO * brick, length];
}

/** Courses by which the numbers of the wall that goes on are above those of the other. */
const liftOf = ({ ground = 0, otherGround = 0 }: Tee) => otherGround - ground;

/** @param course of the wall that goes on */
function courseOf(tee: Tee, course: number): Drawing {
  const { through, into, distance } = tee;
  const { out, units } = through;
  const brick = out.spec.unit.length + out.spec.joints.perpend;
  const [deep, wide] = [depthOf(through), depthOf(into)];
  const left = Math.max(0, distance - INTO * brick);
  const right = Math.min(out.spec.length, distance + wide + INTO * brick);
  const place = { title: '', courses: { from: 0, to: 0 }, goesOn: { left: true, right: true } };
  const along = skins(through, course, { ...place, left, right });
  const [low, high] = reachIn(tee, brick) as [number, number];
  // Courses that run in reach past the end.
  const [first, last] = tee.side === 'left' ? [low - deep, high] : [low, high + deep];
  const across = skins(into, course - liftOf(tee), { ...place, left: first, right: last });
  const pieces: TurnedPiece[] = [
    ...along,
    ...across.map((p) => ({ ...turnedInto(tee, p), block: p.block })),
  ];
  const back = deep + INTO * brick;
  const front = Math.min(0, ...along.map((p) => p.y));
  const sides = [distance, distance + wide];
  const own = tee.own ? 'across' : 'along';
  const number = (tee.own ? course - liftOf(tee) : course) + 1;
  return planOf({
    title: phrase`Course ${number}`,
    description: phrase`${tee.title}, course ${number} on plan.`,
    units,
    unit: out.spec.unit,
    window: { left, right, front, back },
    goesOn: { left: left > 0, right: right < out.spec.length, up: true },
    pieces,
    part: { course: number, meets: { own, side: tee.side, from: distance, to: distance + wide } },
    along: apart([...edgesOf(along, left, right), ...sides]),
    through: apart([front, 0, out.thickness, deep, back]),
    faces: { front: 0, back: deep },
    across: { from: sides[0]!, to: sides[1]! },
  });
}

/** Each course a group of its own, so that two stand side by side. `course` is one of the wall drawn. */
export function teeGroups(tee: Tee, course: number): Group[] {
  const lift = liftOf(tee);
  const { through, into, otherGround = 0 } = tee;
  const most = Math.min(through.out.spec.courses, into.out.spec.courses + lift);
  const asked = tee.own ? course + lift : course;
  const lower = Math.max(otherGround, Math.min(asked, most - 2));
  return [lower, lower + 1]
    .filter((at) => at < most)
    .map((at) => ({ title: tee.title, drawings: [courseOf(tee, at)] }));
}
