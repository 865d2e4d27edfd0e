/** What it counts against a layout that upright joints of two courses are near one another. */
import { carvedLap } from '../../openings/laps';
import type { WallSpec } from '../../types';

/** Joints of courses of many pieces and of few are not quite as wide, mm. */
const SLACK = 3;
/** Of a straight joint, of a lap that rules call none, and of a lap under a quarter brick for each mm. */
const STRAIGHT = 3000;
const NONE = 1000;
const SHORT = 0.5;

export interface Rules {
  /** Nearer than this is a straight joint, mm. */
  readonly joint: number;
  /** What rules still call a lap, mm. */
  readonly still: number;
  /** A quarter brick, or what the bond asks for if that is less, mm. */
  readonly whole: number;
}

/** Laps that are held against a layout of this wall, mm: by its joint, its bond and its brick. */
export function rulesFor(spec: WallSpec): Rules {
  const brick = spec.unit.length + spec.joints.perpend;
  const whole = Math.min(spec.bond.lap, 1 / 4) * brick - SLACK;
  return { joint: spec.joints.perpend, still: Math.min(carvedLap(spec), whole), whole };
}

/** Of all pairs of joints, one of each course. */
export function against(
  a: readonly number[],
  b: readonly number[],
  { joint, still, whole }: Rules,
): number {
  let sum = 0;
  for (const x of a)
    for (const y of b) {
      const lap = Math.abs(x - y);
      if (lap >= whole) continue;
      sum += SHORT * (whole - lap);
      if (lap < still) sum += NONE;
      if (lap < joint) sum += STRAIGHT;
    }
  return sum;
}
