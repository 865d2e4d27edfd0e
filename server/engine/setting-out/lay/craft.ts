import type { EndKind } from '../types';
import type { Joining } from './breaks';
import { BRICK, type Grid } from './grid';
import type { Laid } from './phases';
import type { Tiling } from './tiling';

/** What every stretch of one wall is laid with. */
export interface Craft {
  grid: Grid;
  /** One for each course of the bond, from a free end at step 0. */
  tilings: readonly Tiling[];
  /** Least lap of the bond, steps. */
  lap: number;
  /** Mm. */
  leastCut: number;
  /** Mm: a brick less what the saw takes. */
  mostCut: number;
  /** What makes the lap at a free end of a one-brick wall, see {@link quoinFor}. */
  quoin: 'closer' | 'three-quarter';
  /** Breaks already worked out, by what they depend on; where each was found is kept with it. */
  breaks: Map<string, { at: number; joinings: Joining[] | null }>;
  /** Stretches of whole half bricks already laid, by width, ends and phase of the pattern. */
  laid: Map<string, Laid | null>;
  /**
   * Perpends of the courses above and below, for each course in order, in steps of the one stretch that is
   * laid with this craft: see `agree.ts`.
   */
  beware?: readonly (readonly number[])[];
}

export interface Ends {
  left: EndKind;
  right: EndKind;
}

/** Where the bond is broken a quarter lap will do, whatever the bond: common practice. */
export function brokenLap({ lap }: Craft): number {
  return Math.min(lap, BRICK / 4);
}

/**
 * A queen closer behind the quoin header makes the lap at a free end, except in header bond: there
 * the closer's own perpend stands over a header's, and a three-quarter bat takes the place of both
 * (common practice).
 */
export function quoinFor(tilings: readonly Tiling[]): Craft['quoin'] {
  const headers = tilings.every(({ cells }) => cells.every(({ piece }) => piece === 'header'));
  return headers ? 'three-quarter' : 'closer';
}
