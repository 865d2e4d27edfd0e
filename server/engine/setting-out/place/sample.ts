/** A bond tried on sample walls: does it bond at all, and does it close between two free ends? */
import { setOut } from '../lay/set-out';
import { type LayoutFault, type ProofRules, proveFace, provePlan, proveTied } from '../prove';
import type {
  BondPattern,
  CoursePattern,
  EndKind,
  SettingOut,
  Thickness,
  WallSpec,
} from '../types';
import { builtBack, builtFace, rulesOf } from './built';
import { placeCourse } from './course';
import { planOutline } from './outline';

/**
 * A brick as bonds presume it: with its joint twice as long as wide with its own. Bonds are written in
 * parts of a brick, so that its size in mm is nothing to them.
 */
const UNIT = { length: 230, width: 110, height: 65 };
const JOINT = 10;
const LIMITS = { least: JOINT, best: JOINT, most: JOINT, leastCut: 50 };

/** Half bricks of the sample walls between free ends: one brick to twelve. */
const SHORTEST = 2;
const LONGEST = 24;
/** Half bricks of the wall that shows the pattern by itself, toothed at both ends. */
const PATTERN = 64;

/** What a bond comes to on its sample walls. */
export interface BondProof {
  /** Wrong with the pattern itself, whatever the length and ends. */
  readonly pattern: readonly LayoutFault[];
  /** Lengths, in half bricks, at which its ends do not close soundly, with the first fault of each. */
  readonly lengths: readonly { readonly halves: number; readonly fault: LayoutFault }[];
  /** How many lengths were tried. */
  readonly tried: number;
}

function sample(bond: BondPattern, thickness: Thickness, halves: number, end: EndKind): WallSpec {
  const module = UNIT.length + JOINT;
  return {
    unit: UNIT,
    joints: { bed: JOINT, perpend: JOINT },
    bond,
    thickness,
    length: (halves * module) / 2 - (end === 'stopped' ? JOINT : 0),
    courses: bond.courses.length + 1,
    left: end,
    right: end,
    openings: [],
    piers: [],
    limits: LIMITS,
  };
}

function faultsOf(spec: WallSpec): LayoutFault[] {
  const out = setOut(spec);
  if (out.bands.length === 0)
    return [{ kind: 'gap', course: 0, at: 0, measured: spec.length, wanted: 0 }];
  const rules = rulesOf(spec);
  const front = proveFace(builtFace(out), rules);
  // A wall of one row shows the same behind, and its plan is its face.
  if (out.rows.length === 1) return front;
  return [...front, ...proveFace(builtBack(out), rules), ...onPlan(out, rules.joint)];
}

/** Every course of the bond on plan: what stands behind the face fills the wall as well. */
function onPlan(out: SettingOut, joint: ProofRules['joint']): LayoutFault[] {
  return out.spec.bond.courses.flatMap((_, course) =>
    provePlan(course, placeCourse(out, course), planOutline(out, course), joint),
  );
}

/** The pattern by itself, and whether over its whole repeat something goes through from each half brick into the next. */
function patternFaults(bond: BondPattern, thickness: Thickness): LayoutFault[] {
  const spec = sample(bond, thickness, PATTERN, 'toothed');
  const faults = faultsOf(spec);
  const repeats = bond.courses.every((course) => longestOf(course) <= PATTERN / 2);
  return repeats && thickness > 1 ? [...faults, ...untied(setOut(spec))] : faults;
}

/** Units of a course before they come again, before the face and behind it: each a brick at the most. */
function longestOf({ units, core, back }: CoursePattern): number {
  return Math.max(units.length, core?.units.length ?? 0, back?.units.length ?? 0);
}

function untied(out: SettingOut): LayoutFault[] {
  const { unit, joints, thickness, bond } = out.spec;
  const module = unit.length + joints.perpend;
  const courses = bond.courses.map((_, course) => placeCourse(out, course));
  const lines = Array.from({ length: thickness - 1 }, (_, i) => {
    return ((i + 1) * module) / 2 - joints.perpend / 2;
  });
  return proveTied(courses, lines);
}

/**
 * Lays a bond as sample walls of one to twelve bricks, and one that goes on both ways, and proves each: front, back
 * and plan. `every` so many half bricks of length is one tried.
 */
export function proveBond(bond: BondPattern, thickness: Thickness, every = 1): BondProof {
  const pattern = patternFaults(bond, thickness);
  const lengths: { halves: number; fault: LayoutFault }[] = [];
  let tried = 0;
  for (let halves = SHORTEST; halves <= LONGEST; halves += every) {
    const [fault] = faultsOf(sample(bond, thickness, halves, 'stopped'));
    if (fault) lengths.push({ halves, fault });
    tried++;
  }
  return { pattern, lengths, tried };
}

/** Whether nothing at all is wrong with it; soon answered where something is. */
export function bondHolds(bond: BondPattern, thickness: Thickness, every = 1): boolean {
  if (patternFaults(bond, thickness).length > 0) return false;
  for (let halves = SHORTEST; halves <= LONGEST; halves += every)
    if (faultsOf(sample(bond, thickness, halves, 'stopped')).length > 0) return false;
  return true;
}
