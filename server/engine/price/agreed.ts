/** A price that is agreed, whatever the work comes to: it is worked backwards from there. */
import { phrase } from '../../../shared/phrase';
import type { Env, LineFacts } from '../resolve/env';
import { cents, counted, named, sum, type Term, wholeOf } from '../working/term';
import { ofPrice } from './settings';

export interface Agreed {
  readonly line: LineFacts;
  readonly withTax: boolean;
  /** As it was agreed. */
  readonly price: Term;
}

export function agreedIn(env: Env): Agreed | undefined {
  const line = ofPrice(env, 'agreed');
  if (!line?.values.price) return undefined;
  const withTax = line.word('with') === 'tax';
  return { line, withTax, price: line.term('price', phrase`agreed price`) };
}

/** Before tax. `rate` is what all of the price bears, in percent. */
export function agreedBeforeTax({ withTax, price }: Agreed, rate: Term, env: Env): Term {
  const { code, digits } = env.money;
  const label = phrase`Price before tax`;
  if (!withTax) return cents(label, named(phrase`agreed price`, price), digits, phrase`as agreed`);
  const all = sum(phrase`the price with tax`, '%', [counted(phrase`before tax`, 100, '%'), rate]);
  return cents(
    label,
    wholeOf(phrase`agreed with tax`, code, price, all),
    digits,
    phrase`agreed with tax`,
  );
}
