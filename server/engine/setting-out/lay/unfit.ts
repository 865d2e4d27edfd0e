/** Walls of which some stretches work in half bricks and some do not. */
import type { Segment } from '../types';

type Which = (key: string) => boolean;

/** Ways to mend perpends that clash, in those stretches alone that are asked for. */
export interface Mending {
  /** Lays them in the perpends of the whole wall, cut at the reveals. */
  readonly plumb: (may: Which) => void;
  /** Lays them in other ways, with no cut that was not there; false as soon as two of them will still clash. */
  readonly otherwise: (may: Which) => boolean;
  /** Whether any still clash, of which both are such as are asked for; of all of them when left out. */
  readonly clash: (both?: Which) => boolean;
}

/** Of more stretches than this hardly ever are all mended so, and it takes its time. */
const MOST = 40;

/**
 * Cuts only what works in no half bricks, and lays what does work in other ways: nobody cuts brickwork that works (common
 * practice). False, and all as it was, where perpends still clash after that.
 */
export function mendedByUnfit(
  placed: Map<unknown, Segment>,
  first: ReadonlyMap<string, Segment>,
  { plumb, otherwise, clash }: Mending,
): boolean {
  if (first.size > MOST) return false;
  const fits = (key: string) => first.get(key)!.fits;
  const cut = () => plumb((key) => !fits(key));
  const asItWas = () => {
    for (const [key, segment] of first) placed.set(key, segment);
  };
  // Where two that both work clash, no cutting of others mends that.
  const mended = () => {
    if (clash(fits)) return false;
    cut();
    return !clash();
  };
  if (mended()) return true;
  asItWas();
  if (otherwise(fits) && mended()) return true;
  asItWas();
  return false;
}
