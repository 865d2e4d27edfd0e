/**
 * What setting-out takes in and gives out. Plain numbers, millimetres throughout; no notation,
 * no money, no findings.
 */

/** Work size of a brick, mm: `length` along a stretcher, `width` across it, `height` of a course. */
export interface UnitSize {
  length: number;
  width: number;
  height: number;
}

/** Joints laid when nothing forces another, mm. */
export interface Joints {
  bed: number;
  perpend: number;
}

/**
 * Joints that anyone would accept, mm, and the least bat anyone would cut.
 * Varies by firm and country, so it always comes from outside.
 */
export interface JointLimits {
  least: number;
  best: number;
  most: number;
  /** A cut shorter than this is not laid where there is any other way. */
  leastCut: number;
  /** What the saw takes, mm: no cut is longer than a brick less this. 0 when left out. */
  kerf?: number;
  /**
   * How much further from the best joint whole bricks may be before an odd half brick, which breaks
   * or reverses the bond, is taken instead, mm. 0 when left out: the nearer joint wins.
   */
  wholeWorth?: number;
}

export type FaceUnit = 'stretcher' | 'header';

/** One row of a course away from any end: `units` repeated for ever. */
export interface RowPattern {
  units: readonly FaceUnit[];
  /**
   * Where the first of `units` begins, in bricks from a free end (0 when left out). What lies
   * before it is closed by rule: a half by a header or half bat, three quarters by a header and a
   * queen closer. So English is `stretcher` at 0 under `header` at 0.25.
   */
  start?: number;
}

/**
 * One course: the row that shows in the front face and, in a wall thicker than a brick, the rows
 * behind it. Without them a wall of half a brick or one brick is laid by its face alone.
 */
export interface CoursePattern extends RowPattern {
  core?: RowPattern;
  back?: RowPattern;
}

/** A bond as data: its courses from the bottom, repeated upward. */
export interface BondPattern {
  name: string;
  courses: readonly CoursePattern[];
  /** Least lap of perpends in neighbouring courses, in bricks: 0.5 stretcher, 0.25 English, 0 stack. */
  lap: number;
}

/**
 * How a stretch of brickwork ends.
 * `stopped`: a free vertical end or a reveal.
 * `toothed`: bonded into other work, each course running on to the joint of its pattern nearest the line.
 * `butted`: a plain vertical joint against something, no brick crossing it.
 */
export type EndKind = 'stopped' | 'toothed' | 'butted';

/** A gap in the wall, mm from its left end, in courses `sill` (inclusive) to `top` (exclusive). */
export interface OpeningSpec {
  name: string;
  from: number;
  width: number;
  /** Course the opening starts at; 0 is the ground. */
  sill: number;
  /** First course above the head; null runs to the top of the wall. */
  top: number | null;
}

/** Where a wall is not built: mm along it, courses `bottom` (inclusive) to `top` (exclusive). */
export interface Step {
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
}

/** Pieces as they are counted, whatever way round they were laid. */
export type CountedPiece = 'whole' | 'half' | 'three-quarter' | 'closer' | 'cut';

export interface PieceCount {
  piece: CountedPiece;
  count: number;
  /** Length, mm: needed for a `cut`, ignored for the rest. */
  length?: number;
}

/** A pier by its plans: `plans[i % plans.length]` is what course `i` takes. */
export interface PierPlan {
  name: string;
  /** Over the face, along the wall, mm. */
  width: number;
  /** Front to back over all, any wall it stands in included, mm. */
  depth: number;
  courses: number;
  plans: readonly (readonly PieceCount[])[];
  /**
   * For each of `plans`, mm³ of a course that neither its pieces nor mortar fill: a core left hollow or filled with
   * something else, or what the wall runs into the pier. Negative where the pier runs into the wall.
   */
  apart?: readonly number[];
  /** From its course `from` up, counted from its foot, it is laid by other plans: where it stands above its wall. */
  above?: {
    readonly from: number;
    readonly plans: readonly (readonly PieceCount[])[];
    readonly apart?: readonly number[];
  };
}

/** A pier standing in a wall: its plans take in the whole of `width` by `depth`. */
export interface PierSpec extends PierPlan {
  /** Mm from the wall's left end to the pier's left face. */
  from: number;
  /** Course it starts at, where the ground under it is higher than elsewhere; 0 when left out. */
  base?: number;
  /**
   * How the wall meets it; `butted` when left out. Say `toothed` where the plans leave out the
   * bricks that the wall runs into the pier.
   */
  joins?: 'toothed' | 'butted';
}

/** Half bricks through a wall. */
export type Thickness = 1 | 2 | 3 | 4;

export interface WallSpec {
  unit: UnitSize;
  joints: Joints;
  bond: BondPattern;
  /** In half bricks. Over 2 the bond has to say what stands behind the face. */
  thickness: Thickness;
  /** Over all, mm. */
  length: number;
  courses: number;
  left: EndKind;
  right: EndKind;
  openings: readonly OpeningSpec[];
  piers: readonly PierSpec[];
  /** Plain upright gaps through its whole height that let it move, mm from its left end. */
  movement?: readonly { readonly from: number; readonly width: number }[];
  /** Parts that its steps leave out, above a lower top or in higher ground. */
  steps?: readonly Step[];
  limits: JointLimits;
  /** Stretches that somebody has decided to lay otherwise than by rule. */
  decided?: readonly Decided[];
  /**
   * For whoever asks about no more: `face` lays only the row that shows in the front; `apart` that, each stretch as if it
   * lay on no other.
   */
  only?: 'face' | 'apart';
}

