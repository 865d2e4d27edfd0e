/** How findings of the price write money. */

import { writeNumber } from '../../../../shared/exact';
import type { Env } from '../../resolve/env';
import type { Term } from '../../working/term';

/** Money as a file has it, so that it is read back the same. */
export function written({ value }: Term, { money: { sign, code, digits } }: Env): string {
  const number = value.isInteger() || digits !== 2 ? writeNumber(value) : value.toFixed(digits);
  return /^\p{Sc}$/u.test(sign) ? `${sign}${number}` : `${number} ${code}`;
}
