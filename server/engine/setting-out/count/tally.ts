import type {
  Band,
  FacePiece,
  LaidRun,
  Patch,
  PieceCount,
  PierPlan,
  Segment,
  SettingOut,
  UnitSize,
  WallRow,
} from '../types';
import { cutLength, patchedIn } from './patch';
import { pierParts } from './pier-parts';
import { through } from './through';

/** Pieces counted. Cuts are kept by length, shortest first. */
export interface Tally {
  wholes: number;
  halves: number;
  threeQuarters: number;
  closers: number;
  cuts: readonly { length: number; count: number }[];
  /** Of the bricks and pieces themselves, mm³. */
  brickVolume: number;
  /** Of the work with its joints, mm³; mortar laid = grossVolume - brickVolume. */
  grossVolume: number;
  /** Of the mortar, what lies in bed joints and what in upright joints through the work, mm³; nothing where it is not told apart. */
  bedVolume?: number;
  perpendVolume?: number;
}

/** Pieces that show in one face. */
export type FaceTally = Record<FacePiece, number>;

/** Courses `from` (inclusive) to `to` (exclusive); null is to the top. */
export interface CourseRange {
  from: number;
  to: number | null;
}

export const ALL_COURSES: CourseRange = { from: 0, to: null };

/** Cuts nearer in length than this are one length, mm. */
const SAME_CUT = 1e-6;

interface Counter extends Tally {
  bedVolume: number;
  perpendVolume: number;
  cuts: { length: number; count: number }[];
}

/** For work of which only some things are counted. */
export const NOTHING_COUNTED: Tally = {
  wholes: 0,
  halves: 0,
  threeQuarters: 0,
  closers: 0,
  cuts: [],
  brickVolume: 0,
  grossVolume: 0,
};

function counter(): Counter {
  return { ...NOTHING_COUNTED, cuts: [], bedVolume: 0, perpendVolume: 0 };
}

function addCut(into: Counter, length: number, count: number): void {
  const known = into.cuts.find((cut) => Math.abs(cut.length - length) < SAME_CUT);
  if (known) known.count += count;
  else {
    into.cuts.push({ length, count });
    into.cuts.sort((a, b) => a.length - b.length);
  }
}

function addPiece(into: Counter, piece: PieceCount, times: number, volume: number): void {
  const count = piece.count * times;
  into.brickVolume += volume * count;
  if (piece.piece === 'whole') into.wholes += count;
  else if (piece.piece === 'half') into.halves += count;
  else if (piece.piece === 'three-quarter') into.threeQuarters += count;
  else if (piece.piece === 'closer') into.closers += count;
  else addCut(into, piece.length ?? 0, count);
}

/**
 * Volume of one piece, mm³. A queen closer is half a brick's width, its full length running into
 * the wall; everything else is a brick or a length of one. `half` and the rest are cut to the joint.
 */
function volumeOf(piece: PieceCount, unit: UnitSize, joint: number): number {
  const { length, width, height } = unit;
  const section = width * height;
  if (piece.piece === 'whole') return length * section;
  if (piece.piece === 'half') return ((length - joint) / 2) * section;
  if (piece.piece === 'three-quarter') return (((length + joint) * 3) / 4 - joint) * section;
  if (piece.piece === 'closer') return ((width - joint) / 2) * length * height;
  return (piece.length ?? 0) * section;
}

function addRun(into: Counter, run: LaidRun, deep: 1 | 2, times: number, out: SettingOut): void {
  const { unit, joints } = out.spec;
  let open = run.length;
  for (const group of run.groups)
    for (const { piece, length, count } of group.pieces) {
      const all = through(piece, length, deep);
      const volume = volumeOf(all, unit, joints.perpend);
      addPiece(into, all, count * group.times * times, volume);
      open -= length * count * group.times;
    }
  const depth = deep === 2 ? unit.length : unit.width;
  into.perpendVolume += open * depth * unit.height * times;
}

/** How many of courses `from` to `to` are course `turn` of a cycle of `cycle`. */
export function coursesOfTurn(from: number, to: number, turn: number, cycle: number): number {
  const before = (end: number) => Math.max(0, Math.ceil((end - turn) / cycle));
  return Math.max(0, before(to) - before(from));
}

interface LaidCourses {
  courses: number;
  deep: 0 | 1 | 2;
}

/** A stretch and the courses it goes on through, band after band. */
interface Lift {
  readonly segment: Segment;
  readonly from: number;
  to: number;
}

/** Every stretch, band after band, upward: one that goes on from the band below as the lift that it is there. */
function eachLift(bands: readonly Band[], visit: (lift: Lift, band: Band) => void): void {
  let below: readonly Lift[] = [];
  for (const band of bands) {
    let i = 0;
    below = band.segments.map((segment) => {
      while (i < below.length && below[i]!.segment.from < segment.from) i++;
      const under = below[i];
      const goesOn = under?.segment === segment && under.to === band.from;
      const lift = goesOn ? under : { segment, from: band.from, to: band.to };
      lift.to = band.to;
      visit(lift, band);
      return lift;
    });
  }
}

