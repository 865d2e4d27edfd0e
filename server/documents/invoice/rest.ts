/** What of an invoice is not paid to the firm now, and where it stands in the whole of the price. */
import { type Exact, HUNDRED, roundTo, ZERO } from '../../../shared/exact';
import { heldPrice } from '../../engine/life/agreed';
import { recordOf } from '../../engine/life/record';
import { showTerm } from '../../engine/views/show';
import { fromAll, fromLines, fromTerms } from '../from';
import type { From, Part, Row } from '../paper/model';
import type { InvoiceWords } from '../words';
import { amounts, moneyCell } from './amounts';
import type { Made } from './make';

function together(...parts: readonly Part[]): Part {
  return { part: 'together', parts };
}

/** What of it the client does not pay to the firm now, one after the other: so that one sum stands at the end. */
export function notNow(made: Made, words: InvoiceWords): Part[] {
  const { due } = made.invoice.totals;
  const off = deductions(made, words);
  const back = held(made, words, due.sub(off.sum));
  if (!off.rows.length && !back.length) return [];
  const name = off.rows.length ? 'deducted' : 'held';
  return [together(amounts(name, words.due, [...off.rows, ...back], words))];
}

/**
 * What the client keeps back for the tax office. An invoice of a part of the price bears as much of it as it is of the
 * whole, reckoned on running totals: all invoices of a job together bear all of it, to the penny.
 */
function deductions(made: Made, words: InvoiceWords) {
  const { invoice, job } = made;
  const { env, price } = job;
  if (!price.deductions.length) return { rows: [], sum: ZERO };
  const parts = price.deductions.map((d) => ({
    ...d,
    base: { ...d.base, value: partOf(d.base.value, made) },
    off: partOf(d.amount.value, made),
  }));
  const off = parts.map(({ title, rate, base, line, off: amount }) => ({
    cells: [
      { text: words.deducted(title, showTerm(rate, env), showTerm(base, env)) },
      moneyCell(amount.neg(), job),
    ],
    from: fromLines(line),
  }));
  const sum = parts.reduce((all, d) => all.add(d.off), ZERO);
  const left = moneyCell(invoice.totals.due.sub(sum), job);
  const { from } = made.billed;
  const rows: Row[] = [
    ...off,
    { cells: [{ text: words.afterDeducted }, left], role: 'total', from },
  ];
  return { rows, sum };
}

function partOf(all: Exact, { billed: { before, amount, whole }, invoice }: Made): Exact {
  const upTo = (sum: Exact) =>
    whole.isZero() ? ZERO : roundTo(all.mul(sum).div(whole), invoice.digits);
  return upTo(before.add(amount)).sub(upTo(before));
}

/** What the client holds back of this invoice for a while, where the price says so: a part of all of it. */
function held({ invoice, job, billed }: Made, words: InvoiceWords, left: Exact): Row[] {
  const { retention } = job.price;
  if (!retention) return [];
  const back = roundTo(invoice.totals.due.mul(retention.rate.value).div(HUNDRED), invoice.digits);
  return [
    { cells: [{ text: words.held }, moneyCell(back.neg(), job)], from: fromLines(retention.line) },
    {
      cells: [{ text: words.now }, moneyCell(left.sub(back), job)],
      role: 'total',
      from: billed.from,
    },
  ];
}

/** Where this invoice stands in the whole of the price; nothing where it is the whole. */
export function soFar({ billed, job }: Made, words: InvoiceWords): Part[] {
  const { amount, before, whole, from } = billed;
  if (before.isZero() && amount.eq(whole)) return [];
  const price = fromTerms(heldPrice(job));
  const earlier = fromLines(...recordOf(job).invoiced.map(({ line }) => line));
  const rows: (readonly [string, Exact, From | undefined])[] = [
    [words.whole, whole, price],
    ...(before.isZero() ? [] : [[words.before, before, earlier] as const]),
    [words.due, amount, from],
    [words.left, whole.sub(before).sub(amount), fromAll(price, earlier)],
  ];
  const table = amounts(
    'so-far',
    words.what,
    rows.map(([label, value, of]) => ({
      cells: [{ text: label }, moneyCell(value, job)],
      from: of,
    })),
    words,
  );
  return [together({ part: 'heading', level: 2, text: words.soFar }, table)];
}
