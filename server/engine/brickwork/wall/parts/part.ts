/** What one feature of a wall (its heads and sills, its ties, its corbels) adds to the wall's own brickwork. */
import type { Remark } from '../../../findings/remark';
import type { Gang } from '../../../labour/gang';
import type { CutPlace, Tally } from '../../../setting-out';
import type { Apart } from '../../apart';
import type { Counted } from '../../count';
import type { TopRun } from '../../faces';
import type { Brick, Mix } from '../../goods';
import type { Masonry } from '../../masonry';
import type { Figure, MixNeed, PieceNeed, TaskNeed } from '../../needs';
import type { Said } from '../../said';
import type { WorkFacts } from '../../work';
import type { WallCounts } from '../counts';
import type { WallPlan } from '../spec';

/** Bricks of a feature: counted, and laid in the wall's mortar, or in a mix of their own: see {@link Part.apart}. */
export interface PartBricks {
  readonly brick: Brick;
  readonly counted: Counted;
  readonly mix?: Mix;
  /** Where its cuts lie, course by course: asked for by the cut list alone. */
  readonly places?: () => readonly CutPlace[];
}

export interface Part {
  readonly bricks?: readonly PartBricks[];
  readonly mixes?: readonly MixNeed[];
  /** Work without bricks in the wall’s mortar: its gross volume is that mortar. */
  readonly mortar?: readonly Tally[];
  /** What is laid in another mix, bricks and all. */
  readonly apart?: readonly Apart[];
  readonly pieces?: readonly PieceNeed[];
  readonly tasks?: readonly TaskNeed[];
  readonly figures?: readonly Figure[];
  readonly remarks?: readonly Remark[];
  readonly tops?: readonly TopRun[];
  /** Sentences for the client. */
  readonly says?: readonly Said[];
  /** What it adds to the height of the wall over all, mm. */
  readonly high?: number;
  /** What brings up a caution: see `WorkFacts.does`. */
  readonly does?: readonly string[];
  /** What its drawings and other work may ask of it. */
  readonly facts?: Partial<WorkFacts>;
}

/** Works one feature out; nothing where the wall has none of it. */
export type PartOf = (
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  gang: Gang,
) => Part | undefined;
