import type { Tally } from '../count/tally';
import type { CountedPiece, UnitSize } from '../types';
import { nest } from './nest';
import type { Asked, Bats, Cutting } from './stock';

/** What a brick is cut into. */
export type CutPiece = Exclude<CountedPiece, 'whole'>;

/** So many like pieces out of one brick or bat; `length` along the brick, mm. */
export interface PieceOut {
  readonly piece: CutPiece;
  readonly length: number;
  readonly count: number;
}

/** `times` bricks, or bats at hand of `bat` mm, each cut into the same pieces. */
export interface BrickCut {
  readonly bat?: number;
  readonly times: number;
  readonly pieces: readonly PieceOut[];
}

/** Whole bricks that a tally takes, and how those that are cut are cut. */
export interface BricksNeeded {
  readonly total: number;
  readonly wholes: number;
  /** Bricks that are cut. */
  readonly cut: number;
  readonly cuttings: readonly BrickCut[];
  /** What is left of the bats at hand. */
  readonly bats: readonly Bats[];
}

interface CutFrom {
  readonly unit: UnitSize;
  readonly joint: number;
  readonly kerf: number;
}

/** No piece is shorter, so that nonsense has an answer, mm. */
const SLIVER = 1;

/** Lengths of the pieces of one rule: a half and a three-quarter bat are cut to the joint. */
export function lengthsOf({ length }: UnitSize, joint: number) {
  return { half: (length - joint) / 2, 'three-quarter': ((length + joint) * 3) / 4 - joint };
}

/**
 * What a queen closer takes of a brick's length. Split lengthwise, a brick gives two; but so do its two
 * half bats, each split and laid one half behind the other (a brick is two half bats and a joint long, as
 * it is two widths and a joint). So a closer is had of half a brick, and what is left serves for other
 * pieces. Where the kerf leaves no room for two beside each other it takes a brick of its own.
 */
function closerTakes({ unit, joint, kerf }: CutFrom): number {
  const two = unit.width - joint + kerf <= unit.width + 1e-9;
  return two ? lengthsOf(unit, joint).half : unit.length;
}

function wantedOf(tally: Tally, from: CutFrom): PieceOut[] {
  const { half, 'three-quarter': threeQuarter } = lengthsOf(from.unit, from.joint);
  const all: PieceOut[] = [
    { piece: 'three-quarter', length: threeQuarter, count: tally.threeQuarters },
    { piece: 'half', length: half, count: tally.halves },
    { piece: 'closer', length: closerTakes(from), count: tally.closers },
    ...tally.cuts.map(({ length, count }) => ({ piece: 'cut' as const, length, count })),
  ];
  return all.filter((p) => p.count > 0);
}

/**
 * Whole bricks for a tally: those laid whole, and those its pieces are cut from, nested so that as few
 * as can be are cut (see {@link nest}). `kerf` is what a saw takes, mm; 0 for a bolster. Bats at hand are
 * cut up first.
 */
export function bricksNeeded(
  tally: Tally,
  unit: UnitSize,
  joint: number,
  kerf = 0,
  atHand: readonly Bats[] = [],
): BricksNeeded {
  const wanted = wantedOf(tally, { unit, joint, kerf });
  const { wholes } = tally;
  const bats = atHand.filter((b) => b.length > 0 && b.count > 0);
  if (!wanted.length) return { total: wholes, wholes, cut: 0, cuttings: [], bats };
  const asked: Asked[] = wanted.map(({ length, count }) => {
    return { length: Math.max(SLIVER, length), count };
  });
  const cuttings = nest({ brick: unit.length, kerf: Math.max(0, kerf), asked, bats });
  const cut = cuttings.reduce((sum, c) => sum + (c.bat === undefined ? c.times : 0), 0);
  return {
    total: wholes + cut,
    wholes,
    cut,
    cuttings: alike(cuttings, wanted, bats),
    bats: bats.map((b, i) => ({ ...b, count: b.count - usedOf(cuttings, i) })),
  };
}

function usedOf(cuttings: readonly Cutting[], bat: number): number {
  return cuttings.reduce((sum, c) => sum + (c.bat === bat ? c.times : 0), 0);
}

/** Bricks cut into the same pieces told once, bats first, then what most bricks are cut into. */
function alike(
  cuttings: readonly Cutting[],
  wanted: readonly PieceOut[],
  bats: readonly Bats[],
): BrickCut[] {
  const found = new Map<string, BrickCut>();
  for (const { bat, times, pieces } of cuttings) {
    const sorted = [...pieces].sort((a, b) => a.asked - b.asked);
    const key = `${bat}: ${sorted.map((p) => `${p.count} of ${p.asked}`).join()}`;
    const known = found.get(key);
    const out = sorted.map(({ asked, count }) => ({ ...wanted[asked]!, count }));
    const length = bat === undefined ? undefined : bats[bat]!.length;
    found.set(key, { bat: length, times: times + (known?.times ?? 0), pieces: out });
  }
  const whole = (c: BrickCut) => (c.bat === undefined ? 1 : 0);
  return [...found.values()].sort((a, b) => whole(a) - whole(b) || b.times - a.times);
}
