import type { Band, LaidRun, Segment, SettingOut } from '../types';
import { repeatingOver } from './bond-courses';
import type { Courses, Parity } from './corner';
import { cutbackOf, within } from './corner';
import { trimLeft, trimRight } from './trim';

/** Where another wall runs into this one: room for it through the whole thickness, joints beside it. */
export interface LetIn {
  /** Of the other wall itself, mm from this wall's left end. */
  readonly from: number;
  readonly to: number;
  /** The courses in which it runs in. */
  readonly parity: Parity;
  /** Those that it has. */
  readonly courses: Courses;
}

const nothing = (run: LaidRun): LaidRun => ({
  ...run,
  length: 0,
  endJoints: { left: 0, right: 0 },
  groups: [],
});

/** What is taken out of a course, mm from the left end of the wall. */
interface Room {
  readonly from: number;
  readonly to: number;
}

/** One course of a stretch on either side of the other wall. */
function aside(run: LaidRun, { from, to }: Segment, out: SettingOut, gap: Room) {
  const left = trimRight(run, to - from, cutbackOf(out, to - gap.from)).run;
  const right = trimLeft(run, cutbackOf(out, gap.to - from)).run;
  return { left, right };
}

/** A stretch with room in those of its courses that `roomIn` tells, by their place in the cycle. */
export function openedAt(
  segment: Segment,
  out: SettingOut,
  roomIn: (turn: number) => Room | undefined,
): Segment[] {
  const left: LaidRun[] = [];
  const right: LaidRun[] = [];
  const whole = segment.runs.map((run, turn) => {
    const room = roomIn(turn);
    const start = segment.from + run.from;
    const across = room && start < room.from && start + run.length > room.to;
    const sides = across ? aside(run, segment, out, room) : undefined;
    left.push(sides?.left ?? nothing(run));
    right.push(sides?.right ?? nothing(run));
    return sides ? nothing(run) : run;
  });
  if (whole.every((run, i) => run === segment.runs[i])) return [segment];
  return [whole, left, right].map((runs) => ({ ...segment, runs }));
}

function opened(segment: Segment, out: SettingOut, gap: LetIn): Segment[] {
  if (gap.from < segment.from || gap.to > segment.to) return [segment];
  return openedAt(segment, out, (turn) => (turn % 2 === gap.parity ? gap : undefined));
}

function inBand(band: Band, out: SettingOut, gap: LetIn): Band[] {
  const { from, to } = gap.courses;
  const cuts = [band.from, from, to, band.to].filter((c) => c >= band.from && c <= band.to);
  const levels = [...new Set(cuts)].sort((a, b) => a - b);
  return levels.slice(1).map((top, i) => {
    const part = { ...band, from: levels[i]!, to: top };
    if (!within(part.from, [gap.courses])) return part;
    return { ...part, segments: part.segments.flatMap((s) => opened(s, out, gap)) };
  });
}

/**
 * A wall with room left in it for walls that run in. In the courses that are parted a stretch is told more than once, each part with
 * no brick where another has them.
 */
export function letIn(out: SettingOut, gaps: readonly LetIn[]): SettingOut {
  if (gaps.length === 0) return out;
  let wall = repeatingOver(out, 2);
  for (const gap of gaps) {
    const rows = wall.rows.map((row) => ({
      ...row,
      bands: row.bands.flatMap((band) => inBand(band, wall, gap)),
    }));
    wall = { ...wall, rows, bands: rows[0]?.bands ?? [] };
  }
  return wall;
}
