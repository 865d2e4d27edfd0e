/** Which of a job’s invoices are open, and since when. */
import { type Exact, ZERO } from '../../../shared/exact';
import type { Taken } from './state';

/** What is to be paid, and the day it was asked for. */
export interface Charge {
  readonly date: string;
  readonly amount: Exact;
}

/**
 * Invoices by day, less what is held back of them: of the latest before it, then of those before that. What is released
 * is owed from that day on.
 */
export function charges(taken: readonly Taken[]): Charge[] {
  const found: Charge[] = [];
  // Places of those that something is left of: however many are held back, each is passed once.
  const left: number[] = [];
  for (const { kind, date, value } of taken) {
    if (kind === 'invoiced' || kind === 'released') {
      left.push(found.length);
      found.push({ date, amount: value });
    }
    if (kind === 'retained') holdBack(found, left, value, date);
  }
  return found;
}

function holdBack(found: Charge[], left: number[], held: Exact, date: string): void {
  let rest = held;
  for (let at = left.at(-1); at !== undefined && rest.gt(0); at = left.at(-1)) {
    const { amount } = found[at]!;
    const part = amount.lt(rest) ? amount : rest;
    found[at] = { ...found[at]!, amount: amount.sub(part) };
    rest = rest.sub(part);
    if (rest.gt(0) || part.eq(amount)) left.pop();
  }
  // Held back of an invoice that is still to come: it comes off the first of those.
  if (rest.gt(0)) found.push({ date, amount: rest.neg() });
}

/** What payments leave of them: they settle the oldest first (common practice). */
export function unpaid(all: readonly Charge[], paid: Exact): Charge[] {
  const less = all.reduce((sum, c) => (c.amount.lt(0) ? sum.sub(c.amount) : sum), paid);
  let left = less;
  return all.flatMap(({ date, amount }) => {
    if (amount.lte(0)) return [];
    const part = amount.lt(left) ? amount : left;
    left = left.sub(part);
    const open = amount.sub(part);
    return open.gt(ZERO) ? [{ date, amount: open }] : [];
  });
}
