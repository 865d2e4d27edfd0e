import type { Band, LaidRun, Segment, SettingOut } from '../types';
import { type Cutback, type Trimmed, trimLeft, trimRight } from './trim';

export type Side = 'left' | 'right';

/** Every second course: those with an even number, the lowest being 0, or the others. */
export type Parity = 0 | 1;

/** Courses `from` (inclusive) to `to` (exclusive). */
export interface Courses {
  readonly from: number;
  readonly to: number;
}

/** Whether a course is in any of the ranges, each from its first and before its last. */
export const within = (course: number, list: readonly Courses[]) =>
  list.some(({ from, to }) => course >= from && course < to);

/** Ends nearer than this are the same end, mm. */
const SAME_END = 0.5;

/** The stretch of a band that reaches the end of the wall, if brickwork does there. */
export function stretchAt({ segments }: Band, { spec }: SettingOut, side: Side) {
  const segment = side === 'left' ? segments[0] : segments.at(-1);
  if (!segment) return undefined;
  const off = side === 'left' ? segment.from : spec.length - segment.to;
  return Math.abs(off) < SAME_END ? segment : undefined;
}

/** The courses in which a wall has brickwork at its end. */
export function coursesAt(out: SettingOut, side: Side): Courses[] {
  return out.bands
    .filter((band) => stretchAt(band, out, side))
    .map(({ from, to }) => ({ from, to }));
}

/** How the courses of a wall are cut back by work that reaches `by` mm in from its end. */
export function cutbackOf({ spec }: Pick<SettingOut, 'spec'>, by: number): Cutback {
  const { unit, joints, limits } = spec;
  const module = unit.length + joints.perpend;
  const known = [
    { piece: 'half', length: module / 2 - joints.perpend },
    { piece: 'three-quarter', length: (module * 3) / 4 - joints.perpend },
    { piece: 'closer', length: (unit.width - joints.perpend) / 2 },
  ] as const;
  return { by, limits, longest: unit.length, known };
}

/** A run cut back at one end of its stretch for what comes against it there. */
export function trimAt(run: LaidRun, segment: Segment, side: Side, cutback: Cutback): Trimmed {
  if (side === 'left') return trimLeft(run, cutback);
  return trimRight(run, segment.to - segment.from, cutback);
}

/**
 * Whether a wall can give way to work `by` mm thick across its end, in all its courses of each parity,
 * with no piece cut for it: what is left out is then the other wall's own brick, seen on end.
 * `begun` is the course of the bond that it is begun with.
 */
export function givesWay(
  out: SettingOut,
  side: Side,
  by: number,
  begun = 0,
): readonly [boolean, boolean] {
  const cutback = cutbackOf(out, by);
  const clean: [boolean, boolean] = [true, true];
  for (const { bands } of out.rows)
    for (const band of bands) {
      const segment = stretchAt(band, out, side);
      if (!segment) continue;
      const { runs } = segment;
      const fits = runs.map((run) => trimAt(run, segment, side, cutback).clean);
      const last = Math.min(band.to, band.from + 2 * runs.length);
      for (let course = band.from; course < last; course++)
        if (!fits[(course + begun) % runs.length]) clean[(course % 2) as Parity] = false;
    }
  return clean;
}
