import type { Band, LaidRun, Segment, SettingOut, WallRow } from '../types';
import { repeatingOver } from './bond-courses';
import { type Courses, cutbackOf, type Parity, type Side, within } from './corner';
import { lapped, type Opened, poorBeside } from './through';
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
  /** Ends of this wall at which it makes a corner: how it is laid there is not for this to change. */
  readonly corners?: readonly Side[];
  /** Joints between its own bricks that show where it runs through, mm along this wall. */
  readonly joints?: readonly number[];
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
  const end = from + run.from + run.length;
  const hasLeft = gap.from > from + run.from + AT_END;
  const left = hasLeft
    ? trimRight(run, to - from, cutbackOf(out, to - gap.from)).run
    : nothing(run);
  const hasRight = gap.to < end - AT_END;
  const right = hasRight ? trimLeft(run, cutbackOf(out, gap.to - from)).run : nothing(run);
  return { left, right };
}

/** Nearer to the end of a course than this is at its end, mm. */
const AT_END = 0.5;

const isAcross = ({ from, to }: Room, start: number, run: LaidRun) =>
  run.length > 0 && start < from + AT_END && start + run.length > to - AT_END;

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
    const sides = room && isAcross(room, start, run) ? aside(run, segment, out, room) : undefined;
    left.push(sides?.left ?? nothing(run));
    right.push(sides?.right ?? nothing(run));
    return sides ? nothing(run) : run;
  });
  if (whole.every((run, i) => run === segment.runs[i])) return [segment];
  return [whole, left, right].map((runs) => ({ ...segment, runs }));
}

/** A band of the wall as it is to be laid: where the other wall runs through it, the stretch that it parts. */
interface Opening extends Opened {
  /** By their place in the cycle, what tells the courses of that stretch: more than one does where it was parted before. */
  readonly told?: readonly Segment[];
}

/** The band cut where the other wall begins and ends, so that each part of it has that wall in all its courses or in none. */
function levels(band: Band, { courses }: LetIn): Band[] {
  const cuts = [band.from, courses.from, courses.to, band.to];
  const inside = cuts.filter((c) => c >= band.from && c <= band.to);
  const all = [...new Set(inside)].sort((a, b) => a - b);
  return all.slice(1).map((to, i) => ({ ...band, from: all[i]!, to }));
}

function openedIn(band: Band, gap: LetIn, out: SettingOut): Opening {
  if (!within(band.from, [gap.courses])) return { band };
  const [first, ...others] = band.segments.filter(
    (s) => gap.from > s.from - AT_END && gap.to < s.to + AT_END,
  );
  if (!first) return { band };
  const told = first.runs.map((run, turn) =>
    spans(first, run, gap) ? first : (others.find((s) => spans(s, s.runs[turn]!, gap)) ?? first),
  );
  const whole = { ...first, runs: told.map((s, turn) => s.runs[turn]!) };
  const [across, left, right] = openedAt(whole, out, (turn) =>
    turn % 2 === gap.parity ? gap : undefined,
  );
  if (!across || !left || !right) return { band };
  return { band, told, parted: { whole, parts: [across, left, right] } };
}

const spans = ({ from }: Segment, run: LaidRun, gap: LetIn) => isAcross(gap, from + run.from, run);

/** The bands of one row with room in them. */
function inRow({ bands }: WallRow, out: SettingOut, gap: LetIn): Band[] {
  const all = bands.flatMap((band) => levels(band, gap)).map((band) => openedIn(band, gap, out));
  const here = all.filter(({ band }) => within(band.from, [gap.courses]));
  const laid = new Map(lapped(here, out, gap).map((segments, i) => [here[i], segments]));
  return all.map((opening) => ({
    ...opening.band,
    segments: opening.told
      ? withRoom(opening.band, opening.told, laid.get(opening)!)
      : opening.band.segments,
  }));
}

function withRoom(
  { segments }: Band,
  told: readonly Segment[],
  [across, ...sides]: readonly Segment[],
): Segment[] {
  const last = segments.findLast((s) => told.includes(s));
  return segments.flatMap((segment) => {
    const runs = segment.runs.map((run, turn) =>
      told[turn] === segment ? across!.runs[turn]! : run,
    );
    const own = told.includes(segment) ? { ...segment, runs } : segment;
    return segment === last ? [own, ...sides] : [own];
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
    const before = wall;
    const rows = wall.rows.map((row) => ({ ...row, bands: inRow(row, before, gap) }));
    wall = { ...wall, rows, bands: rows[0]?.bands ?? [] };
    const poor = poorBeside(wall, before, gap);
    if (poor.length) wall = { ...wall, poorLaps: [...wall.poorLaps, ...poor] };
  }
  return wall;
}
