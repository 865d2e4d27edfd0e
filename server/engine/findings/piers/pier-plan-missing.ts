/** A pier of a size that no library has a plan for. */
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts } from '../../resolve/env';
import type { Remark } from '../remark';

export function pierPlanMissing(facts: BlockFacts, along: number, across: number): Remark {
  const origin = facts.line('size')?.origin ?? facts.origin;
  const core = facts.line('core') ? phrase`, as if it had no core` : '';
  const message = phrase`No plan is known for a pier of ${along} x ${across} bricks, so its bricks are counted by area${core}, with no bats or closers told apart. Write a pier-plan ${along} x ${across} bricks in the firm’s file to count them as you lay them.`;
  return { code: 'pier-plan-missing', severity: 'warning', origin, message };
}
