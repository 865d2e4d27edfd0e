import { estimate, fittingHalves, type Row, sizeOf } from '../fit/halves';
import type { EndKind, JointLimits, LaidRun, UnitSize } from '../types';
import type { Craft, Ends } from './craft';
import { BRICK } from './grid';
import { type Laid, layTiny, layWithCut } from './phases';
import { toRun } from './run';
import { SHORT } from './stub';
import type { Zone } from './zones';

/** A length matched to half bricks: `halves` at joints within the limits, or else so much off it. */
export interface Match {
  halves: number;
  fits: boolean;
  /** Mm that the length is over `halves` at the best joint (negative: under); 0 when it fits. */
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

/** Matches a length to half bricks; where no joint does, to the whole bricks it falls short of, for a cut to make good. */
export function matchLength(row: Row, length: number): Match {
  const halves = fittingHalves(row, length);
  if (halves !== null) return { halves, fits: true, off: 0 };
  const whole = 2 * Math.max(1, Math.ceil(estimate(row, length) / 2));
  return { halves: whole, fits: false, off: length - sizeOf(row, whole) };
}

/** A stretch laid. */
export interface LaidStretch {
  match: Match;
  /** Steps it is set out to, before any cut is let in; the nearest half brick where it is too short for a pattern. */
  width: number;
  /** Where its pattern runs unbroken, before any cut is let in. */
  zones: readonly Zone[];
  /** Steps from its left end at which the bond is broken. */
  breaks: readonly { at: number; why: 'bond' | 'cut' }[];
  runs: readonly LaidRun[];
}

/**
 * Lays one stretch. `onGrid` lays it as if its length were a number of half bricks; a length that
 * no joints fit then takes a cut at the first step of `cutAt` that it can, or where the bond is broken already, or in the middle.
 */
export function layStretch(
  craft: Craft,
  length: number,
  match: Match,
  ends: Ends,
  onGrid: (width: number) => Laid | null,
  cutAt: readonly number[] = [],
): LaidStretch {
  const width = (match.halves * BRICK) / 2;
  const extra = match.off / craft.grid.step;
  const plain = onGrid(width);
  const zones = plain?.zones ?? [{ tilings: craft.tilings, to: Number.POSITIVE_INFINITY }];
  const usual = zones.length > 1 ? zones[0]!.to : width / 2;
  const cutIn = (at: number) => plain && layWithCut(craft, plain, width, extra, ends, at);
  const wished = match.fits ? undefined : firstCut(cutAt, cutIn);
  const place = wished?.at ?? usual;
  const patterned = match.fits ? plain : (wished?.laid ?? cutIn(place));
  const cut = patterned ?? likePier(craft, width + extra);
  const runs = cut
    ? cut.courses.map((course) =>
        toRun(course, length, width + extra, ends, craft.grid, match.fits),
      )
    : craft.tilings.map(() => oddRun(craft, length, ends));
  const breaks = zones.slice(0, -1).map(({ to }) => ({ at: to, why: 'bond' as const }));
  const short = !match.fits && width + extra <= SHORT;
  return {
    match,
    width: short ? nearestHalves(width + extra) : width,
    zones,
    runs,
    breaks: match.fits ? breaks : withCut(breaks, place),
  };
}

const nearestHalves = (steps: number) => (BRICK / 2) * Math.round(steps / (BRICK / 2));

/** Steps up to which a stretch that its pattern does not go into is laid as a pier is, piece by piece. */
const LIKE_PIER = 4 * BRICK;

function likePier(craft: Craft, width: number): Laid | null {
  return width <= LIKE_PIER ? layTiny(craft, width) : null;
}

/** The first of the places at which a cut can be let in, and the stretch with it. */
function firstCut(places: readonly number[], cutIn: (at: number) => Laid | null) {
  for (const at of places) {
    const laid = cutIn(at);
    if (laid) return { at, laid };
  }
  return undefined;
}

function withCut(breaks: LaidStretch['breaks'], at: number): LaidStretch['breaks'] {
  const others = breaks.filter((b) => b.at !== at);
  return [...others, { at, why: 'cut' as const }].sort((a, b) => a.at - b.at);
}

/** The last resort, for a stretch no pattern goes into: wholes, and two like cuts for the rest. */
function oddRun(craft: Craft, length: number, ends: Ends): LaidRun {
  const { grid, mostCut } = craft;
  const left = ends.left === 'stopped' ? 0 : 1;
  const right = ends.right === 'stopped' ? 0 : 1;
  const clear = length + grid.joint * (1 - left - right);
  const bricks = Math.floor(clear / grid.module);
  const cuts = clear - grid.joint <= mostCut ? 1 : 2;
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
