/** What is taken off the price before tax. */
import { phrase } from '../../../shared/phrase';
import type { Env, LineFacts } from '../resolve/env';
import { cents, difference, share, sum, type Term } from '../working/term';
import { allOfPrice } from './settings';

export interface Discount {
  readonly title: string;
  readonly line: LineFacts;
  /** The percentage it is of the price before discounts, where it is one. */
  readonly rate?: Term;
  readonly amount: Term;
}

/** Each of the price before any of them. */
export function discountsOff(gross: Term, env: Env): Discount[] {
  const { code, digits } = env.money;
  return allOfPrice(env, 'discount').map((line) => {
    const title = line.word('title') || phrase`Discount`;
    if (line.values.amount)
      return { title, line, amount: cents(title, line.term('amount', title), digits) };
    const rate = line.term('share', phrase`discount`);
    return {
      title,
      line,
      rate,
      amount: cents(title, share(phrase`discount`, code, rate, gross), digits),
    };
  });
}

export function lessDiscounts(gross: Term, discounts: readonly Discount[], env: Env): Term {
  if (!discounts.length) return gross;
  return difference(phrase`Price before tax`, env.money.code, gross, allDiscounts(discounts, env));
}

export function allDiscounts(discounts: readonly Discount[], env: Env): Term {
  const amounts = discounts.map((d) => d.amount);
  return amounts.length === 1 ? amounts[0]! : sum(phrase`Discounts`, env.money.code, amounts);
}
