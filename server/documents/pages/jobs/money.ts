/** What jobs were invoiced and paid, in all and by the quarter. */
import type { Exact } from '../../../../shared/exact';
import type { QuarterRow, Turnover } from '../../../engine/firm/turnover';
import { rowOf, tableOf, tableUnder } from '../../cells';
import type { Part } from '../../paper/model';
import { lastDayOf } from '../../words/dates';
import { money, type Showing } from './showing';

export function paying(to: Showing): Part[] {
  const { of, words } = to;
  if (of.invoiced.isZero() && of.paid.isZero()) return [];
  const rows: [string, Exact][] = [
    [words.invoiced, of.invoiced],
    [words.paid, of.paid],
    ...(of.held.isZero() ? [] : [[words.held, of.held] as [string, Exact]]),
    [words.owed, of.owed],
  ];
  const table = tableOf(
    'paid',
    [words.what, words.amount],
    rows.map(([label, amount]) => rowOf(label, money(amount, to))),
  );
  return tableUnder(words.money, table);
}

export function turnover(title: string, which: (row: QuarterRow) => Turnover, to: Showing): Part[] {
  const { of, words, date } = to;
  const some = of.quarters.filter((row) => !which(row).gross.isZero());
  const unknown = some.some((row) => !which(row).unknown.isZero());
  const heads = [words.quarter, words.beforeTax, words.tax, words.withTax];
  const rows = some.map((row) => {
    const { net, tax, gross, unknown: open } = which(row);
    const last = unknown ? [open.isZero() ? '' : money(open, to)] : [];
    const amounts = [net, tax, gross].map((amount) => money(amount, to));
    return rowOf(
      words.fromTo(date(`${row.from}-01`), date(lastDayOf(row.to))),
      ...amounts,
      ...last,
    );
  });
  return tableUnder(title, tableOf(title, unknown ? [...heads, words.unknownTax] : heads, rows));
}
