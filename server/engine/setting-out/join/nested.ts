import type { SettingOut } from '../types';
import {
  type Courses,
  coursesAt,
  cutbackOf,
  type Parity,
  type Side,
  stretchAt,
  trimAt,
} from './corner';
import type { GivingWay } from './lay-corner';

/** One of the two walls of a corner. */
export interface CornerWall {
  readonly out: SettingOut;
  readonly side: Side;
  /** The course of its bond that it is begun with. */
  readonly begun: number;
  /** The courses in which it gives way. */
  readonly gives: Parity;
  /** Its front is on the inner side of the corner. */
  readonly inside: boolean;
  /** Which of its courses stands on the ground at the corner, where both walls’ do: 0 when left out. */
  readonly ground?: number;
}

/** Courses after which two bonds come together again: past this many nobody follows them, and no corner is nested. */
const MOST_REPEAT = 256;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
const lcm = (a: number, b: number) => (a / gcd(a, b)) * b;

function repeatOf(a: CornerWall, b: CornerWall): number {
  const [own, other] = [a, b].map(({ out }) => out.spec.bond.courses.length) as [number, number];
  return lcm(2, lcm(own, other));
}

/** Of any course, those below the first with them. */
const turnOf = (course: number, cycle: number) => ((course % cycle) + cycle) % cycle;

/** Courses that the other wall’s numbers are above one’s own: the ground may step in either. */
const liftOf = (own: CornerWall, other: CornerWall) => (other.ground ?? 0) - (own.ground ?? 0);

/** Rows of one course from the outside of the corner in: which row, and how deep, mm. */
function rowsIn({ out, begun, inside }: CornerWall, course: number) {
  const { unit } = out.spec;
  const rows = out.rows.flatMap(({ depths }, row) => {
    const deep = depths[turnOf(course + begun, depths.length)]!;
    return deep === 0 ? [] : [{ row, deep: deep === 1 ? unit.width : unit.length }];
  });
  return inside ? rows.reverse() : rows;
}

/** Through the first `count` rows from the outside, joints between them, mm. */
function throughRows(wall: CornerWall, course: number, count: number): number {
  const rows = rowsIn(wall, course).slice(0, count);
  const deep = rows.reduce((sum, row) => sum + row.deep, 0);
  return deep + Math.max(0, rows.length - 1) * wall.out.spec.joints.perpend;
}

/**
 * How far each row of a wall is cut back in each course, mm: rows lie round a corner one within the other, each as far from
 * the outer faces in both walls. Of the wall that runs through, the outer row reaches the corner, the second the other's outer row, and so on.
 */
function reachesOf(own: CornerWall, other: CornerWall, repeat: number): number[][] {
  const reach = own.out.rows.map(() => Array.from({ length: repeat }, () => 0));
  const lift = liftOf(own, other);
  for (let course = 0; course < repeat; course++) {
    const more = course % 2 === own.gives ? 1 : 0;
    for (const [k, { row }] of rowsIn(own, course).entries())
      reach[row]![course] = k + more === 0 ? 0 : throughRows(other, course + lift, k + more);
  }
  return reach;
}

/** How a wall is laid where another meets its end. */
export function wayAt(own: CornerWall, other: CornerWall): GivingWay {
  const lift = liftOf(own, other);
  const courses: readonly Courses[] = coursesAt(other.out, other.side).map(({ from, to }) => {
    return { from: from - lift, to: to - lift };
  });
  const way = { parity: own.gives, by: other.out.thickness, courses };
  if (own.out.rows.length === 1 && other.out.rows.length === 1) return way;
  const repeat = repeatOf(own, other);
  return repeat > MOST_REPEAT ? way : { ...way, reach: reachesOf(own, other, repeat) };
}

/**
 * Whether a corner bonds: the row that shows gives way with no piece cut for it, what is left out being the other wall's own
 * brick seen on end; rows behind it end in whole bricks, bats or closers.
 */
export function bondsAt(a: CornerWall, b: CornerWall): boolean {
  return endsWell(a, b) && endsWell(b, a);
}

function endsWell(own: CornerWall, other: CornerWall): boolean {
  const repeat = repeatOf(own, other);
  if (repeat > MOST_REPEAT) return false;
  const reach = reachesOf(own, other, repeat);
  const seen = new Map<string, boolean>();
  return own.out.rows.every((row, i) =>
    row.bands.every((band) => {
      const segment = stretchAt(band, own.out, own.side);
      if (!segment) return true;
      const last = Math.min(band.to, band.from + repeat);
      for (let course = band.from; course < last; course++) {
        const by = reach[i]![course % repeat]!;
        const turn = (course + own.begun) % segment.runs.length;
        const key = `${i} ${band.from} ${turn} ${by}`;
        let well = by === 0 || seen.get(key);
        if (well === undefined) {
          const outer = rowsIn(own, course)[0]?.row === i;
          const run = segment.runs[turn]!;
          const { clean, cut } = trimAt(run, segment, own.side, cutbackOf(own.out, by));
          well = clean || (!outer && cut !== undefined && cut !== 'cut');
          seen.set(key, well);
        }
        if (!well) return false;
      }
      return true;
    }),
  );
}
