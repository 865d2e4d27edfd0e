/** Every feature that may be added to a wall, one a line. */
import type { Gang } from '../../../labour/gang';
import type { Masonry } from '../../masonry';
import type { WallCounts } from '../counts';
import type { WallPlan } from '../spec';
import { backing } from './backing';
import { bands } from './bands';
import { coping } from './coping';
import { corbel } from './corbel';
import { corners } from './corners';
import { heads } from './heads';
import { movement } from './movement';
import type { Part, PartOf } from './part';
import { piers } from './piers';
import { plinth } from './plinth';
import { pockets } from './pockets';
import { standing } from './standing';
import { tees } from './tees';

const PARTS: readonly PartOf[] = [
  heads,
  corners,
  tees,
  pockets,
  movement,
  coping,
  bands,
  plinth,
  corbel,
  backing,
  piers,
  standing,
];

/** What the features of a wall add, one after another; nothing of one that it has not. */
export function partsOf(
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  gang: Gang,
): readonly Part[] {
  return PARTS.flatMap((part) => part(masonry, plan, counts, gang) ?? []);
}
