/** Two courses of a quoin on plan: this wall lying along the sheet, the other standing across it. */
import { phrase } from '../../../../shared/phrase';
import type { FaceProjection } from '../../brickwork/faces';
import type { PlacedPiece, SettingOut } from '../../setting-out';
import type { Drawing } from '../model';
import type { Group } from '../sheet/set';
import { corbelDeep } from './corbel-plan';
import { apart, edgesOf, type PlanWork, skins, upperOf } from './course-plan';
import { type PlanView, planOf, type TurnedPiece } from './plan';
import type { PlanPlace } from './plan-places';
import { plinthDeep } from './plinth-plan';

/** A wall that makes a corner with this one. */
export interface Quoin {
  title: string;
  /** The end of this wall, and of the other, that the corner is made with. */
  side: 'left' | 'right';
  otherSide: 'left' | 'right';
  other: SettingOut;
  /** A skin behind the other: see `PlanWork`. */
  behind?: PlanWork['behind'];
  plinth?: FaceProjection;
  corbel?: FaceProjection;
  /** The front of this wall is on the inner side of the corner. */
  inside: boolean;
  /** The course of this wall, and that of the other, that stands on the ground there: 0 when left out. */
  ground?: number;
  otherGround?: number;
}

/** Bricks drawn of each wall from the corner on. */
const INTO = 3;

interface Ends {
  /** Of this wall, mm along it. */
  left: number;
  right: number;
  /** Of the other, the same. */
  low: number;
  high: number;
}

function endsOf(out: SettingOut, { side, otherSide, other }: Quoin): Ends {
  const brick = out.spec.unit.length + out.spec.joints.perpend;
  const reach = (length: number, end: 'left' | 'right') =>
    end === 'left' ? [0, INTO * brick] : [length - INTO * brick, length];
  const [left, right] = reach(out.spec.length, side) as [number, number];
  const [low, high] = reach(other.spec.length, otherSide) as [number, number];
  return { left, right, low, high };
}

/**
 * The other wall's pieces turned to where they lie, in this wall's own measures. Fronts are both outside or both
 * inside where a right end meets a left one outside, or the other way round inside; else one is turned about.
 */
export function turnedTo(out: SettingOut, quoin: Quoin, piece: PlacedPiece): TurnedPiece {
  const { side, otherSide, other, inside } = quoin;
  const { x, y, along, across } = piece;
  const off = otherSide === 'left' ? x : other.spec.length - x - along;
  const alike = side !== otherSide;
  const outerFront = alike ? !inside : inside;
  const inward = outerFront ? y : other.thickness - y - across;
  return {
    ...piece,
    x: side === 'right' ? out.spec.length - inward - across : inward,
    y: inside ? out.thickness - off - along : off,
    turned: true,
  };
}

/** How far something of a wall may go on past the end of the other, mm: a skin behind it, a plinth, a corbel. */
function roundCorner({ behind, plinth, corbel }: Pick<PlanWork, 'behind' | 'plinth' | 'corbel'>) {
  const skin = behind ? behind.y + behind.out.thickness : 0;
  return Math.max(skin, plinthDeep(plinth), corbelDeep(corbel));
}

interface Pieces {
  readonly own: readonly TurnedPiece[];
  readonly across: readonly TurnedPiece[];
}

/** The pieces of both walls. What stands behind or before one may go on past the end of the other, round the corner. */
function piecesOf(work: PlanWork, quoin: Quoin, course: number): Pieces {
  const { out, units } = work;
  const { left, right, low, high } = endsOf(out, quoin);
  const place = (side: 'left' | 'right', from: number, to: number, past: number): PlanPlace => ({
    title: '',
    courses: { from: 0, to: 0 },
    goesOn: { left: true, right: true },
    left: side === 'left' ? from - past : from,
    right: side === 'right' ? to + past : to,
  });
  const { side, otherSide, other, behind, plinth, corbel } = quoin;
  const theirs: PlanWork = { out: other, piers: [], behind, plinth, corbel, units };
  const own = skins(work, course, place(side, left, right, roundCorner(theirs)));
  const lift = (quoin.otherGround ?? 0) - (quoin.ground ?? 0);
  const across = skins(theirs, course + lift, place(otherSide, low, high, roundCorner(work)));
  return { own, across: across.map((p) => ({ ...turnedTo(out, quoin, p), block: p.block })) };
}

/** A window with everything in it on the sides where nothing goes on. */
function aroundAll(
  { left, right, front, back }: PlanView['window'],
  goesOn: PlanView['goesOn'],
  pieces: readonly TurnedPiece[],
): PlanView['window'] {
  const x = pieces.map((p) => p.x);
  const y = pieces.map((p) => p.y);
  const sides = pieces.map((p) => p.x + (p.turned ? p.across : p.along));
  const top = pieces.map((p) => p.y + (p.turned ? p.along : p.across));
  return {
    left: goesOn.left ? left : Math.min(left, ...x),
    right: goesOn.right ? right : Math.max(right, ...sides),
    front: goesOn.down ? front : Math.min(front, ...y),
    back: goesOn.up ? back : Math.max(back, ...top),
  };
}

function courseOf(work: PlanWork, quoin: Quoin, course: number): Drawing {
  const { out, units, behind } = work;
  const { left, right, low, high } = endsOf(out, quoin);
  const both = piecesOf(work, quoin, course);
  const pieces = [...both.own, ...both.across];
  const length = high - low;
  const [front, back] = quoin.inside ? [out.thickness - length, out.thickness] : [0, length];
  const { side } = quoin;
  const { thickness } = quoin.other;
  const goesOn = {
    left: side === 'right',
    right: side === 'left',
    up: !quoin.inside,
    down: quoin.inside,
  };
  const skin = behind ? [behind.y, behind.y + behind.out.thickness] : [];
  const faces = side === 'left' ? [0, thickness] : [out.spec.length - thickness, out.spec.length];
  const window = aroundAll({ left, right, front, back }, goesOn, pieces);
  const end = side === 'left' ? window.left : window.right;
  const own = both.own.map((p) => p.y);
  return planOf({
    title: phrase`Course ${course + 1}`,
    description: phrase`${quoin.title}, course ${course + 1} on plan.`,
    units,
    unit: out.spec.unit,
    window,
    goesOn,
    pieces,
    part: {
      course: course + 1,
      meets: { own: 'along', side, from: faces[0]!, to: faces[1]! },
    },
    along: apart([...edgesOf(both.own, window.left, window.right), end, ...faces]),
    through: apart([
      0,
      out.thickness,
      ...(own.length ? [Math.min(...own)] : []),
      ...skin,
      ...(quoin.inside ? [front] : [back]),
    ]),
    faces: { front: 0, back: out.thickness },
    across: { from: faces[0]!, to: faces[1]! },
  });
}

/** Each course a group of its own, so that two stand side by side. */
export function quoinGroups(work: PlanWork, quoin: Quoin, course: number): Group[] {
  const { ground = 0, otherGround = 0, other } = quoin;
  // Counted from the ground at the corner.
  const most = Math.min(work.out.spec.courses - ground, other.spec.courses - otherGround);
  const lower = Math.max(0, Math.min(course - ground, most - 2));
  const behind = work.behind ?? quoin.behind;
  const upper = upperOf({ ...work, behind }, lower + ground, most + ground);
  return [lower + ground, upper]
    .filter((at) => at < most + ground)
    .map((at) => ({ title: quoin.title, drawings: [courseOf(work, quoin, at)] }));
}
