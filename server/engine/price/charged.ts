/** From what a job costs to what the client is charged: the price, its tax, when it is paid, and what it leaves. */
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import type { Env } from '../resolve/env';
import { difference, named, sum, type Term } from '../working/term';
import { type Agreed, agreedBeforeTax, agreedIn } from './agreed';
import { type Deduction, deductionsFrom } from './deducted';
import { allDiscounts, type Discount, discountsOff, lessDiscounts } from './discount';
import { figuresOfLeft, type Left, leftOf } from './leaves';
import { type Marked, markedUp } from './marked';
import { type PriceRounding, roundingsOf } from './rounding';
import { step } from './settings';
import { type Retention, type Stage, stagedOf } from './stages';
import { type Paid, type Pieces, type Portion, portionsOf } from './tax/portions';
import { rateOfAll, type Taxed, type TaxGroup, taxesOn } from './tax/taxes';

export interface Charged extends Left {
  /** Before tax and before discounts. */
  readonly gross: Term;
  /** Shown on paper, and off the price before tax. None of a price that is agreed. */
  readonly discounts: readonly Discount[];
  /** Before tax. */
  readonly price: Term;
  /** Rows of tax; their bases add up to the price before tax. */
  readonly taxes: readonly TaxGroup[];
  /** All of them together. */
  readonly tax: Term;
  /** What the first of them is called. */
  readonly taxName: string;
  /** Makes up for a penny that an agreed price with tax is more or less than its parts. */
  readonly rounding?: Term;
  /** What the client pays. */
  readonly total: Term;
  readonly stages: readonly Stage[];
  readonly retention?: Retention;
  readonly deductions: readonly Deduction[];
  readonly agreed?: Agreed;
  /** What the price before tax would have been, and with tax: of one that is agreed. */
  readonly asked?: { readonly price: Term; readonly total: Term };
  /** Cost, contingency and overhead. */
  readonly spent: Term;
  readonly roundings: readonly PriceRounding[];
  readonly figures: readonly Figure[];
}

interface Bases {
  readonly cost: Term;
  readonly labour: Term;
  readonly materials: Term;
  readonly others: Term;
  /** Hours. */
  readonly paid: Term;
}

export function charged(bases: Bases, shared: Paid, pieces: Pieces | undefined, env: Env): Charged {
  const marked = markedUp(bases.cost, env);
  const portions = portionsOf(pieces, shared, env);
  const paying = priced(marked, portions, bases.cost, env);
  const { total, price } = paying;
  const left = leftOf(price, { ...bases, spent: marked.spent }, env);
  const deductions = deductionsFrom({ ...bases, net: price, total }, env);
  const all = {
    ...paying,
    ...left,
    ...stagedOf(total, env),
    deductions,
    spent: marked.spent,
    taxName: paying.taxes[0]!.name,
  };
  const to = paying.agreed ? undefined : step(env, 'round', 'to', phrase`rounded to`);
  return { ...all, roundings: roundingsOf(all, to, env), figures: figuresOf(all, marked, env) };
}

type Paying = Taxed &
  Pick<Charged, 'gross' | 'discounts' | 'price' | 'rounding' | 'total' | 'agreed' | 'asked'>;

function priced(marked: Marked, portions: readonly Portion[], cost: Term, env: Env): Paying {
  const { gross } = marked;
  const discounts = discountsOff(gross, env);
  const net = lessDiscounts(gross, discounts, env);
  const agreed = agreedIn(env);
  const worked = taxesOn(portions, { cost, gross, net }, env);
  if (!agreed) return { ...worked, gross, discounts, price: net, total: worked.withTax };
  const asked = {
    price: named(phrase`Asked for, before tax`, net),
    total: named(phrase`Asked for`, worked.withTax),
  };
  return { ...agreedOn(agreed, portions, cost, env), agreed, asked };
}

function agreedOn(
  agreed: Agreed,
  portions: readonly Portion[],
  cost: Term,
  env: Env,
): Omit<Paying, 'asked'> {
  const { code } = env.money;
  const price = agreedBeforeTax(agreed, rateOfAll(portions, cost), env);
  const taxed = taxesOn(portions, { cost, gross: price, net: price }, env);
  const common = { ...taxed, gross: price, discounts: [], price };
  if (!agreed.withTax) return { ...common, total: taxed.withTax };
  const off = difference(
    phrase`Rounding`,
    code,
    agreed.price,
    taxed.withTax,
    phrase`to the price agreed`,
  );
  // Where the parts hang on ranges, a penny may come and go.
  if (off.value.isZero() && !off.ranged) return { ...common, total: taxed.withTax };
  const total = sum(phrase`Price`, code, [price, taxed.tax, off]);
  return { ...common, rounding: off.value.isZero() ? undefined : off, total };
}

function figuresOf(
  all: Omit<Charged, 'roundings' | 'figures'>,
  marked: Marked,
  env: Env,
): Figure[] {
  const { discounts, gross, price, tax, rounding, total, asked, deductions, retention } = all;
  const code = env.money.code;
  return [
    ...marked.figures,
    ...(discounts.length
      ? [
          { key: 'gross', term: named(phrase`Price before discounts`, gross) },
          { key: 'discount', term: named(phrase`Discount`, allDiscounts(discounts, env)) },
        ]
      : []),
    { key: 'net', term: price },
    { key: 'tax', term: tax },
    ...(rounding ? [{ key: 'rounding', term: rounding }] : []),
    { key: 'price', term: total },
    ...(asked
      ? [
          { key: 'asked', term: asked.price },
          { key: 'asked-total', term: asked.total },
        ]
      : []),
    ...figuresOfLeft(all),
    ...(deductions.length
      ? [
          {
            key: 'deducted',
            term: sum(
              phrase`Deducted at source`,
              code,
              deductions.map((d) => d.amount),
            ),
          },
        ]
      : []),
    ...(retention ? [{ key: 'retention', term: retention.amount }] : []),
  ];
}
