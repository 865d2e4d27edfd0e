/** The cut list of a piece of work: what is cut, in which courses and where, and out of what. */
import type { BricksNeeded, CutPlace } from '../../setting-out';
import type { Term } from '../../working/term';
import type { Counted } from '../count';

/** Bricks of one kind that are counted together, and so cut together. */
export interface CutPart {
  /** “Bricks in the wall”. */
  readonly label: string;
  /** The brick, as a reader knows it. */
  readonly brick: string;
  readonly needed: BricksNeeded;
  /** Every piece that is cut, with its courses. None where the work is not laid in courses. */
  readonly places: readonly CutPlace[];
  /** Alike pieces of work that each take all this. */
  readonly alike: number;
  /** How many there are of it. */
  readonly bricks: Term;
  /** Bricks cut along their height besides, one piece from each. */
  readonly onEdge: number;
}

/** Nothing where nothing of it is cut. */
export function cutPart(
  brick: string,
  { bricks, needed, onEdge }: Counted,
  places: readonly CutPlace[] = [],
  alike = 1,
): CutPart[] {
  if (!needed.cuttings.length && !onEdge) return [];
  return [{ label: bricks.label, brick, bricks, needed, places, alike, onEdge }];
}
