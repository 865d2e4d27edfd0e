/** Work let into a wall after its bond: lintels, heads and arches, against which its bricks are cut. */
import { jointsOf } from '../lay/joints';
import type { Band, LaidRun, Segment, SettingOut, WallRow, WallSpec } from '../types';
import { type Beside, SAME } from './closing';
import { mirrored, upTo } from './cut-run';
import { aboutIn, carvedLap, newlyPoor, newlyPoorInBack } from './laps';
import { perpendsAt } from './near';

/** What takes the place of bricks in one course, mm from the wall's left end. */
export interface Gap {
  course: number;
  from: number;
  to: number;
  /** Its ends are upright, as a lintel's are and those of an arch are not. */
  upright?: boolean;
}

/** What knows the courses over and under those that are cut. */
interface Cutting {
  /** The courses that are cut alike. */
  readonly from: number;
  readonly to: number;
  readonly spec: WallSpec;
  readonly depths: WallRow['depths'];
  /** Perpends about a place in a course as it was laid, mm along the wall. */
  readonly perpends: (course: number, at: number) => readonly number[];
}

/** What is left of a stretch on one side of a gap. */
interface Left {
  readonly gap: Gap;
  /** Where it ends beside the gap, and where it then begins, mm along the wall. */
  readonly at: number;
  readonly from: number;
  readonly cut: (run: LaidRun, beside?: Beside) => LaidRun;
}

/** Times that courses beside an upright end are looked at: each may hang on what the others come to. */
const TIMES = 3;

/** Its courses cut one by one from the lowest, so that each knows what it lies on. */
function cutIn(segment: Segment, left: Left, cutting: Cutting): LaidRun[] {
  const { from, to, spec, depths, perpends } = cutting;
  const cycle = segment.runs.length;
  const done: LaidRun[] = [];
  const { low, high } = aboutIn(spec, left.at);
  const over = (course: number) => {
    if (course < from || course >= to) return perpends(course, left.at);
    const run = done[course % cycle];
    const known = run ? { ...segment, from: left.from, runs: [run] } : segment;
    return jointsOf(known, course, low, high);
  };
  const lap = carvedLap(spec);
  const upright = left.gap.upright === true;
  // Beside an upright end again, when each knows what lies on it as well.
  for (let time = 0; time < (upright ? TIMES : 1); time++)
    for (let course = from; course < Math.min(to, from + cycle); course++) {
      const turn = course % cycle;
      // The highest that is cut like it lies under another.
      const last = upright ? course + cycle * Math.floor((to - 1 - course) / cycle) : course;
      const near = [...new Set([course - 1, course + 1, last + 1])];
      const wary = lap > 0 ? near.flatMap(over) : [];
      const deep = depths[turn] ?? 0;
      done[turn] = left.cut(segment.runs[turn]!, { wary, lap, upright, deep });
    }
  return segment.runs.map((run, turn) => done[turn] ?? left.cut(run));
}

const seenFrom = (beside: Beside | undefined, off: (x: number) => number) =>
  beside && { ...beside, wary: beside.wary.map(off) };

function leftOf(segment: Segment, gap: Gap, cutting: Cutting): Segment {
  const { from: at } = gap;
  const { from } = segment;
  const cut: Left['cut'] = (run, beside) =>
    upTo(
      run,
      at - from,
      cutting.spec,
      seenFrom(beside, (x) => x - from),
    );
  const runs = cutIn(segment, { gap, at, from, cut }, cutting);
  const broken = segment.broken.filter((b) => b.at <= at);
  return { ...segment, to: at, right: 'butted', broken, runs };
}

function rightOf(segment: Segment, gap: Gap, cutting: Cutting): Segment {
  const { to: at } = gap;
  const { from, to } = segment;
  const [width, keep] = [to - from, to - at];
  const cut: Left['cut'] = (run, beside) => {
    const seen = seenFrom(beside, (x) => to - x);
    return mirrored(upTo(mirrored(run, width), keep, cutting.spec, seen), keep);
  };
  const runs = cutIn(segment, { gap, at, from: at, cut }, cutting);
  const broken = segment.broken.filter((b) => b.at >= at);
  return { ...segment, from: at, left: 'butted', broken, runs };
}

