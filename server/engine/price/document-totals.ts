/**
 * What a paper that charges comes to, by the arithmetic of EN 16931 (business rules BR-CO-10 to BR-CO-17): sums of its
 * lines, what is taken off and put on, tax once for each category and rate, and what is left to pay. Plain exact numbers;
 * the price of a job goes through it too.
 */
import { type Exact, HUNDRED, roundTo, ZERO } from '../../../shared/exact';

/** Of UNCL 5305: charged, at nought, exempt, owed by the client (reverse charge), outside the tax. */
export type TaxCategory = 'S' | 'Z' | 'E' | 'AE' | 'O';

/** `rate` is in percent, as it is charged: nought of a reverse charge. */
export interface TaxRate {
  readonly category: TaxCategory;
  readonly rate: Exact;
}

/** A line, an allowance or a charge: before tax, in the digits of its currency. */
export interface TaxedAmount extends TaxRate {
  readonly net: Exact;
}

export interface DocumentParts {
  readonly lines: readonly TaxedAmount[];
  /** Taken off the whole: discounts. */
  readonly allowances?: readonly TaxedAmount[];
  /** Put on the whole. */
  readonly charges?: readonly TaxedAmount[];
  readonly prepaid?: Exact;
  /** Makes up for a penny between what was agreed and what the tax comes to. */
  readonly rounding?: Exact;
  /** After the point, of the currency. */
  readonly digits: number;
}

export interface TaxSum extends TaxRate {
  readonly base: Exact;
  readonly tax: Exact;
}

export interface DocumentTotals {
  /** BT-106 */
  readonly lines: Exact;
  /** BT-107 */
  readonly allowances: Exact;
  /** BT-108 */
  readonly charges: Exact;
  /** BT-109 */
  readonly net: Exact;
  /** In the order in which each is first met. */
  readonly taxes: readonly TaxSum[];
  /** BT-110 */
  readonly tax: Exact;
  /** BT-112 */
  readonly gross: Exact;
  /** BT-115 */
  readonly due: Exact;
}

/** To so many digits after the point. */
export type Rounding = (value: Exact, digits: number) => Exact;

/** @param round half away from zero, as EN 16931 wants it; a test rounds otherwise */
export function documentTotals(parts: DocumentParts, round: Rounding = roundTo): DocumentTotals {
  const { lines, allowances = [], charges = [], digits } = parts;
  const taxes = [...basesOf(lines, allowances, charges).values()].map((group) => ({
    ...group,
    tax: taxOn(group.base, group.rate, digits, round),
  }));
  const net = total(lines).sub(total(allowances)).add(total(charges));
  const tax = taxes.reduce((sum, group) => sum.add(group.tax), ZERO);
  const gross = net.add(tax);
  return {
    lines: total(lines),
    allowances: total(allowances),
    charges: total(charges),
    net,
    taxes,
    tax,
    gross,
    due: gross.sub(parts.prepaid ?? ZERO).add(parts.rounding ?? ZERO),
  };
}

/** BR-CO-17: once for a category and rate, on all of its base. */
export function taxOn(base: Exact, rate: Exact, digits: number, round: Rounding = roundTo): Exact {
  return round(base.mul(rate).div(HUNDRED), digits);
}

function basesOf(
  lines: readonly TaxedAmount[],
  allowances: readonly TaxedAmount[],
  charges: readonly TaxedAmount[],
): Map<string, TaxRate & { readonly base: Exact }> {
  const bases = new Map<string, TaxRate & { readonly base: Exact }>();
  const take = ({ category, rate }: TaxRate, amount: Exact) => {
    const key = `${category} ${rate.toFixed()}`;
    const base = bases.get(key)?.base ?? ZERO;
    bases.set(key, { category, rate, base: base.add(amount) });
  };
  for (const line of lines) take(line, line.net);
  for (const allowance of allowances) take(allowance, allowance.net.neg());
  for (const charge of charges) take(charge, charge.net);
  return bases;
}

function total(amounts: readonly TaxedAmount[]): Exact {
  return amounts.reduce((sum, amount) => sum.add(amount.net), ZERO);
}
