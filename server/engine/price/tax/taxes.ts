/** Tax on the price, once for all that bears the same (EN 16931, BR-CO-17): bases that add up to the price before tax. */

import { type Exact, ZERO } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { Env, LineFacts } from '../../resolve/env';
import { cents, counted, difference, share, sum, type Term } from '../../working/term';
import { documentTotals, type TaxCategory, taxOn } from '../document-totals';
import type { OtherCost } from '../others';
import type { Portion } from './portions';

/** What is taxed alike: a row of tax on a paper. */
export interface TaxGroup {
  readonly category: TaxCategory;
  /** As it is charged, in percent: nought where the client owes it, and where there is none. */
  readonly rate: Term;
  /** What it is called on paper: VAT. */
  readonly name: string;
  /** With its rate, for the firm itself. */
  readonly said: string;
  /** Why none is charged: its own line’s words, or those the country’s law asks for. */
  readonly reason: string;
  /** Before discounts; all of them add up to the price before discounts. */
  readonly gross: Term;
  /** Of the price before tax; all of them add up to it. */
  readonly base: Term;
  readonly tax: Term;
  /** Of a reverse charge: what the client owes the state, and at which rate. It is in no total. */
  readonly owed?: { readonly rate: Term; readonly tax: Term };
  /** The line that says so; nothing where no file says anything of tax. */
  readonly line?: LineFacts;
  /** Places of the pieces of work in the job’s list. */
  readonly works: readonly number[] | 'all';
  /** Costs with a tax line of their own. */
  readonly items: readonly OtherCost[];
}

export interface Taxed {
  readonly taxes: readonly TaxGroup[];
  readonly tax: Term;
  /** Price and tax. */
  readonly withTax: Term;
}

interface Amounts {
  readonly cost: Term;
  readonly gross: Term;
  /** Less discounts. */
  readonly net: Term;
}

export function taxesOn(portions: readonly Portion[], amounts: Amounts, env: Env): Taxed {
  const { code } = env.money;
  const gross = sharedOut(amounts.gross, portions, amounts.cost, env);
  const bases =
    amounts.net === amounts.gross ? gross : sharedOut(amounts.net, portions, amounts.cost, env);
  const taxes = portions.map((portion, i) => groupOf(portion, gross[i]!, bases[i]!, env));
  const [only] = taxes;
  const all = taxes.map((t) => t.tax);
  const tax = taxes.length === 1 ? only!.tax : sum(phrase`Tax`, code, all);
  const withTax = sum(phrase`Price`, code, [amounts.net, tax]);
  return { taxes, tax, withTax: { ...withTax, value: totalOf(taxes, env) } };
}

/** As a paper adds it up. */
function totalOf(taxes: readonly TaxGroup[], { money }: Env): Exact {
  const lines = taxes.map(({ category, rate, base }) => ({
    category,
    rate: rate.value,
    net: base.value,
  }));
  return documentTotals({ lines, digits: money.digits }).gross;
}

function groupOf({ kind, works, items }: Portion, gross: Term, base: Term, env: Env): TaxGroup {
  const { category, rate, owed, name, said, reason, line } = kind;
  const tax = taxTerm(phrase`Tax`, rate, base, env);
  const due = owed && { rate: owed, tax: taxTerm(said, owed, base, env) };
  return { category, rate, name, said, reason, gross, base, tax, owed: due, line, works, items };
}

function taxTerm(label: string, rate: Term, base: Term, { money }: Env): Term {
  const { code, digits } = money;
  const term = cents(
    label,
    share(phrase`tax`, code, rate, base),
    digits,
    phrase`half away from zero`,
  );
  return { ...term, value: taxOn(base.value, rate.value, digits) };
}

/** An amount shared out by cost: each part to the penny, and the last what the others leave. */
function sharedOut(amount: Term, portions: readonly Portion[], cost: Term, env: Env): Term[] {
  if (portions.length === 1) return [amount];
  const { code, digits } = env.money;
  const parts = portions.slice(0, -1).map(({ kind, cost: own }) => {
    const part = inProportion(amount, own!, cost, code);
    return cents(phrase`Of it, with ${kind.said}`, part, digits);
  });
  const last = difference(
    phrase`Of it, all else`,
    code,
    amount,
    sum(phrase`the others`, code, parts),
  );
  return [...parts, last];
}

/** As much of an amount as it costs of all that is paid for. */
function inProportion(amount: Term, own: Term, cost: Term, code: string): Term {
  const again = ([a, o, c]: readonly number[]) => (c ? (a! * o!) / c : 0);
  const value = cost.value.isZero() ? ZERO : amount.value.mul(own.value).div(cost.value);
  const note = phrase`as much of the price as of the cost`;
  return counted(phrase`share`, value, code, { args: [amount, own, cost], again, note });
}

/** What all of the price bears, in percent. */
export function rateOfAll(portions: readonly Portion[], cost: Term): Term {
  if (portions.length === 1) return portions[0]!.kind.rate;
  const args = portions.flatMap((p) => [p.cost!, p.kind.rate]);
  const again = ([all, ...parts]: readonly number[]) => {
    let sum = 0;
    for (let i = 0; i < parts.length; i += 2) sum += parts[i]! * parts[i + 1]!;
    return all ? sum / all : 0;
  };
  const borne = portions.reduce((s, p) => s.add(p.cost!.value.mul(p.kind.rate.value)), ZERO);
  const value = cost.value.isZero() ? ZERO : borne.div(cost.value);
  return counted(phrase`tax on all of it`, value, '%', { args: [cost, ...args], again });
}
