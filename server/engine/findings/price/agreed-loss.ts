/** A price that is agreed, and does not pay for the work. */
import { phrase } from '../../../../shared/phrase';
import type { JobPrice } from '../../price/total';
import type { Env } from '../../resolve/env';
import { showTerm, showValue } from '../../views/show';
import { cents, type Term } from '../../working/term';
import { type Remark, rewrite } from '../remark';
import { written } from './ways';

export function agreedLoss(price: JobPrice, env: Env): Remark[] {
  const { agreed, asked, leaves, spent } = price;
  if (!agreed || !asked || leaves.gaps.length || leaves.value.gte(0)) return [];
  const loss = showValue(leaves.value.neg(), env.money.code, env);
  const message = phrase`The price agreed leaves a loss of ${loss}: cost and overhead come to ${showTerm(spent, env)}. Worked out, it would be ${showTerm(asked.price, env)} before tax.`;
  const would = agreed.withTax ? asked.total : asked.price;
  const ways =
    would.value.gt(agreed.price.value) && asked.price.value.gte(spent.value)
      ? [
          {
            title: phrase`Agree on ${showTerm(would, env)}`,
            edits: [rewrite(agreed.line.at('price'), toPennies(would, env))],
          },
        ]
      : [];
  const origin = agreed.line.origin;
  return [{ code: 'agreed-loss', severity: 'warning', origin, message, ways }];
}

function toPennies(price: Term, env: Env): string {
  return written(cents('', price, env.money.digits), env);
}
