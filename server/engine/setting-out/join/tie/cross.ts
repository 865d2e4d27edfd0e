/** The wall that runs in: whether its own courses lap where every second one goes on into the other. */
import { bricksOf } from '../../place/face';
import type { SettingOut } from '../../types';
import { cutbackOf, type Parity, stretchAt, trimAt } from '../corner';
import type { TieQuestion } from './types';

/** No lap of a wall that runs in has to be more than this, in bricks: common practice. */
const ENOUGH = 1 / 4;
/** So far from the other wall its laps hang on where it begins, in bricks. */
const REACH = 3;
/** Joints of courses of many pieces and of few are not quite as wide, mm. */
const SLACK = 3;

/** A brick with its joint, mm along the wall. */
export const brickOf = ({ spec }: SettingOut) => spec.unit.length + spec.joints.perpend;

/** Lap that is wanted in a wall near a tee, mm. */
export function lapOf(out: SettingOut): number {
  return Math.min(out.spec.bond.lap, ENOUGH) * brickOf(out) - SLACK;
}

/** What a course that stops at the other wall begins with: the more cutting, the more it costs. */
const FIRST: Readonly<Record<string, number>> = { half: 1, 'three-quarter': 2, closer: 1 };

interface Ends {
  /** Joints by row, mm from the face of the other wall; its own is 0. */
  readonly joints: readonly (readonly number[])[];
  readonly cost: number;
}

/** One course, as it stops at the other wall or runs in; nothing where it would have to be cut otherwise than by a bat or closer. */
function endsIn(q: TieQuestion, course: number, runsIn: boolean): Ends | undefined {
  const { cross, side, entry } = q;
  let cost = 0;
  const joints: number[][] = [];
  for (const row of cross.rows) {
    const cycle = row.depths.length;
    const band = row.bands.find((b) => course >= b.from && course < b.to);
    const segment = band && stretchAt(band, cross, side);
    if (!segment) return undefined;
    if (row.depths[course % cycle] === 0) continue;
    let run = segment.runs[course % segment.runs.length]!;
    if (!runsIn) {
      const trimmed = trimAt(run, segment, side, cutbackOf(cross, entry.by));
      if (!trimmed.clean && (!trimmed.cut || trimmed.cut === 'cut')) return undefined;
      cost += trimmed.cut ? (FIRST[trimmed.cut] ?? 0) : 0;
      ({ run } = trimmed);
    }
    const [low, high] = nearIn(q);
    joints.push(jointsOf(q, [...bricksOf({ ...segment, runs: [run] }, 0, low, high)], runsIn));
  }
  return { joints, cost };
}

/** As much of it as is looked at, mm from its left end. */
function nearIn({ cross, side, entry }: TieQuestion): [number, number] {
  const reach = (REACH + 1) * brickOf(cross) + entry.by;
  return side === 'left' ? [0, reach] : [cross.spec.length - reach, cross.spec.length];
}

/** Middles of joints from the other wall on. */
function jointsOf(
  { cross, side, entry }: TieQuestion,
  pieces: readonly { from: number; to: number }[],
  runsIn: boolean,
): number[] {
  const { joints, length } = cross.spec;
  const half = joints.perpend / 2;
  const off = (x: number) => (side === 'left' ? x : length - x) - entry.by;
  const inner = side === 'left' ? pieces.map((p) => p.from - half) : pieces.map((p) => p.to + half);
  const near = inner.map(off).filter((x) => x < REACH * brickOf(cross));
  const first = runsIn ? -entry.by - half : half;
  return [...new Set([...near.filter((x) => x > first + 1), ...(runsIn ? [] : [half])])].sort(
    (a, b) => a - b,
  );
}

/** Front and back are judged; rows in the heart of a wall are bonded by those. */
function laps(a: Ends, b: Ends, wanted: number): boolean {
  const faces = ({ joints }: Ends) => [joints[0] ?? [], joints.at(-1) ?? []];
  const others = faces(b);
  return faces(a).every((own, i) =>
    own.every((x) => others[i]!.every((y) => Math.abs(x - y) >= wanted)),
  );
}

/** Lower is better; nothing where it does not bond. `parity` is of its own courses that run in. */
export function crossCost(q: TieQuestion, parity: Parity): number | undefined {
  const low = Math.max(0, q.courses.from - q.lift);
  const high = q.courses.to - q.lift;
  const cycle = q.cross.spec.bond.courses.length;
  const last = Math.min(high, low + 2 * cycle + 1);
  const wanted = lapOf(q.cross);
  let cost = 0;
  let below: Ends | undefined;
  for (let course = low; course < last; course++) {
    const ends = endsIn(q, course, course % 2 === parity);
    if (!ends || (below && !laps(below, ends, wanted))) return undefined;
    cost += ends.cost;
    below = ends;
  }
  return (cost * 2) / Math.max(1, last - low);
}
