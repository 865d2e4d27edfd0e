/** What of an invoice is not paid to the firm now, and where it stands in the whole of the price. */
import { type Exact, HUNDRED, roundTo } from '../../../shared/exact';
import { showTerm } from '../../engine/views/show';
import type { Part, Row } from '../paper/model';
import type { InvoiceWords } from '../words';
import { amounts, moneyCell } from './amounts';
import type { Made } from './make';

function together(...parts: readonly Part[]): Part {
  return { part: 'together', parts };
}

/** What the client keeps back for the tax office: of all of the work only, as what a stage holds of labour nobody says. */
export function deductions({ invoice, billed, job }: Made, words: InvoiceWords): Part[] {
  const { env, price } = job;
  if (!price.deductions.length || !billed.amount.eq(billed.whole)) return [];
  const off = price.deductions.map(({ title, rate, base, amount }) => ({
    cells: [
      { text: words.deducted(title, showTerm(rate, env), showTerm(base, env)) },
      moneyCell(amount.value.neg(), job),
    ],
  }));
  const left = price.deductions.reduce((sum, d) => sum.sub(d.amount.value), invoice.totals.due);
  const rows: Row[] = [
    ...off,
    { cells: [{ text: words.afterDeducted }, moneyCell(left, job)], role: 'total' },
  ];
  return [together(amounts('deducted', words.due, rows, words))];
}

/** What the client holds back of this invoice for a while, where the price says so. */
export function held({ invoice, job }: Made, words: InvoiceWords): Part[] {
  const { retention } = job.price;
  if (!retention) return [];
  const { due } = invoice.totals;
  const back = roundTo(due.mul(retention.rate.value).div(HUNDRED), invoice.digits);
  const rows: Row[] = [
    { cells: [{ text: words.held }, moneyCell(back.neg(), job)] },
    { cells: [{ text: words.now }, moneyCell(due.sub(back), job)], role: 'total' },
  ];
  return [together(amounts('held', words.due, rows, words))];
}

/** Where this invoice stands in the whole of the price; nothing where it is the whole. */
export function soFar({ billed, job }: Made, words: InvoiceWords): Part[] {
  const { amount, before, whole } = billed;
  if (before.isZero() && amount.eq(whole)) return [];
  const rows: (readonly [string, Exact])[] = [
    [words.whole, whole],
    ...(before.isZero() ? [] : [[words.before, before] as const]),
    [words.due, amount],
    [words.left, whole.sub(before).sub(amount)],
  ];
  const table = amounts(
    'so-far',
    words.what,
    rows.map(([label, value]) => ({ cells: [{ text: label }, moneyCell(value, job)] })),
    words,
  );
  return [together({ part: 'heading', level: 2, text: words.soFar }, table)];
}
