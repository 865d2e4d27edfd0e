/** A repair with no line that says what is done: nothing is reckoned without being told. */
import { later, phrase, spoken } from '../../../../shared/phrase';
import type { BlockFacts } from '../../resolve/env';
import { nameOrigin, type Remark } from '../remark';

/** Lines that say what is done, as a reader would write them. */
const DONE = later`rebuild, recope, rebed, replace, cut-out, tooth-in, stitch, repoint or make-good`;

/** Nothing where the block has no lines yet: it is still being written. */
export function repairNothing(facts: BlockFacts): Remark | undefined {
  if (!facts.heading.syntax.body.length) return undefined;
  const message = phrase`No line says what is done here, so nothing is reckoned. It takes one of ${spoken(DONE)}.`;
  return {
    code: 'repair-nothing',
    severity: 'warning',
    origin: nameOrigin(facts.block),
    message,
  };
}
