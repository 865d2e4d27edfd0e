/** Every feature that may be added to a wall, one a line. */
import type { Gang } from '../../../labour/gang';
import type { Masonry } from '../../masonry';
import type { WallCounts } from '../counts';
import type { WallPlan } from '../spec';
import type { Part, PartOf } from './part';

const PARTS: readonly PartOf[] = [];

export function partsOf(
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  gang: Gang,
): readonly Part[] {
  return PARTS.flatMap((part) => part(masonry, plan, counts, gang) ?? []);
}
