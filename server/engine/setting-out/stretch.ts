import { BRICK } from './grid';
import type { Row } from './halves';
import { fittingHalves, nearestHalves, sizeOf } from './halves';
import type { Laid } from './phases';
import { layOnGrid, layWithCut } from './phases';
import { toRun } from './run';
import type { Tiling } from './tiling';
import type { EndKind, JointLimits, LaidRun, UnitSize } from './types';
import type { Craft, Ends } from './zones';

/** A length matched to half bricks: `halves` at joints within the limits, or else so much off it. */
export interface Match {
  halves: number;
  fits: boolean;
  /** Mm that `halves` at the best joint are short of the length (negative: too long); 0 when it fits. */
  off: number;
}

/** The row of stretchers that a stretch of wall is set out by. */
export function rowOf(unit: UnitSize, joint: number, ends: Ends, limits: JointLimits): Row {
  const jointed = (end: EndKind) => (end === 'stopped' ? 0 : 1);
  return {
    piece: unit.length,
    half: (unit.length - joint) / 2,
    endJoints: (jointed(ends.left) + jointed(ends.right)) as 0 | 1 | 2,
    limits,
  };
}

export function matchLength(row: Row, length: number): Match {
  const halves = fittingHalves(row, length);
  if (halves !== null) return { halves, fits: true, off: 0 };
  const nearest = nearestHalves(row, length);
  return { halves: nearest, fits: false, off: length - sizeOf(row, nearest) };
}

/** A stretch laid: what is on the grid, its width there, and its courses in millimetres. */
export interface LaidStretch {
  laid: Laid | null;
  width: number;
  runs: LaidRun[];
}

/**
 * Lays one stretch. `master` is the wall's own pattern in this stretch's steps; `how`, when given,
 * lays it on the grid in place of {@link layOnGrid}. A length that no joints fit takes a cut at `cutAt`.
 */
export function layStretch(
  craft: Craft,
  length: number,
  match: Match,
  ends: Ends,
  master: readonly Tiling[],
  cutAt?: number,
  how: (width: number) => Laid | null = (width) => layOnGrid(craft, width, ends, master),
): LaidStretch {
  const width = (match.halves * BRICK) / 2;
  const extra = match.off / craft.grid.step;
  const plain = how(width);
  const laid =
    plain && !match.fits
      ? layWithCut(craft, plain, width, extra, ends, cutAt ?? cutPlace(plain, width))
      : plain;
  if (!laid) return { laid, width, runs: craft.tilings.map(() => oddRun(craft, length, ends)) };
  const runs = laid.courses.map((course) =>
    toRun(course, length, match.fits ? width : width + extra, ends, craft.grid),
  );
  return { laid, width, runs };
}

/** A cut goes where the bond is broken already, else in the middle. */
function cutPlace(laid: Laid, width: number): number {
  return laid.zones.length > 1 ? laid.zones[0]!.to : width / 2;
}

/** The last resort, for a stretch no pattern goes into: wholes, and two like cuts for the rest. */
function oddRun(craft: Craft, length: number, ends: Ends): LaidRun {
  const { grid } = craft;
  const left = ends.left === 'stopped' ? 0 : 1;
  const right = ends.right === 'stopped' ? 0 : 1;
  const clear = length + grid.joint * (1 - left - right);
  const bricks = Math.floor(clear / grid.module);
  const cuts = clear < grid.module ? 1 : 2;
  const whole = Math.max(0, bricks - (cuts - 1));
  const cut = (clear - whole * grid.module) / cuts - grid.joint;
  const piece = { piece: 'cut' as const, length: cut, count: 1 };
  const wholes = { piece: 'stretcher' as const, length: grid.face.stretcher, count: whole };
  const pieces = cuts === 1 ? [piece] : [piece, wholes, piece].filter((p) => p.count > 0);
  return {
    from: 0,
    length,
    joint: grid.joint,
    endJoints: { left, right },
    groups: cut > 0 ? [{ pieces, times: 1 }] : [],
  };
}
