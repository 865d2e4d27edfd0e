/** Money shared out so that the parts add up to the whole, to the last penny. */
import { Decimal, type Exact, exact, roundTo } from './exact';

/**
 * Shares of totals by weights, in whole units of their last digit (`digits` after the point): pence of pounds.
 * Every share is the difference of two rounded running totals, so the shares sum to the total (itself
 * rounded) whatever the weights; with all weights zero they are equal. No weights, no shares.
 */
export class Shares {
  /** Running totals of the weights, from nothing to all. */
  private readonly until: Float64Array;

  constructor(weights: readonly number[]) {
    this.until = running(weights.map((w) => (Number.isFinite(w) && w > 0 ? w : 0)));
    if (!(this.until[weights.length]! > 0)) this.until = running(weights.map(() => 1));
  }

  /** The share of each weight, by its place. One costs the same however many there are. */
  of(total: Exact, digits: number): (at: number) => number {
    const end = roundTo(total, digits).mul(new Decimal(10).pow(digits)).toNumber();
    const last = this.until.length - 1;
    const whole = this.until[last]!;
    const upTo = (i: number) =>
      i === last ? end : i === 0 ? 0 : Math.round((end * this.until[i]!) / whole);
    return (at) => upTo(at + 1) - upTo(at);
  }
}

function running(weights: readonly number[]): Float64Array {
  const until = new Float64Array(weights.length + 1);
  weights.forEach((weight, i) => {
    until[i + 1] = until[i]! + weight;
  });
  return until;
}

/** All of {@link Shares}, in order. */
export function shareOut(total: Exact, weights: readonly number[], digits: number): number[] {
  const share = new Shares(weights).of(total, digits);
  return weights.map((_, at) => share(at));
}

/** Whole units of the last digit as an amount: 1234 pence are 12.34. */
export function fromMinor(units: number, digits: number): Exact {
  return exact(units).div(new Decimal(10).pow(digits));
}
