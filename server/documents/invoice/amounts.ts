/** Amounts of an invoice in tables. */
import type { Exact } from '../../../shared/exact';
import { showValue } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import type { Part, Row } from '../paper/model';
import type { InvoiceWords } from '../words';

export function moneyCell(amount: Exact, { env }: Job) {
  const { code } = env.money;
  return { text: showValue(amount, code, env), value: amount.toFixed(), unit: code };
}

/** A table of what each amount is for. */
export function amounts(
  name: string,
  what: string,
  rows: readonly Row[],
  words: InvoiceWords,
): Part {
  const columns = [
    { title: what, holds: 'text' as const },
    { title: words.amount, holds: 'number' as const },
  ];
  return { part: 'table', name, columns, rows };
}
