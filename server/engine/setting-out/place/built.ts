/** A wall that was set out, as the plain rectangles and lines that `prove/` judges. */
import { gridOf } from '../lay/grid';
import type { BrokenPlace, BuiltCourse, ProofRules } from '../prove';
import type { Band, BrokenBond, Segment, SettingOut, WallRow, WallSpec } from '../types';
import { bricksOf, piecesIn } from './face';

/** More pieces than this are not made for a proof. */
const MOST_PIECES = 200_000;

/** Bricks on either side of a break that may be laid for its sake. */
const BREAK_REACH = 3;

/** The courses of one row of a wall (its front face, unless told), from the lowest, as far as `most` pieces go. */
export function builtFace(out: SettingOut, most = MOST_PIECES, row?: WallRow): BuiltCourse[] {
  const built: BuiltCourse[] = [];
  let pieces = 0;
  for (const band of row?.bands ?? out.bands)
    for (let course = band.from; course < band.to; course++) {
      pieces += countIn(band, course);
      if (pieces > most) return built;
      built.push(builtCourse(band, course, out.spec));
    }
  return built;
}

/**
 * The back of a wall as {@link builtFace} gives its front: in each course the row that stands hindmost. It is told
 * from the wall’s own left end, as if it were seen through the wall.
 */
export function builtBack(out: SettingOut, most = MOST_PIECES): BuiltCourse[] {
  const rows = out.rows.map((row) => ({ row, face: builtFace(out, most, row) }));
  const { length } = out.rows[0]?.depths ?? [];
  const hindmost = Array.from({ length: length ?? 0 }, (_, i) =>
    rows.findLastIndex(({ row }) => row.depths[i]! > 0),
  );
  const least = Math.min(...rows.map(({ face }) => face.length));
  return Array.from({ length: rows.length ? least : 0 }, (_, i) => {
    const { course } = rows[0]!.face[i]!;
    return rows[hindmost[course % hindmost.length]!]!.face[i]!;
  });
}

const countIn = ({ segments }: Band, course: number) =>
  segments.reduce((sum, { runs }) => sum + piecesIn(runs[course % runs.length]!), 0);

function builtCourse({ segments }: Band, course: number, spec: WallSpec): BuiltCourse {
  return {
    course,
    pieces: segments.flatMap((segment) => [...bricksOf(segment, course)]),
    outline: segments.map(({ from, to, left, right }) => ({ from, to, left, right })),
    broken: segments.flatMap((segment) => brokenIn(segment, spec)),
  };
}

const brick = ({ unit, joints }: WallSpec) => unit.length + joints.perpend;

function brokenIn({ broken }: Segment, spec: WallSpec): BrokenPlace[] {
  const reach = BREAK_REACH * brick(spec);
  return broken.map(({ at, why }) => ({
    from: at - reach,
    to: at + reach,
    lap: lapAtBreak(why, spec),
  }));
}

/** A quarter lap where the bond is broken, half of that beside a cut: common practice. */
function lapAtBreak(why: BrokenBond['why'], spec: WallSpec): number {
  return brick(spec) * (why === 'cut' ? 1 / 8 : Math.min(spec.bond.lap, 1 / 4)) - slackOf(spec);
}

/**
 * Joints of a course of many pieces and of one of few are not quite as wide where both fill one length,
 * so that laps are up to this much less than on paper, mm.
 */
function slackOf({ limits, joints }: WallSpec): number {
  const off = Math.max(limits.most - joints.perpend, joints.perpend - limits.least, 0);
  return 0.01 + 2 * off;
}

/** What a wall has to keep to: the limits it was set out with, and those of stretches decided otherwise. */
export function rulesOf(spec: WallSpec): ProofRules {
  const { joints, limits, decided = [], bond } = spec;
  const all = [limits, ...decided.map((each) => each.limits)];
  const { face } = gridOf(spec.unit, joints, spec.thickness);
  return {
    joint: {
      least: Math.min(joints.perpend, ...all.map(({ least }) => least)),
      most: Math.max(joints.perpend, ...all.map(({ most }) => most)),
    },
    lap: bond.lap > 0 ? bond.lap * brick(spec) - slackOf(spec) : 0,
    tooth: brick(spec) / 2,
    leastCut: limits.leastCut,
    sizes: face,
  };
}
