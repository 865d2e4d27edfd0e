/** The courses of a stretch that a wall runs through or past, each with the ways to lay it there. */
import { bricksOf } from '../../place/face';
import type { Segment, SettingOut } from '../../types';
import { rulesFor } from './laps';
import type { CourseParts, Laid, Part, Parted, Way } from './types';
import { acrossWays, besideWays, nowOf } from './ways';
import { type Place, windowOf } from './window';

/** Of two ways as dear the one that leaves more as it is, and then the one whose joints are nearer: seen from either end it is the same. */
const MOVED = 0.01;
const FAR = 1e-6;
const SAME = 1e-3;

/** The wall that runs through, and how much is tried for its sake. */
export interface Asked extends Place {
  readonly corners?: readonly ('left' | 'right')[];
  readonly joints?: readonly number[];
  /** Every small step, and the ends of stretches: where there is no other way. */
  readonly fine: boolean;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly joint: number;
}

/** @param others made when somebody has to choose */
function part(
  { from, to, joint }: Stretch,
  was: Way,
  others: () => readonly Way[],
  middle: number,
  fine: boolean,
): Part {
  const stays = (x: number) => was.joints.some((y) => Math.abs(x - y) < SAME);
  const told = (way: Way): Way => {
    const moved = way.joints.filter((x) => !stays(x)).length * MOVED;
    const far = way.joints.reduce((sum, x) => sum + Math.abs(x - middle), 0) * FAR;
    return { ...way, cost: way.cost + moved + far };
  };
  const first = told(was);
  const ways = () => [first, ...others().map(told)];
  return { from, to, joint, fine, was: first, now: first, ways };
}

/** A course over or under those that the wall runs through. */
export function acrossParts(
  segment: Segment,
  turn: number,
  out: SettingOut,
  at: Asked,
): CourseParts | undefined {
  const window = windowOf(segment, turn, out, at, { next: 0, ends: at.fine, ...at });
  if (!window) return undefined;
  const { spec } = out;
  const [from, to] = endsOf(window.pieces);
  const { joint } = segment.runs[turn]!;
  const middle = (at.from + at.to) / 2;
  const room = { spec, joint, from, to };
  const half = spec.joints.perpend / 2;
  const joints = [at.from - half, at.to + half, ...(at.joints ?? [])];
  const ways = () => acrossWays(room, { ...at, joints, lap: rulesFor(spec).still });
  const parts = [part(room, nowOf(window.pieces, spec), ways, middle, at.fine)];
  return { parts, fixed: window.round };
}

const endsOf = (pieces: readonly Laid[]) => [pieces[0]!.from, pieces.at(-1)!.to] as const;

/** The two sides of a course that the wall runs through. */
export function throughParts(
  { whole, parts: [, before, behind] }: Parted,
  turn: number,
  out: SettingOut,
  at: Asked,
): CourseParts | undefined {
  const window = windowOf(whole, turn, out, at, { next: 1, ends: at.fine, ...at });
  if (!window) return undefined;
  const { spec } = out;
  const { joint } = whole.runs[turn]!;
  const [from, to] = endsOf(window.pieces);
  const middle = (at.from + at.to) / 2;
  const laid = {
    left: [...bricksOf(before, turn, from, at.from)],
    right: [...bricksOf(behind, turn, at.to, to)],
  };
  const left = { spec, joint, from, to: at.from };
  const right = { spec, joint, from: at.to, to };
  const parts = [
    part(left, nowOf(laid.left, spec), () => besideWays(left, 'right'), middle, at.fine),
    part(right, nowOf(laid.right, spec), () => besideWays(right, 'left'), middle, at.fine),
  ];
  return { parts, fixed: [...window.round, ...edges(laid.left, laid.right, at)] };
}

/** Joints on either side of the wall. */
function edges(left: readonly Laid[], right: readonly Laid[], { from, to }: Place): number[] {
  const [last] = left.slice(-1);
  const [first] = right;
  return [...(last ? [(last.to + from) / 2] : []), ...(first ? [(to + first.from) / 2] : [])];
}

/** Where upright joints of a course are, mm along the wall, in no order. */
export const jointsOf = ({ parts, fixed }: CourseParts): number[] => [
  ...fixed,
  ...parts.flatMap((p) => p.now.joints),
];