/** Those of gaps in order from the left, none in another, that a segment has part of. */
function within(gaps: readonly Gap[], { from, to }: Segment): readonly Gap[] {
  let low = 0;
  for (let high = gaps.length; low < high; ) {
    const middle = (low + high) >> 1;
    if (gaps[middle]!.to > from + SAME) high = middle;
    else low = middle + 1;
  }
  let end = low;
  while (end < gaps.length && gaps[end]!.from < to - SAME) end++;
  return gaps.slice(low, end);
}

/** What is left of a segment beside gaps; the middle one first, so that its courses are not gone through once for each. */
function beside(segment: Segment, all: readonly Gap[], cutting: Cutting): Segment[] {
  const gaps = within(all, segment);
  const middle = gaps.length >> 1;
  const gap = gaps[middle];
  if (!gap) return [segment];
  const { from, to } = gap;
  const left = from > segment.from + SAME ? leftOf(segment, gap, cutting) : undefined;
  const right = to < segment.to - SAME ? rightOf(segment, gap, cutting) : undefined;
  return [
    ...(left ? beside(left, gaps.slice(0, middle), cutting) : []),
    ...(right ? beside(right, gaps.slice(middle + 1), cutting) : []),
  ];
}

const alike = (a: readonly Gap[], b: readonly Gap[]) =>
  a.length === b.length && a.every(({ from, to }, i) => from === b[i]!.from && to === b[i]!.to);

/** Courses of a band that have the same gaps, together. */
function stretches(
  band: Band,
  gapsIn: (course: number) => readonly Gap[],
  courses: readonly number[],
) {
  const found: { from: number; to: number; gaps: readonly Gap[] }[] = [];
  const add = (from: number, to: number, gaps: readonly Gap[]) => {
    const last = found.at(-1);
    if (last && alike(last.gaps, gaps)) last.to = to;
    else if (to > from) found.push({ from, to, gaps });
  };
  let at = band.from;
  for (const course of courses) {
    if (course < band.from || course >= band.to) continue;
    add(at, course, []);
    add(course, course + 1, gapsIn(course));
    at = course + 1;
  }
  add(at, band.to, []);
  return found;
}

/**
 * The wall with `gaps` let into it. Its bond runs on as it was set out; a brick that a gap takes part
 * of is cut to a joint from it, and where that leaves less than the least cut, the brick beside is cut
 * with it. Work goes with gaps and courses of the bond, never with bricks.
 */
export function carve(out: SettingOut, gaps: readonly Gap[]): SettingOut {
  if (!gaps.length) return out;
  const byCourse = new Map<number, Gap[]>();
  for (const gap of [...gaps].sort((a, b) => a.from - b.from))
    byCourse.set(gap.course, [...(byCourse.get(gap.course) ?? []), gap]);
  const courses = [...byCourse.keys()].sort((a, b) => a - b);
  const carved = ({ bands, depths }: WallRow): Band[] => {
    const { spec } = out;
    const perpends = (course: number, at: number) => perpendsAt(bands, course, aboutIn(spec, at));
    return bands.flatMap((band) =>
      stretches(band, (course) => byCourse.get(course)!, courses).map(
        ({ from, to, gaps: here }) => {
          const cutting = { from, to, spec, depths, perpends };
          const segments = band.segments.flatMap((segment) => beside(segment, here, cutting));
          return { from, to, segments };
        },
      ),
    );
  };
  const rows = out.rows.map((row) => ({ ...row, bands: carved(row) }));
  const wall = { ...out, rows, bands: rows[0]?.bands ?? [] };
  const poorLaps = [
    ...out.poorLaps,
    ...newlyPoor(wall, out, byCourse),
    ...newlyPoorInBack(wall, out, byCourse),
  ];
  return { ...wall, poorLaps, uncarved: out.uncarved ?? out };
}
