import type { FacePiece, LaidRun, PieceCount, PierPlan, SettingOut, UnitSize } from '../types';

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

/** What stands behind one piece of the face, itself included: two leaves of stretchers, one header through. */
function throughWall(piece: FacePiece, length: number, thickness: number): PieceCount {
  if (piece === 'header') return { piece: 'whole', count: 1 };
  if (piece === 'closer') return { piece: 'closer', count: 1 };
  if (piece === 'stretcher') return { piece: 'whole', count: thickness };
  return { piece, count: thickness, length };
}

function addRun(into: Counter, run: LaidRun, times: number, out: SettingOut): void {
  const { unit, thickness, joints } = out.spec;
  for (const group of run.groups)
    for (const { piece, length, count } of group.pieces) {
      const through = throughWall(piece, length, thickness);
      const volume = volumeOf(through, unit, joints.perpend);
      addPiece(into, through, count * group.times * times, volume);
    }
  into.grossVolume += run.length * out.gauge * out.thickness * times;
}

/** How many of courses `from` to `to` are course `turn` of a cycle of `cycle`. */
export function coursesOfTurn(from: number, to: number, turn: number, cycle: number): number {
  const before = (end: number) => Math.max(0, Math.ceil((end - turn) / cycle));
  return Math.max(0, before(to) - before(from));
}

function eachRun(
  out: SettingOut,
  range: CourseRange,
  visit: (run: LaidRun, courses: number) => void,
): void {
  for (const band of out.bands) {
    const from = Math.max(band.from, range.from);
    const to = Math.min(band.to, range.to ?? band.to);
    for (const { runs } of band.segments)
      for (const [turn, run] of runs.entries()) {
        const courses = coursesOfTurn(from, to, turn, runs.length);
        if (courses > 0) visit(run, courses);
      }
  }
}

/** Counts a wall, its piers left out (see {@link tallyPier}), in a range of its courses. */
export function tally(out: SettingOut, range: CourseRange = ALL_COURSES): Tally {
  const into = counter();
  eachRun(out, range, (run, courses) => addRun(into, run, courses, out));
  return into;
}

/** Counts the pieces that show in one face of a wall, its piers left out. */
export function tallyFace(out: SettingOut, range: CourseRange = ALL_COURSES): FaceTally {
  const face = { stretcher: 0, header: 0, half: 0, 'three-quarter': 0, closer: 0, cut: 0 };
  eachRun(out, range, (run, courses) => {
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
  const into = counter();
  const from = Math.max(0, range.from);
  const to = Math.min(pier.courses, range.to ?? pier.courses);
  const cycle = pier.plans.length;
  for (const [turn, plan] of pier.plans.entries()) {
    const courses = coursesOfTurn(from, to, turn, cycle);
    for (const piece of plan) addPiece(into, piece, courses, volumeOf(piece, unit, joints.perpend));
  }
  const gauge = unit.height + joints.bed;
  into.grossVolume = pier.width * pier.depth * gauge * Math.max(0, to - from);
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
