/** Discounts that leave nothing of the price, or less than no job is done for. */
import { phrase } from '../../../../shared/phrase';
import { allDiscounts } from '../../price/discount';
import { step } from '../../price/settings';
import type { JobPrice } from '../../price/total';
import type { Env } from '../../resolve/env';
import { showTerm } from '../../views/show';
import { type Remark, takenOut } from '../remark';

export function discountOver({ discounts, gross, price }: JobPrice, env: Env): Remark[] {
  const last = discounts.at(-1);
  if (!last || gross.gaps.length) return [];
  const common = { origin: last.line.origin, ways: [takenOut(last.line)] };
  const off = phrase`${showTerm(allDiscounts(discounts, env), env)} off a price of ${showTerm(gross, env)}`;
  if (price.value.isNegative() && !price.value.isZero()) {
    const message = phrase`The discounts come to more than the price: ${off}. Make them smaller.`;
    return [{ code: 'discount-over', severity: 'error', message, ...common }];
  }
  const least = step(env, 'least', 'least', phrase`least price`);
  if (least.gaps.length || price.value.gte(least.value)) return [];
  const message = phrase`This takes ${off}, and leaves ${showTerm(price, env)}: less than the least price of ${showTerm(least, env)}.`;
  return [{ code: 'discount-least', severity: 'warning', message, ...common }];
}
