/** What a comparison of bricks with what stands there comes to. */
import type { JointLimits } from '../../setting-out';
import type { Origin, Term } from '../../working/term';
import type { Brick } from '../goods';
import type { Standing } from '../standing/gauge';

/** Of a brick, as its size is written. */
export interface Sides<T> {
  readonly length: T;
  readonly width: T;
  readonly height: T;
}

export const SIDES = ['length', 'width', 'height'] as const;

/** What a brick has to match. */
export interface Stood {
  readonly title: string;
  /** Where its size comes from. */
  readonly origin: Origin;
  /** Whether bricks of it were measured, and not only a work size read. */
  readonly measured: boolean;
  /** How many bricks that is the mean of. */
  readonly sample?: Term;
  /** mm; nothing where its size is not known. */
  readonly size?: Sides<Term>;
  /** Height of a course, mm, and whether it was measured off the wall. */
  readonly course?: Term;
  readonly gauged: boolean;
  /** Its upright joint, mm. */
  readonly perpend: Term;
  readonly beds: JointLimits;
  readonly perpends: JointLimits;
  /** Built again beside it: whole courses, and mm along it. */
  readonly courses?: Term;
  readonly length?: Term;
}

/** How a size lies in the classes of tolerance that the files know. */
export interface Near {
  /** The tightest class that allows every side to be so far off; or, where none does, the widest there is. */
  readonly title: string;
  /** Place of that class among all, 0 the tightest; as many as there are where none does. */
  readonly place: number;
  /** What it allows each side, either way, mm. */
  readonly allowed: Sides<Term>;
  /** The side that is furthest outside it, and by how much, mm; less than nothing is too small. */
  readonly out?: { readonly side: keyof Sides<Term>; readonly term: Term };
}

/** The bed joint that keeps the gauge. */
export interface Bed extends Pick<Standing, 'joint' | 'within' | 'drift'> {
  readonly accepted: boolean;
}

/** The upright joint that keeps the bond. */
export interface Perpend {
  readonly joint: Term;
  readonly accepted: boolean;
  /** At its usual joint: mm that it runs past what stands over the length built again. */
  readonly creep?: Term;
}

/** What the shortfall of this repair alone costs, before overhead, profit and tax. */
export interface Bought {
  readonly bought: Term;
  readonly cost: Term;
  /** Bricks of it that are not laid and not broken either. */
  readonly left: Term;
}

export interface Compared {
  readonly brick: Brick;
  readonly chosen: boolean;
  /** How much larger than what stands, mm. */
  readonly larger?: Sides<Term>;
  readonly near?: Near;
  readonly bed?: Bed;
  readonly perpend?: Perpend;
  readonly waste: Term;
  readonly buy: Bought;
}

export type Criterion = 'gauge' | 'size' | 'price';

export interface Candidate extends Compared {
  /** 1 is the best. */
  readonly rank: number;
  /** Why it stands before the next; nothing of the last. */
  readonly why?: string;
  /** What is honest to tell the client. */
  readonly honest: readonly string[];
}

export interface Matching {
  readonly stood: Stood;
  readonly order: readonly Criterion[];
  /** The best first. */
  readonly candidates: readonly Candidate[];
}
