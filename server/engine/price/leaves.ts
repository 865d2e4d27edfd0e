/** What a price leaves the firm, and what it earns for each hour. */

import { roundTo, ZERO } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import type { Env } from '../resolve/env';
import { cents, counted, difference, quotient, sum, type Term } from '../working/term';

interface Spent {
  /** Cost, contingency and overhead. */
  readonly spent: Term;
  readonly labour: Term;
  /** Hours paid, of all of the gang. */
  readonly paid: Term;
}

export interface Left {
  /** Profit that is left of the price before tax: less than nothing is a loss. */
  readonly leaves: Term;
  /** The same as a part of the price: its margin. */
  readonly margin: Term;
  /** Wages and profit for each hour paid; nothing where no hour is worked. */
  readonly earns?: Term;
}

export function leftOf(net: Term, { spent, labour, paid }: Spent, env: Env): Left {
  const { code, digits } = env.money;
  const leaves = difference(phrase`Profit it leaves`, code, net, spent);
  const margin = counted(
    phrase`Profit it leaves, of the price before tax`,
    percent(leaves, net),
    '%',
    {
      args: [leaves, net],
      note: phrase`in a hundred of the price before tax, to a tenth`,
      again: ([left, all]) => (all ? (100 * left!) / all : 0),
    },
  );
  if (paid.value.isZero() && !paid.ranged) return { leaves, margin };
  const earned = sum(phrase`wages and profit`, code, [labour, leaves]);
  const hourly = quotient(phrase`earned an hour`, code, earned, paid);
  return { leaves, margin, earns: cents(phrase`Earned for each hour paid`, hourly, digits) };
}

function percent(of: Term, all: Term) {
  return all.value.isZero() ? ZERO : roundTo(of.value.div(all.value).mul(100), 1);
}

export function figuresOfLeft({ leaves, margin, earns }: Left): Figure[] {
  return [
    { key: 'leaves', term: leaves },
    { key: 'leaves-share', term: margin },
    ...(earns ? [{ key: 'earns', term: earns }] : []),
  ];
}
