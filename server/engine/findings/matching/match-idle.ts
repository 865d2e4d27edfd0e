/** Lines of a comparison in a repair that compares nothing. */
import { phrase } from '../../../../shared/phrase';
import type { Matching } from '../../brickwork/matching/types';
import type { BlockFacts } from '../../resolve/env';
import type { Remark } from '../remark';

/** In the runs of a sample nothing is compared either, and nobody is told. */
export function matchIdle(facts: BlockFacts, matching: Matching | undefined): Remark | undefined {
  const line = facts.line('candidates') ?? facts.line('measured');
  if (matching || !line) return undefined;
  const message =
    line.line.kind.key === 'candidates'
      ? phrase`No brick is bought for this repair, or none that a file knows: there is nothing to compare.`
      : phrase`No other brick is bought that could be compared with it: that takes bricks that fall short, and a match or candidates.`;
  return { code: 'line-idle', severity: 'warning', origin: line.origin, message };
}
