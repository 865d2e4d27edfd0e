import { cutWays } from '../fit/cuts';
import type { JointLimits } from '../types';

/** A flat tile, mm: laid with its length or its width through the wall. */
export interface Tile {
  length: number;
  width: number;
}

/** One line of tiles along the wall: each so long along it, and so wide through it, mm. */
export interface TileLine {
  along: number;
  across: number;
}

/** Lines wider than this many tiles are no creasing. */
const MOST_ACROSS = 6;

/** Mm that a width may fall short by and still cover. */
const SHORT = 1e-6;

/**
 * The tiles through a wall: the fewest that cover it and stand out by `out` mm over both faces, and of so
 * many the narrowest. One 265 mm tile covers a wall of 215 mm and stands out 25 mm (common practice).
 * Nothing where no few tiles do.
 */
export function creasingLines(wall: number, out: number, tile: Tile, joint: number): TileLine[] {
  const wanted = wall + 2 * out - SHORT;
  const { length, width } = tile;
  if (!(length > 0 && width > 0 && wanted < Number.POSITIVE_INFINITY)) return [];
  for (let tiles = 1; tiles <= MOST_ACROSS; tiles++)
    for (let turned = 0; turned <= tiles; turned++) {
      const wide = turned * length + (tiles - turned) * width + (tiles - 1) * joint;
      if (wide < wanted) continue;
      const line = (lengthwise: boolean): TileLine =>
        lengthwise ? { along: width, across: length } : { along: length, across: width };
      return Array.from({ length: tiles }, (_, i) => line(i < turned));
    }
  return [];
}

/** How wide lines of tiles are together, joints between them included, mm. */
export function creasingWidth(lines: readonly TileLine[], joint: number): number {
  return lines.reduce((sum, { across }) => sum + across, 0) + (lines.length - 1) * joint;
}

export interface TileRun {
  /** Along the wall, mm. */
  length: number;
  /** Of one tile along the wall, mm. */
  along: number;
  endJoints: 0 | 1 | 2;
  limits: JointLimits;
}

/** One course of one line of tiles: halves begin it, and end it where two of them do; the cut ends it. */
export interface TileCourse {
  halves: 0 | 1 | 2;
  wholes: number;
  cuts: readonly number[];
  joint: number;
}

/** The half that laps the tiles below by half, mm. */
export function halfTile({ along, limits }: Pick<TileRun, 'along' | 'limits'>): number {
  return (along - limits.best) / 2;
}

/**
 * A course of tiles from a whole one, or from a half that laps the course below: in whole and half tiles where
 * joints within the limits make them fill the run, else with a cut at its right end.
 */
export function creasingCourse(run: TileRun, fromHalf: boolean): TileCourse {
  const found = (fromHalf ? ([1, 2] as const) : ([0, 1] as const)).flatMap((halves) =>
    inTiles(run, halves),
  );
  const off = ({ joint }: TileCourse) => Math.abs(joint - run.limits.best);
  const best = found.reduce<TileCourse | undefined>(
    (a, b) => (a && off(a) <= off(b) ? a : b),
    undefined,
  );
  return best ?? withCut(run, fromHalf);
}

function inTiles(run: TileRun, halves: 0 | 1 | 2): TileCourse[] {
  const { length, along, endJoints, limits } = run;
  const room = length - halves * halfTile(run);
  const fixed = halves - 1 + endJoints;
  const wholes = Math.max(0, Math.round((room - fixed * limits.best) / (along + limits.best)));
  const joints = wholes + fixed;
  const left = room - wholes * along;
  if (joints <= 0)
    return Math.abs(left) < SHORT && wholes + halves > 0
      ? [{ halves, wholes, cuts: [], joint: limits.best }]
      : [];
  const joint = left / joints;
  const good = joint >= limits.least - SHORT && joint <= limits.most + SHORT;
  return good ? [{ halves, wholes, cuts: [], joint }] : [];
}

function withCut(run: TileRun, fromHalf: boolean): TileCourse {
  const { along: piece, endJoints, limits } = run;
  const first = fromHalf ? halfTile(run) + limits.best : 0;
  const length = run.length - first;
  const halves = fromHalf ? 1 : 0;
  const [way] = cutWays({ length, piece, half: null, endJoints, limits, cutAt: 'right' });
  const cover = Math.max(1, Math.ceil(run.length / (piece + limits.best)));
  if (!way) return { halves: 0, wholes: cover, cuts: [], joint: limits.best };
  return { halves, wholes: way.wholes, cuts: Array(way.cuts).fill(way.cut), joint: way.joint };
}
