/** The rate inside a share of money: the 20% of a tax, read from the figure's own working. */
import type { Term } from '../engine/working/term';

/** @returns nothing when the figure is no share of another */
export function rateOf(term: Term): Term | undefined {
  const share = term.op === 'cents' ? term.args[0] : term;
  return share?.op === 'share' ? share.args[0] : undefined;
}
