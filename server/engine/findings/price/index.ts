/** What there is to tell of a price: words that contradict each other, and prices that nobody would mean. */
import type { JobPrice } from '../../price/total';
import type { Env } from '../../resolve/env';
import type { Remark } from '../remark';
import { agreedLoss } from './agreed-loss';
import { deductionUnknown } from './deduction-unknown';
import { discountOver } from './discount-over';
import { marginOver } from './margin-over';
import { profitAndMargin } from './profit-and-margin';
import { retentionIdle } from './retention-idle';
import { reverseChargeWords } from './reverse-charge-words';
import { roundLarge } from './round-large';
import { stagesOff } from './stages-off';

export function priceRemarks(price: JobPrice, env: Env): Remark[] {
  return [
    ...profitAndMargin(env),
    ...marginOver(env),
    ...discountOver(price, env),
    ...agreedLoss(price, env),
    ...deductionUnknown(env),
    ...reverseChargeWords(price),
    ...retentionIdle(price, env),
    ...roundLarge(price, env),
    ...stagesOff(price, env),
  ];
}
