/**
 * What an invoice asks for, line by line and tax by tax. A part of the price takes of every tax as much as it is of the
 * whole, reckoned on running totals: so the invoices of a job add up to what was agreed, to the penny.
 */
import { type Exact, roundTo, ZERO } from '../../../shared/exact';
import { fromMinor, shareOut } from '../../../shared/money';
import { documentTotals } from '../../engine/price/document-totals';
import type { TaxGroup as PriceTax } from '../../engine/price/tax/taxes';
import type { Job } from '../../engine/workspace/job';
import { fromBlock, fromLines, fromTerms } from '../from';
import type { From } from '../paper/model';
import type { Told } from '../quote/money';
import { alsoIncluded } from '../quote/work';
import type { Billed } from './billed';
import { sellerOf } from './parties';
import type { Allowance, Invoice, InvoiceLine, Tax, TaxGroup } from './types';

type Money = Pick<Invoice, 'lines' | 'allowances' | 'taxes' | 'totals'>;

/** @param titles of the pieces of work and what is said of them, in their order */
export interface Sold {
  readonly title: string;
  readonly says: readonly Told[];
  readonly from?: From;
}

export function moneyOf(job: Job, billed: Billed, sold: readonly Sold[], part: string): Money {
  const all = billed.amount.eq(billed.whole) && billed.whole.eq(job.price.total.value);
  const lines = all ? wholeLines(job, sold, part) : partLines(job, billed, part);
  const allowances = all ? discounts(job) : [];
  return totalled(job, billed, lines, allowances);
}

/** Every piece of work at its part of the price, before what is taken off. */
function wholeLines(job: Job, sold: readonly Sold[], part: string): InvoiceLine[] {
  const works = job.works.map((work, i): InvoiceLine => {
    const { gross, tax } = job.shareOf(work);
    const { title, says, from } = sold[i]!;
    return {
      name: title,
      says: says.map(({ text }) => text),
      from,
      saysFrom: says.map((each) => each.from),
      net: gross.value,
      tax: taxOf(tax, job),
    };
  });
  const items = job.itemShares.map(({ item, gross, tax }) => ({
    name: item.title,
    says: [],
    from: fromBlock(item.block),
    net: gross.value,
    tax: taxOf(tax, job),
  }));
  return [...works, ...items, ...(works.length ? [] : restLines(job, part))];
}

/** Where there is no work to bear it, what no tax line of its own takes out of the price is a line by itself. */
function restLines(job: Job, part: string): InvoiceLine[] {
  const apart = job.itemShares;
  const others = alsoIncluded(job).filter(
    ({ title }) => !apart.some(({ item }) => item.title === title),
  );
  const name = others.map(({ title }) => title).join(', ') || part;
  return job.price.taxes.flatMap((tax) => {
    const own = apart.filter((each) => each.tax === tax);
    const net = own.reduce((left, { gross }) => left.sub(gross.value), tax.gross.value);
    return net.isZero()
      ? []
      : [{ name, says: [], from: fromTerms(tax.gross), net, tax: taxOf(tax, job) }];
  });
}

/** Off each tax as much as its base is less than its parts were. */
function discounts(job: Job): Allowance[] {
  const { price } = job;
  const reason = price.discounts.map((d) => d.title).join(', ');
  const from = fromLines(...price.discounts.map((d) => d.line));
  return price.taxes.flatMap((tax) => {
    const amount = tax.gross.value.sub(tax.base.value);
    return amount.gt(0) ? [{ reason, from, amount, tax: taxOf(tax, job) }] : [];
  });
}

/** A line for each tax: the stage, of that part of the work. */
function partLines(job: Job, { amount, before, whole, from }: Billed, name: string): InvoiceLine[] {
  const { price, env } = job;
  const { digits } = env.money;
  const held = basesOf(job, whole);
  const upTo = (base: Exact, sum: Exact) =>
    whole.isZero() ? ZERO : roundTo(base.mul(sum).div(whole), digits);
  return price.taxes.map((tax, i) => {
    const base = held[i]!;
    const net = upTo(base, before.add(amount)).sub(upTo(base, before));
    return { name, says: [], from, net, tax: taxOf(tax, job) };
  });
}

/** What each tax is on, of the price that the client holds: as of the price now, brought to the other total. */
function basesOf({ price, env }: Job, whole: Exact): Exact[] {
  const now = price.total.value;
  const bases = price.taxes.map((tax) => tax.base.value);
  if (now.eq(whole) || now.isZero()) return bases;
  const { digits } = env.money;
  const net = roundTo(price.price.value.mul(whole).div(now), digits);
  const weights = bases.map((base) => base.toNumber());
  return shareOut(net, weights, digits).map((minor) => fromMinor(minor, digits));
}

/** Who has no tax number is outside the tax altogether (BR-O-02); who has one is exempt (BR-E-02). */
function taxOf({ category, rate }: PriceTax, job: Job): Tax {
  const outside = category === 'E' && !sellerOf(job).taxNumber;
  return { category: outside ? 'O' : category, rate: rate.value };
}

function totalled(
  job: Job,
  { amount }: Billed,
  lines: readonly InvoiceLine[],
  allowances: readonly Allowance[],
): Money {
  const flat = (net: Exact, { category, rate }: Tax) => ({ net, category, rate });
  const { digits } = job.env.money;
  const totals = documentTotals({
    lines: lines.map((line) => flat(line.net, line.tax)),
    allowances: allowances.map((a) => flat(a.amount, a.tax)),
    digits,
  });
  const taxes = totals.taxes.map(({ category, rate, base, tax }): TaxGroup => {
    const reason = reasonFor(job, { category, rate });
    return { category, rate, base, amount: tax, reason };
  });
  const { lines: net, allowances: off } = totals;
  return {
    lines,
    allowances,
    taxes,
    totals: {
      lines: net,
      allowances: off,
      net: totals.net,
      tax: totals.tax,
      gross: totals.gross,
      prepaid: ZERO,
      rounding: amount.sub(totals.gross),
      due: amount,
    },
  };
}

function reasonFor(job: Job, { category, rate }: Tax): string {
  const of = job.price.taxes.filter(
    (t) => taxOf(t, job).category === category && t.rate.value.eq(rate),
  );
  return [...new Set(of.map((t) => t.reason).filter(Boolean))].join('; ');
}
