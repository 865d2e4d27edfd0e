/** Every brick of a course, one object each: what the engine never does, for tests to count and measure. */
import type { FacePiece, Segment, SettingOut } from '../../server/engine/setting-out';

export interface Brick {
  piece: FacePiece;
  /** Mm from the wall's left end. */
  from: number;
  to: number;
}

export function bricksOf(segment: Segment, course: number): Brick[] {
  const run = segment.runs[course % segment.runs.length]!;
  const bricks: Brick[] = [];
  let at = segment.from + run.from + run.endJoints.left * run.joint;
  for (const group of run.groups)
    for (let turn = 0; turn < group.times; turn++)
      for (const { piece, length, count } of group.pieces)
        for (let i = 0; i < count; i++) {
          bricks.push({ piece, from: at, to: at + length });
          at += length + run.joint;
        }
  return bricks;
}

export interface LaidCourse {
  course: number;
  segments: { segment: Segment; bricks: Brick[] }[];
}

export function everyCourse(out: SettingOut): LaidCourse[] {
  return out.bands.flatMap(({ from, to, segments }) =>
    Array.from({ length: to - from }, (_, i) => ({
      course: from + i,
      segments: segments.map((segment) => ({ segment, bricks: bricksOf(segment, from + i) })),
    })),
  );
}

/** Middles of the joints between bricks, mm. */
export function perpends(bricks: readonly Brick[]): number[] {
  return bricks.slice(1).map((brick, i) => (bricks[i]!.to + brick.from) / 2);
}

/** Least distance between perpends of two courses; Infinity when either has none. */
export function lapOf(a: readonly Brick[], b: readonly Brick[]): number {
  const theirs = perpends(b);
  const each = perpends(a).map((x) => Math.min(...theirs.map((y) => Math.abs(x - y)), Infinity));
  return Math.min(Number.POSITIVE_INFINITY, ...each);
}