/** Each laid run once, with all the courses that are laid so: stretches go on from band to band, and are alike. */
function eachRun(
  { bands, depths }: WallRow,
  range: CourseRange,
  visit: (run: LaidRun, courses: number, deep: 0 | 1 | 2) => void,
): void {
  const laid = new Map<LaidRun, LaidCourses>();
  const lifts = new Set<Lift>();
  const clip = ({ from, to }: { from: number; to: number }) =>
    [Math.max(from, range.from), Math.min(to, range.to ?? to)] as const;
  eachLift(bands, (lift, band) => {
    const { runs } = lift.segment;
    const [from, to] = clip(band);
    // Past one turn of the bond every run of it has come up; they are counted when the lift is done.
    if (from - Math.max(lift.from, range.from) >= runs.length) return;
    lifts.add(lift);
    for (let turn = 0; turn < runs.length; turn++)
      if (!laid.has(runs[turn]!) && coursesOfTurn(from, to, turn, runs.length) > 0)
        laid.set(runs[turn]!, { courses: 0, deep: depths[turn]! });
  });
  for (const lift of lifts) {
    const { runs } = lift.segment;
    const [from, to] = clip(lift);
    for (let turn = 0; turn < runs.length; turn++) {
      const known = laid.get(runs[turn]!);
      if (known) known.courses += coursesOfTurn(from, to, turn, runs.length);
    }
  }
  for (const [run, { courses, deep }] of laid) visit(run, courses, deep);
}

/** What is laid where the rows are opened for a wall that is bonded in. */
function addPatch(into: Counter, patch: Patch, range: CourseRange, out: SettingOut): void {
  const courses = patchedIn(patch, range)?.courses ?? 0;
  const { unit, joints } = out.spec;
  into.grossVolume += patch.area * out.gauge * courses;
  into.bedVolume += patch.area * (out.gauge - unit.height) * courses;
  for (const piece of courses > 0 ? patch.pieces : []) {
    const one = { piece: piece.piece, count: 1, length: cutLength(piece, unit) };
    addPiece(into, one, courses, volumeOf(one, unit, joints.perpend));
  }
}

/** The work that a course of the front row is, joints and all, and the bed under it. */
function addRoom(into: Counter, run: LaidRun, courses: number, out: SettingOut): void {
  const area = (run.length + (run.extra ?? 0)) * out.thickness * courses;
  into.grossVolume += area * out.gauge;
  into.bedVolume += area * (out.gauge - out.spec.unit.height);
}

/** Counts a wall, its piers left out (see {@link tallyPier}), in a range of its courses. */
export function tally(out: SettingOut, range: CourseRange = ALL_COURSES): Tally {
  const into = counter();
  for (const [i, row] of out.rows.entries())
    eachRun(row, range, (run, courses, deep) => {
      if (deep > 0) addRun(into, run, deep as 1 | 2, courses, out);
      if (i === 0) addRoom(into, run, courses, out);
    });
  for (const patch of out.patches ?? []) addPatch(into, patch, range, out);
  return into;
}

/** Counts the pieces that show in one face of a wall, its piers left out. */
export function tallyFace(
  out: SettingOut,
  range: CourseRange = ALL_COURSES,
  side: 'front' | 'back' = 'front',
): FaceTally {
  const face = { stretcher: 0, header: 0, half: 0, 'three-quarter': 0, closer: 0, cut: 0 };
  const row = side === 'front' ? out.rows[0] : out.rows.at(-1);
  if (!row) return face;
  eachRun(row, range, (run, courses) => {
    for (const { pieces, times } of run.groups)
      for (const { piece, count } of pieces) face[piece] += count * times * courses;
  });
  return face;
}

/** Counts a pier from its plans, free-standing or in a wall, in a range of its courses. */
export function tallyPier(
  pier: PierPlan,
  unit: UnitSize,
  joints: { bed: number; perpend: number },
  range: CourseRange = ALL_COURSES,
): Tally {
  if (pier.above)
    return sumTallies(pierParts(pier, range).map((p) => tallyPier(p.pier, unit, joints, p.range)));
  const into = counter();
  const from = Math.max(0, range.from);
  const to = Math.min(pier.courses, range.to ?? pier.courses);
  const cycle = pier.plans.length;
  const gauge = unit.height + joints.bed;
  into.grossVolume = pier.width * pier.depth * gauge * Math.max(0, to - from);
  for (const [turn, plan] of pier.plans.entries()) {
    const courses = coursesOfTurn(from, to, turn, cycle);
    into.grossVolume -= (pier.apart?.[turn] ?? 0) * courses;
    for (const piece of plan) addPiece(into, piece, courses, volumeOf(piece, unit, joints.perpend));
  }
  into.bedVolume = (into.grossVolume * joints.bed) / gauge;
  into.perpendVolume = into.grossVolume - into.bedVolume - into.brickVolume;
  return into;
}

/** Several tallies as one. */
export function sumTallies(tallies: Iterable<Tally>): Tally {
  const into = counter();
  for (const t of tallies) {
    into.wholes += t.wholes;
    into.halves += t.halves;
    into.threeQuarters += t.threeQuarters;
    into.closers += t.closers;
    into.brickVolume += t.brickVolume;
    into.grossVolume += t.grossVolume;
    into.bedVolume += t.bedVolume ?? 0;
    into.perpendVolume += t.perpendVolume ?? 0;
    for (const { length, count } of t.cuts) addCut(into, length, count);
  }
  return into;
}
