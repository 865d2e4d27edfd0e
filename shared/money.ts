/** Money shared out so that the parts add up to the whole, to the last penny. */
import { Decimal, type Exact, exact, roundTo } from './exact';

/**
 * Shares `total` by weights, in whole units of its last digit (`digits` after the point): pence of pounds.
 * Every share is the difference of two rounded running totals, so the shares sum to the total (itself
 * rounded) whatever the weights; with all weights zero they are equal. No weights, no shares.
 */
export function shareOut(total: Exact, weights: readonly number[], digits: number): number[] {
  const good = weights.map((w) => (Number.isFinite(w) && w > 0 ? w : 0));
  const all = good.reduce((sum, w) => sum + w, 0);
  const fair = all > 0 ? good : weights.map(() => 1);
  const whole = all > 0 ? all : weights.length;
  const end = roundTo(total, digits).mul(new Decimal(10).pow(digits)).toNumber();
  let running = 0;
  let before = 0;
  return fair.map((weight, i) => {
    running += weight;
    const until = i === fair.length - 1 ? end : Math.round((end * running) / whole);
    const share = until - before;
    before = until;
    return share;
  });
}

/** Whole units of the last digit as an amount: 1234 pence are 12.34. */
export function fromMinor(units: number, digits: number): Exact {
  return exact(units).div(new Decimal(10).pow(digits));
}
