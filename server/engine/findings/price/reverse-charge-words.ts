/** A reverse charge where no file gives the words that a paper needs for it. */
import { phrase } from '../../../../shared/phrase';
import type { JobPrice } from '../../price/total';
import type { Remark } from '../remark';

export function reverseChargeWords({ taxes }: JobPrice): Remark[] {
  const lines = taxes.flatMap((t) => (t.category === 'AE' && !t.reason && t.line ? [t.line] : []));
  return lines.slice(0, 1).map((line) => ({
    code: 'reverse-charge-words',
    severity: 'warning',
    origin: line.origin,
    message: phrase`No file says what a paper has to say where the client owes the tax. Write it under defaults, as the country’s law words it: reverse-charge "…".`,
  }));
}
