/** What a piece of work takes. Parts of the job are added up by these before anything is bought. */

import type { Remark } from '../findings/remark';
import type { Joints, PierPlan, SettingOut, UnitSize } from '../setting-out';
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
}

/** Things bought by the piece. */
export interface PieceNeed {
  readonly material: string;
  readonly block?: SourceBlock;
  readonly count: Term;
  readonly origin: Origin;
}

/** Time of the whole gang together, in hours. */
export interface TaskNeed {
  readonly task: string;
  readonly hours: Term;
}

export interface Needs {
  readonly bricks: readonly BrickNeed[];
  readonly mixes: readonly MixNeed[];
  readonly pieces: readonly PieceNeed[];
  readonly tasks: readonly TaskNeed[];
  /** Days that its height takes, however few the hours. */
  readonly leastDays?: Term;
}

/** A figure that a reader can ask for by name. */
export interface Figure {
  /** The last part of its id: `bricks`, `gate.width`. */
  readonly key: string;
  readonly term: Term;
}

/** What a brick on edge, a cap or a pier's plan looks like from the side: kept for the drawing. */
export interface TopRun {
  readonly from: number;
  readonly to: number;
  /** Course that it stands on, counted from the ground. */
  readonly on: number;
  readonly kind: 'brick-on-edge' | 'cap';
  readonly pieces: readonly { readonly length: number; readonly cut: boolean }[];
  readonly joint: number;
  readonly height: number;
}

/** A pier alone, as its drawing needs it: its plan and courses, and what they are laid of. */
export interface PierFace {
  readonly plan: PierPlan;
  readonly unit: UnitSize;
  readonly joints: Joints;
}

export interface Work {
  readonly block: SourceBlock;
  readonly kind: string;
  readonly name: string;
  readonly title: string;
  readonly figures: readonly Figure[];
  readonly needs: Needs;
  readonly remarks: readonly Remark[];
  readonly facts: WorkFacts;
  readonly notes: readonly string[];
}

/** What others may ask of a piece of work: a repair of its wall, a drawing, a quote, a caution. */
export interface WorkFacts {
  readonly settingOut?: SettingOut;
  readonly tops?: readonly TopRun[];
  /** A pier that stands alone: one of those alike. */
  readonly pier?: PierFace;
  /** Height over all, coping included, mm. */
  readonly height?: number;
  readonly does: ReadonlySet<string>;
  /** Sentences for the client: what will be done. */
  readonly says: readonly string[];
}
