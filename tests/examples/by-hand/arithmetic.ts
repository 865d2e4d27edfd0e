/** Plain arithmetic for checks by hand. Nothing here comes from the engine. */

/** Money to the cent, half away from zero. */
export function cents(amount: number): number {
  return Math.round(amount * 100 + 1e-6) / 100;
}

/** Up to a whole number of steps. */
export function up(amount: number, step = 1): number {
  return Math.ceil(amount / step - 1e-9) * step;
}

export function nearest(amount: number, step: number): number {
  return Math.round(amount / step + 1e-9) * step;
}

/** What one course of a one-brick wall takes. */
export interface Course {
  /** Half bricks along the wall. */
  readonly halves: number;
  readonly wholes: number;
  readonly closers: number;
}

/**
 * A course of a one-brick wall as it is read off its face, a letter a piece: S a stretcher (two bricks,
 * one behind the other), H a header (one brick through), c a queen closer (half a header wide).
 */
export function course(face: string): Course {
  const count = (letter: string) => face.split(letter).length - 1;
  const [s, h, c] = [count('S'), count('H'), count('c')];
  if (s + h + c !== face.length) throw new Error(`${face} has other pieces`);
  return { halves: 2 * s + h + c / 2, wholes: 2 * s + h, closers: c };
}

/** From cost to what the client pays, each step to the cent. */
export interface Terms {
  readonly overhead: number;
  readonly profit: number;
  readonly round: number;
  readonly tax: number;
  /** Share of the first of two stages. */
  readonly deposit: number;
}

export function priceUp(cost: number, terms: Terms): Record<string, number> {
  const overhead = cents(cost * terms.overhead);
  const profit = cents((cost + overhead) * terms.profit);
  const net = nearest(cost + overhead + profit, terms.round);
  const tax = cents(net * terms.tax);
  const price = cents(net + tax);
  const first = cents(price * terms.deposit);
  return {
    'job.cost': cost,
    'job.overhead': overhead,
    'job.profit': profit,
    'job.net': net,
    'job.tax': tax,
    'job.price': price,
    'stage.1': first,
    'stage.2': cents(price - first),
  };
}

/** What the price leaves when all is paid, what part of it that is, and wages and profit for each hour paid. */
export function withLeft(job: Record<string, number>): Record<string, number> {
  const leaves = cents(job['job.net']! - job['job.cost']! - job['job.overhead']!);
  const hours = job['job.paid'] ?? job['job.hours']!;
  return {
    ...job,
    'job.leaves': leaves,
    'job.leaves-share': nearest((100 * leaves) / job['job.net']!, 0.1),
    'job.earns': cents((job['job.labour']! + leaves) / hours),
  };
}

export const sum = (...amounts: number[]) => amounts.reduce((a, b) => a + b, 0);

/** An amount shared to the penny: all rounded down, and the pennies left over to those that lost most by it. */
export function shared(amount: number, weights: readonly number[]): number[] {
  const exact = weights.map((weight) => (amount * 100 * weight) / sum(...weights));
  const pence = exact.map((share) => Math.floor(share + 1e-9));
  const lost = exact.map((share, i) => ({ i, by: share - pence[i]! })).sort((a, b) => b.by - a.by);
  for (const { i } of lost.slice(0, Math.round(amount * 100 - sum(...pence))))
    pence[i] = pence[i]! + 1;
  return pence.map((share) => cents(share / 100));
}
