/** Work let into a wall after its bond: lintels, heads and arches, against which its bricks are cut. */
import type { Band, Segment, SettingOut, WallSpec } from '../types';
import { mirrored, SAME, upTo } from './cut-run';

/** What takes the place of bricks in one course, mm from the wall's left end. */
export interface Gap {
  course: number;
  from: number;
  to: number;
}

function leftOf(segment: Segment, at: number, spec: WallSpec): Segment {
  const runs = segment.runs.map((run) => upTo(run, at - segment.from, spec));
  const broken = segment.broken.filter((b) => b.at <= at);
  return { ...segment, to: at, right: 'butted', broken, runs };
}

function rightOf(segment: Segment, at: number, spec: WallSpec): Segment {
  const width = segment.to - segment.from;
  const keep = segment.to - at;
  const runs = segment.runs.map((run) => mirrored(upTo(mirrored(run, width), keep, spec), keep));
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
function beside(segment: Segment, all: readonly Gap[], spec: WallSpec): Segment[] {
  const gaps = within(all, segment);
  const middle = gaps.length >> 1;
  const gap = gaps[middle];
  if (!gap) return [segment];
  const { from, to } = gap;
  const left = from > segment.from + SAME ? leftOf(segment, from, spec) : undefined;
  const right = to < segment.to - SAME ? rightOf(segment, to, spec) : undefined;
  return [
    ...(left ? beside(left, gaps.slice(0, middle), spec) : []),
    ...(right ? beside(right, gaps.slice(middle + 1), spec) : []),
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
  const carved = (bands: readonly Band[]): Band[] =>
    bands.flatMap((band) =>
      stretches(band, (course) => byCourse.get(course)!, courses).map(
        ({ from, to, gaps: here }) => ({
          from,
          to,
          segments: band.segments.flatMap((segment) => beside(segment, here, out.spec)),
        }),
      ),
    );
  const rows = out.rows.map((row) => ({ ...row, bands: carved(row.bands) }));
  return { ...out, rows, bands: rows[0]?.bands ?? [] };
}
