import type { Band, LaidRun, Segment, SettingOut, WallRow } from '../types';
import { stretchAt } from './corner';

/** How far a course goes on past the ends of its wall, mm; negative where it stops short of them. */
export interface CourseEnds {
  readonly course: number;
  readonly left: number;
  readonly right: number;
}

/** The same wall set out so much longer, for a course whose joints cannot take it up. */
export type SetLonger = (ends: CourseEnds) => SettingOut | undefined;

/** Whether joints within the limits make up what a course is longer or shorter. */
export function takesUp(out: SettingOut, ends: CourseEnds): boolean {
  return out.rows.every((row) => row.bands.every((band) => fitsIn(band, ends, out)));
}

/** Courses laid longer or shorter than their wall: as it is set out again, else from the same pieces with other joints. */
export function stretched(
  out: SettingOut,
  courses: readonly CourseEnds[],
  again: SetLonger,
): SettingOut {
  if (!courses.length) return out;
  const others = new Map<number, SettingOut>();
  for (const ends of courses) {
    const other = again(ends);
    if (other) others.set(ends.course, other);
  }
  const rows = out.rows.map((row, i): WallRow => {
    const instead = ({ course }: CourseEnds) =>
      others.get(course)?.rows[i]?.bands.find(({ from, to }) => course >= from && course < to);
    return { ...row, bands: row.bands.flatMap((band) => inCourses(band, courses, out, instead)) };
  });
  return { ...out, rows, bands: rows[0]?.bands ?? [] };
}

function fitsIn(band: Band, ends: CourseEnds, out: SettingOut): boolean {
  if (ends.course < band.from || ends.course >= band.to) return true;
  const { least, most } = out.spec.limits;
  return ofEnds(band, ends, out).every(({ segment, left, right }) => {
    const run = segment.runs[ends.course % segment.runs.length]!;
    const { joint } = longer(run, left + right);
    return joint >= least - SAME && joint <= most + SAME;
  });
}

const SAME = 1e-6;

interface Ended {
  readonly segment: Segment;
  readonly left: number;
  readonly right: number;
}

/** The stretches at the ends that are to be longer or shorter: one where the wall has no others. */
function ofEnds(band: Band, ends: CourseEnds, out: SettingOut): Ended[] {
  const first = stretchAt(band, out, 'left');
  const last = stretchAt(band, out, 'right');
  return band.segments.flatMap((segment) => {
    const left = segment === first ? ends.left : 0;
    const right = segment === last ? ends.right : 0;
    return left || right ? [{ segment, left, right }] : [];
  });
}

function jointsIn({ groups, endJoints }: LaidRun): number {
  const pieces = groups.reduce(
    (sum, group) => sum + group.times * group.pieces.reduce((n, p) => n + p.count, 0),
    0,
  );
  return pieces - 1 + endJoints.left + endJoints.right;
}

function longer(run: LaidRun, by: number): LaidRun {
  const joints = jointsIn(run);
  const joint = joints > 0 ? run.joint + by / joints : Number.POSITIVE_INFINITY;
  return { ...run, length: run.length + by, joint };
}

/** The band parted at the courses that are laid otherwise. */
function inCourses(
  band: Band,
  courses: readonly CourseEnds[],
  out: SettingOut,
  instead: (ends: CourseEnds) => Band | undefined,
): Band[] {
  const own = courses
    .filter(({ course }) => course >= band.from && course < band.to)
    .sort((a, b) => a.course - b.course);
  const parts: Band[] = [];
  let at = band.from;
  for (const ends of own) {
    const { course } = ends;
    if (course > at) parts.push({ ...band, from: at, to: course });
    parts.push({ from: course, to: course + 1, segments: laid(band, ends, out, instead(ends)) });
    at = course + 1;
  }
  if (at < band.to) parts.push({ ...band, from: at });
  return parts;
}

function laid(band: Band, ends: CourseEnds, out: SettingOut, instead?: Band): Segment[] {
  const all = ofEnds(band, ends, out);
  return band.segments.map((segment, i) => {
    const end = all.find((e) => e.segment === segment);
    if (!end) return segment;
    const other = instead?.segments[i];
    if (other) return other;
    const { left, right } = end;
    const runs = segment.runs.map((run) => longer(run, left + right));
    return { ...segment, from: segment.from - left, to: segment.to + right, runs };
  });
}
