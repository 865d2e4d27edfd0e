/** Walls of which some stretches work in half bricks and some do not. */
import type { Segment } from '../types';

type Which = (key: string) => boolean;

/** Ways to mend perpends that clash, in those stretches alone that are asked for. */
export interface Mending {
  /** Lays them in the perpends of the whole wall, cut at the reveals. */
  readonly plumb: (may: Which) => void;
  /** Lays them in other ways, with no cut that was not there. */
  readonly otherwise: (may: Which) => void;
  /** Whether any still clash. */
  readonly clash: () => boolean;
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
  cut();
  if (!clash()) return true;
  asItWas();
  otherwise(fits);
  cut();
  if (!clash()) return true;
  asItWas();
  return false;
}
