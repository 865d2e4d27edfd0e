import type {
  FacePiece,
  LaidRun,
  PieceCount,
  PierPlan,
  SettingOut,
  UnitSize,
  WallRow,
} from '../types';
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
  cuts: { length: number; count: number }[];
}

function counter(): Counter {
  return {
    wholes: 0,
    halves: 0,
    threeQuarters: 0,
    closers: 0,
    cuts: [],
    brickVolume: 0,
    grossVolume: 0,
  };
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
  for (const group of run.groups)
    for (const { piece, length, count } of group.pieces) {
      const all = through(piece, length, deep);
      const volume = volumeOf(all, unit, joints.perpend);
      addPiece(into, all, count * group.times * times, volume);
    }
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

/** Each laid run once, with all the courses that are laid so: stretches go on from band to band, and are alike. */
function eachRun(
  { bands, depths }: WallRow,
  range: CourseRange,
  visit: (run: LaidRun, courses: number, deep: 0 | 1 | 2) => void,
): void {
  const laid = new Map<LaidRun, LaidCourses>();
  for (const band of bands) {
    const from = Math.max(band.from, range.from);
    const to = Math.min(band.to, range.to ?? band.to);
    for (const { runs } of band.segments)
      for (const [turn, run] of runs.entries()) {
        const courses = coursesOfTurn(from, to, turn, runs.length);
        const known = laid.get(run);
        if (known) known.courses += courses;
        else if (courses > 0) laid.set(run, { courses, deep: depths[turn]! });
      }
  }
  for (const [run, { courses, deep }] of laid) visit(run, courses, deep);
}

/** Counts a wall, its piers left out (see {@link tallyPier}), in a range of its courses. */
export function tally(out: SettingOut, range: CourseRange = ALL_COURSES): Tally {
  const into = counter();
  for (const row of out.rows)
    eachRun(row, range, (run, courses, deep) => {
      if (deep > 0) addRun(into, run, deep as 1 | 2, courses, out);
    });
  const [front] = out.rows;
  if (front)
    eachRun(front, range, (run, courses) => {
      into.grossVolume += (run.length + (run.extra ?? 0)) * out.gauge * out.thickness * courses;
    });
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
    for (const { length, count } of t.cuts) addCut(into, length, count);
  }
  return into;
}
