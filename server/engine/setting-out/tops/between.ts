import type { CourseRange } from '../count/tally';
import type { Band, LaidRun, Patch, PieceGroup, PieceRun, Segment, SettingOut } from '../types';

/** From `low` (inclusive) to `high` (exclusive), mm along the wall. */
interface Part {
  low: number;
  high: number;
  /** As far as a course may run past the ends of its stretch, mm. */
  reach: number;
}

/** Mm by which a middle may miss the line that it lies on. */
const SAME = 1e-6;

/**
 * The part of a wall between two places along it: the pieces whose middles lie there, so that parts side by side
 * have every piece of the whole, and none twice. Work goes with interruptions, never with bricks.
 */
export function between(out: SettingOut, from: number, to: number): SettingOut {
  // Toothed courses run on past the ends of their stretch, by less than this.
  const reach = 2 * out.spec.unit.length;
  const part = { low: from - SAME, high: to - SAME, reach };
  const known = new Map<Band, Band>();
  const clipped = (band: Band) => {
    const found = known.get(band) ?? inBand(band, part);
    known.set(band, found);
    return found;
  };
  const rows = out.rows.map((row) => ({ ...row, bands: row.bands.map(clipped) }));
  const bands = out.bands.map(clipped);
  if (!out.patches) return { ...out, bands, rows };
  return { ...out, bands, rows, patches: out.patches.map((patch) => patchIn(patch, part)) };
}

function patchIn(patch: Patch, { low, high }: Part): Patch {
  const lies = (x: number) => x >= low && x < high;
  const pieces = patch.pieces.filter(({ x, along }) => lies(x + along / 2));
  return { ...patch, pieces, area: lies(patch.middle) ? patch.area : 0 };
}

function inBand(band: Band, part: Part): Band {
  const segments = band.segments.flatMap((segment) => inSegment(segment, part) ?? []);
  return { ...band, segments };
}

function inSegment(segment: Segment, part: Part): Segment | undefined {
  if (segment.to + part.reach < part.low || segment.from - part.reach > part.high) return undefined;
  const runs = segment.runs.map((run) => inRun(run, segment.from + run.from, part));
  if (runs.every((run) => run.length <= 0)) return undefined;
  const from = Math.max(segment.from, part.low);
  return { ...segment, from, to: Math.min(segment.to, part.high), broken: [], runs };
}

/** `start` is where the run begins, mm along the wall. */
function inRun(run: LaidRun, start: number, part: Part): LaidRun {
  const groups: PieceGroup[] = [];
  let at = start + run.endJoints.left * run.joint;
  for (const group of run.groups) {
    groups.push(...inGroup(group, at, run.joint, part));
    at += group.times * widthOf(group, run.joint);
  }
  const low = Math.max(start, part.low + SAME);
  const high = Math.min(start + run.length, part.high + SAME);
  return { ...run, groups, length: Math.max(0, high - low) };
}

function widthOf({ pieces }: PieceGroup, joint: number): number {
  return pieces.reduce((sum, { length, count }) => sum + count * (length + joint), 0);
}

/** Whole turns of the group together, and the turns that the part begins and ends in piece by piece. */
function inGroup(group: PieceGroup, at: number, joint: number, part: Part): PieceGroup[] {
  const { low, high } = part;
  const width = widthOf(group, joint);
  const turns = (n: number) => Math.min(group.times, Math.max(0, n));
  const first = turns(Math.ceil((low - at) / width));
  const last = turns(Math.floor((high - at) / width));
  const alone = (turn: number): PieceGroup[] =>
    turn >= 0 && turn < group.times
      ? [{ pieces: inTurn(group, at + turn * width, joint, part), times: 1 }]
      : [];
  const whole = { pieces: group.pieces, times: last - first };
  const parts = [...alone(first - 1), whole, ...alone(Math.max(first, last))];
  return parts.filter(({ pieces, times }) => times > 0 && pieces.length > 0);
}

function inTurn(group: PieceGroup, start: number, joint: number, { low, high }: Part): PieceRun[] {
  let at = start;
  return group.pieces.flatMap((run) => {
    const pitch = run.length + joint;
    const middle = at + run.length / 2;
    at += run.count * pitch;
    const before = (x: number) => Math.min(run.count, Math.max(0, Math.ceil((x - middle) / pitch)));
    const count = before(high) - before(low);
    return count > 0 ? [{ ...run, count }] : [];
  });
}

/** The part of a wall that lies in a range of courses, so that what is counted there is all that is looked at. */
export function inCourses(out: SettingOut, { from, to }: CourseRange): SettingOut {
  const lies = (band: Band) => band.to > from && (to === null || band.from < to);
  const rows = out.rows.map((row) => ({ ...row, bands: row.bands.filter(lies) }));
  return { ...out, bands: out.bands.filter(lies), rows };
}
