/** Two courses of a quoin on plan: this wall lying along the sheet, the other standing across it. */
import type { PlacedPiece, SettingOut } from '../setting-out';
import { placeCourse } from '../setting-out';
import { apart, edgesOf, OVER } from './course-plan';
import type { Units } from './lengths';
import type { Drawing } from './model';
import { planOf, type TurnedPiece } from './plan';
import type { Group } from './set';

/** A wall that makes a corner with this one. */
export interface Quoin {
  title: string;
  /** The end of this wall, and of the other, that the corner is made with. */
  side: 'left' | 'right';
  otherSide: 'left' | 'right';
  other: SettingOut;
  /** The front of this wall is on the inner side of the corner. */
  inside: boolean;
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

function courseOf(out: SettingOut, quoin: Quoin, course: number, units: Units): Drawing {
  const { left, right, low, high } = endsOf(out, quoin);
  const own = placeCourse(out, course, left + OVER, right - OVER);
  const other = placeCourse(quoin.other, course, low + OVER, high - OVER);
  const pieces: TurnedPiece[] = [...own, ...other.map((p) => turnedTo(out, quoin, p))];
  const length = high - low;
  const [front, back] = quoin.inside ? [out.thickness - length, out.thickness] : [0, length];
  const { side } = quoin;
  const { thickness } = quoin.other;
  const faces = side === 'left' ? [0, thickness] : [out.spec.length - thickness, out.spec.length];
  return planOf({
    title: `Course ${course + 1}`,
    description: `${quoin.title}, course ${course + 1} on plan.`,
    units,
    unit: out.spec.unit,
    window: { left, right, front, back },
    goesOn: {
      left: side === 'right',
      right: side === 'left',
      up: !quoin.inside,
      down: quoin.inside,
    },
    pieces,
    along: apart([...edgesOf(own, left, right), ...faces]),
    through: apart([0, out.thickness, ...(quoin.inside ? [front] : [back])]),
    faces: { front: 0, back: out.thickness },
    across: { from: faces[0]!, to: faces[1]! },
  });
}

/** Each course a group of its own, so that two stand side by side. */
export function quoinGroups(out: SettingOut, quoin: Quoin, course: number, units: Units): Group[] {
  const most = Math.min(out.spec.courses, quoin.other.spec.courses);
  const lower = Math.max(0, Math.min(course, most - 2));
  return [lower, lower + 1]
    .filter((at) => at < most)
    .map((at) => ({ title: quoin.title, drawings: [courseOf(out, quoin, at, units)] }));
}
