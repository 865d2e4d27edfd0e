/** What one kind of mending adds to a repair: what it takes away, what it wants, how long it takes. */
import type { Remark } from '../../findings/remark';
import type { Term } from '../../working/term';
import type { Figure, MixNeed, PieceNeed } from '../needs';
import type { Said } from '../said';
import type { WorkFacts } from '../work';
import type { Site } from './site';

/** A task of the outputs, what it is called in a working, and how much of it there is. */
export interface Task {
  readonly task: string;
  readonly label: string;
  readonly amount: Term;
}

/** Copings, caps and concrete that are taken away: as they stood, and what they weigh. */
export interface Block {
  readonly volume: Term;
  readonly mass: Term;
}

export interface Mending {
  /** Bricks that come down whole or broken: some of them clean up. */
  readonly down?: Term;
  /** Bricks that come out in pieces: none of them does. */
  readonly cut?: Term;
  /** Bricks that have to be there again. */
  readonly wanted?: Term;
  /** New mortar. */
  readonly mortar?: Term;
  /** Old mortar that comes away, as it stood. */
  readonly old?: Term;
  readonly blocks?: readonly Block[];
  /** Of a mix of its own, such as the concrete in a core. */
  readonly mixes?: readonly MixNeed[];
  /** Half bricks that can be laid where no face shows, and where that is. */
  readonly places?: { readonly halves: Term; readonly where: string };
  readonly pieces?: readonly PieceNeed[];
  readonly tasks?: readonly Task[];
  readonly figures?: readonly Figure[];
  readonly remarks?: readonly Remark[];
  /** Sentences for the client. */
  readonly says?: readonly Said[];
  /** What brings up a caution: see `WorkFacts.does`. */
  readonly does?: readonly string[];
  /** What is to be cut for what is built again. */
  readonly cuts?: WorkFacts['cuts'];
  /** What is built again, for its drawing. */
  readonly rebuilt?: Omit<NonNullable<WorkFacts['rebuilt']>, 'reused'>;
}

/** Works one kind of mending out; nothing where the repair has none of it. */
export type MendingOf = (site: Site) => Mending | undefined;
