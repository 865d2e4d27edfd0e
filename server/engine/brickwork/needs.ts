/** What a piece of work takes. Parts of the job are added up by these before anything is bought. */
import type { Ends } from '../resolve/ends';
import type { Partner } from '../resolve/partners';
import type { Origin, Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';

/** Bricks of one kind, bats and closers counted as the bricks they are cut from. */
export interface BrickNeed {
  readonly brick: string;
  readonly block?: SourceBlock;
  readonly bricks: Term;
  readonly origin: Origin;
}

/** Mortar or concrete of one mix, in litres as laid, nothing lost. */
export interface MixNeed {
  readonly mix: string;
  readonly block?: SourceBlock;
  readonly litres: Term;
  readonly origin: Origin;
  readonly lays?: Lays;
  /** Of a part of the work that has a mix of its own: its damp course, its coping. */
  readonly apart?: boolean;
}

/** What a mix is used for in a piece of work: how fast it goes, and what more of it would do. */
export interface Lays {
  /** As laid: so much of it goes into the bricks, in these hours. */
  readonly litres: Term;
  /** Of the whole gang, in which it is laid. */
  readonly hours?: Term;
  /** Bricks that are laid in it. */
  readonly bricks?: Term;
  /** Where not all of it goes at one pace: its parts, in the order they are done. */
  readonly paces?: readonly Pace[];
  /** What the joints of a square metre (or foot) of face take to be pointed, and how long they are. */
  readonly pointing?: Term;
  readonly joints?: Term;
}

/** So much mortar, as laid, in so many hours of the gang. */
export interface Pace {
  readonly litres: Term;
  readonly hours: Term;
}

/** Things bought by the piece. */
export interface PieceNeed {
  readonly material: string;
  readonly block?: SourceBlock;
  readonly count: Term;
  readonly origin: Origin;
  /** Of one, mm, as far as lines of the job give its sides. */
  readonly size?: readonly number[];
  /** The same, between what and what each lies: it is lifted whole, so its weight is feared at the worst. */
  readonly ends?: readonly Ends[];
}

/** What is taken away: its volume loose, its mass. */
export interface WasteNeed {
  readonly volume: Term;
  readonly mass: Term;
}

/** Time of the whole gang together, in hours. */
export interface TaskNeed {
  readonly task: string;
  readonly hours: Term;
  /** Done by a partner firm: no hours of the firm’s own. */
  readonly by?: Partner;
}

export interface Needs {
  readonly bricks: readonly BrickNeed[];
  readonly mixes: readonly MixNeed[];
  readonly pieces: readonly PieceNeed[];
  readonly tasks: readonly TaskNeed[];
  /** Its amounts hang on ranges in a way that they do not say: they are sampled by doing the work again. */
  readonly opened?: boolean;
  /** Days that its height takes, however few the hours. */
  readonly leastDays?: Term;
  /** What is taken away. */
  readonly waste?: WasteNeed;
}

/** A figure that a reader can ask for by name. */
export interface Figure {
  /** The last part of its id: `bricks`, `gate.width`. */
  readonly key: string;
  readonly term: Term;
}