/** A stretch, by its ends in mm, laid at joints within other limits, or with its cut at one end. */
export interface Decided {
  from: number;
  to: number;
  limits: JointLimits;
  cutAt?: 'left' | 'right' | 'middle';
}

/** A piece as it shows in the face. A one-brick wall has two `stretcher`s behind one another for each. */
export type FacePiece = 'stretcher' | 'header' | 'half' | 'three-quarter' | 'closer' | 'cut';

/** `count` like pieces side by side, each `length` mm over its face. */
export interface PieceRun {
  piece: FacePiece;
  length: number;
  count: number;
}

/** `pieces` in order, the whole sequence `times` over. */
export interface PieceGroup {
  pieces: readonly PieceRun[];
  times: number;
}

/** One course of one stretch, left to right. */
export interface LaidRun {
  /** Mm from the segment's left end to the course's own, negative where a toothed course runs on past it. */
  from: number;
  /** Mm, end joints included; differs from the segment's where a toothed end runs on or stops short. */
  length: number;
  /** Joint between pieces, mm, the same along the whole course. */
  joint: number;
  /** Joints at the ends themselves: 1 where the end is toothed or butted. */
  endJoints: { left: 0 | 1; right: 0 | 1 };
  groups: readonly PieceGroup[];
  /** Mm by which the course is more wall of the whole thickness than its `length` (or less), where rows behind it end elsewhere, round a corner. */
  extra?: number;
}

/** Where the bond had to be broken, and why. */
export interface BrokenBond {
  /** Mm from the wall's left end. */
  at: number;
  where: 'middle' | 'opening';
  /** The opening above or below, when `where` is `opening`. */
  opening?: string;
  /** `bond`: the length is in half bricks but the pattern does not close on it. `cut`: no number of half bricks fills it. */
  why: 'bond' | 'cut';
}

/** A clear stretch of brickwork between two fixed points, the same through a band of courses. */
export interface Segment {
  from: number;
  to: number;
  left: EndKind;
  right: EndKind;
  /** Half bricks it is set out to, before any cut is let in; an odd number is "on half bricks". */
  halves: number;
  /** True when joints within the limits fill it with no cut. */
  fits: boolean;
  broken: readonly BrokenBond[];
  /** Laid in the perpends of the wall as if it had no openings, and cut at its ends, since else they would stand over others. */
  plumb?: true;
  /** One for each course of the bond's cycle: course `i` of the wall is `runs[i % runs.length]`. */
  runs: readonly LaidRun[];
}

/** Courses `from` (inclusive) to `to` (exclusive) that are all interrupted alike. */
export interface Band {
  from: number;
  to: number;
  segments: readonly Segment[];
}

/** A row of a wall from end to end, half a brick or a brick deep. */
export interface WallRow {
  bands: readonly Band[];
  /** Half bricks deep in each course of the bond's cycle; 0 where that course has no such row. */
  depths: readonly (0 | 1 | 2)[];
}

/** A perpend that stands too near one of the course below. */
export interface PoorLap {
  /** The upper of the two courses. */
  course: number;
  /** Mm from the wall's left end. */
  at: number;
  /** Mm. */
  lap: number;
  /** It came about when something was let into the wall. */
  carved?: true;
  /** It stands in the back of a wall that has rows behind its face. */
  back?: true;
  /** It came about where another wall runs through this one: mm from the left end to the near side of that. */
  beside?: number;
}

export interface SettingOut {
  spec: WallSpec;
  /** Of the front face. */
  bands: readonly Band[];
  /** Front to back; the first is the front face's own, and its `bands` are those above. */
  rows: readonly WallRow[];
  /** Height of a course with its bed, mm. */
  gauge: number;
  /** Mm through the wall. */
  thickness: number;
  /**
   * Perpends of the face, and of the back of a wall of more rows, that lap too little (under what rules still call a lap: 41 mm of 56) where
   * stretches of unlike ends meet, at a sill or a head, or where something was let in, and no way of laying
   * them was found that mends it; at most 200 of each, the lowest first. Always empty for a bond that asks for no lap.
   */
  poorLaps: readonly PoorLap[];
  /** Pairs of openings or piers that stand in each other's place. */
  clashes: readonly { a: string; b: string }[];
  /** The wall before lintels, heads and arches were let into it; none where there are none. */
  uncarved?: SettingOut;
  /** Where its rows are opened for a wall that is bonded into it; none when left out. */
  patches?: readonly Patch[];
}

/**
 * Bricks of a wall that no row tells: they lie where its courses are opened for another wall that runs in, in every
 * so many courses from `from` (inclusive) to `to` (exclusive).
 */
export interface Patch {
  readonly from: number;
  readonly to: number;
  readonly every: number;
  readonly pieces: readonly PlacedPiece[];
  /** Mm² on plan by which such a course is more of the wall than its rows say; negative where it is less. */
  readonly area: number;
  /** The middle of it, mm along the wall. */
  readonly middle: number;
}

/**
 * One piece where it lies on plan, mm: `x` along the work from its left end, `y` through it from the
 * front face, both to its nearest corner; `along` and `across` are its sizes the same ways.
 * `piece` is what it is cut as.
 */
export interface PlacedPiece {
  readonly piece: CountedPiece;
  readonly x: number;
  readonly y: number;
  readonly along: number;
  readonly across: number;
}

/** A rectangle on plan or in a face, mm. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
