/** Money shared out so that the parts add up to the whole, to the last penny. */
import { type Exact, exact, roundTo, ZERO } from './exact';

/**
 * Shares `total` by weights, each share with `digits` after the point. Every share is the difference of two
 * rounded running totals, so the shares sum to the total (itself rounded) whatever the weights; with all
 * weights zero the shares are equal. No weights, no shares.
 */
export function shareOut(total: Exact, weights: readonly number[], digits: number): Exact[] {
  const good = weights.map((w) => (Number.isFinite(w) && w > 0 ? w : 0));
  const all = good.reduce((sum, w) => sum + w, 0);
  const fair = all > 0 ? good : weights.map(() => 1);
  const whole = all > 0 ? all : weights.length;
  const end = roundTo(total, digits);
  let running = 0;
  let before = ZERO;
  return fair.map((weight, i) => {
    running += weight;
    const until = i === fair.length - 1 ? end : roundTo(end.mul(exact(running / whole)), digits);
    const share = until.sub(before);
    before = until;
    return share;
  });
}
