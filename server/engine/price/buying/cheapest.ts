/**
 * The cheapest set of whole packs that covers an amount. Exact: amounts and prices are whole numbers of their
 * smallest part, and nothing is compared in floating point.
 */
import { Decimal, type Exact } from '../../../../shared/exact';

/** One way that a thing is packed: how much is in it, and what it costs. */
export interface PackOffer {
  readonly content: Exact;
  readonly price: Exact;
}

/** How many of each offer, in the order they were given. */
export type Packs = readonly number[];

/** Sets looked at before the search makes do with the best so far: a guard against absurd lists, never met by real ones. */
const MOST_LOOKED_AT = 10_000;

/** As many decimals of an amount as count: a billionth of a kilogram over is the arithmetic’s, not another bag. */
const DECIMALS = 9;

/** More packs than this of one kind and the number itself is nonsense. */
const MOST_PACKS = 1e12;

interface Offer {
  readonly at: number;
  readonly content: bigint;
  readonly price: bigint;
}

interface Found {
  readonly cost: bigint;
  readonly over: bigint;
  readonly packs: bigint;
  readonly counts: readonly bigint[];
}

/**
 * Least cost; of equals the least left over, then the fewest packs. Offers that hold nothing are passed over.
 * @returns nothing where no offer holds anything, or where the amount is past all sense
 */
export function cheapestPacks(need: Exact, offers: readonly PackOffer[]): Packs | undefined {
  const usable = usableOf(offers);
  const best = usable[0];
  if (!best || !need.isFinite()) return undefined;
  const wanted = whole(Decimal.max(0, need));
  if (wanted / best.content > BigInt(MOST_PACKS)) return undefined;
  const found = new Search(usable).cover(wanted);
  const counts = offers.map(() => 0);
  for (const [i, offer] of usable.entries()) counts[offer.at] = Number(found.counts[i]);
  return counts;
}

/** The dearest by content last; of those as dear the larger first. Of two alike only the first is ever bought. */
function usableOf(offers: readonly PackOffer[]): Offer[] {
  const all = offers.flatMap(({ content, price }, at) =>
    content.isFinite() && price.isFinite() && content.gt(0) && price.gte(0)
      ? [{ at, content: whole(content), price: whole(price) }]
      : [],
  );
  const some = all.filter((o) => o.content > 0n);
  return some
    .sort((a, b) => {
      const dearer = a.price * b.content - b.price * a.content;
      return compare(dearer, 0n) || compare(b.content, a.content) || a.at - b.at;
    })
    .filter((o, i, sorted) => {
      const before = sorted[i - 1];
      return before?.content !== o.content || before.price !== o.price;
    });
}

function whole(value: Exact): bigint {
  return BigInt(
    value
      .toDecimalPlaces(DECIMALS)
      .mul(10 ** DECIMALS)
      .toFixed(0),
  );
}

function compare(a: bigint, b: bigint): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Goes through the numbers of every pack but the one with the most for its money, which covers the rest. A set
 * is given up as soon as it costs more than the best even if the rest could be bought by the gram at the best rate.
 *
 * No set need hold more others than `most`: among as many packs as the best holds parts (of the greatest common
 * part of all contents) some add up to a whole number of best packs, which cost no more.
 */
class Search {
  private found: Found | undefined;
  private looked = 0;
  private readonly best: Offer;
  private readonly others: readonly Offer[];
  private readonly most: bigint;
  private readonly counts: bigint[];

  constructor(offers: readonly Offer[]) {
    [this.best, ...this.others] = offers as [Offer, ...Offer[]];
    const part = offers.reduce((a, o) => common(a, o.content), this.best.content);
    this.most = this.best.content / part - 1n;
    this.counts = this.others.map(() => 0n);
  }

  cover(need: bigint): Found {
    this.from(0, need, 0n, this.most);
    return this.found!;
  }

  /** Every number of the others from the `i`th on, once those before are chosen. */
  private from(i: number, left: bigint, paid: bigint, most: bigint): void {
    const offer = this.others[i];
    if (!offer) {
      this.finish(left, paid);
      return;
    }
    const enough = left > 0n ? up(left, offer.content) : 0n;
    const upTo = enough < most ? enough : most;
    for (let n = 0n; n <= upTo; n++) {
      const cost = paid + n * offer.price;
      const rest = left - n * offer.content;
      if (this.found && (this.looked >= MOST_LOOKED_AT || this.tooDear(rest, cost))) break;
      this.counts[i] = n;
      this.from(i + 1, rest, cost, most - n);
    }
    this.counts[i] = 0n;
  }

  /** Even at the best rate for what is left: ties are looked at, for what they leave over. */
  private tooDear(left: bigint, paid: bigint): boolean {
    const { content, price } = this.best;
    const rest = left > 0n ? left * price : 0n;
    return paid * content + rest > this.found!.cost * content;
  }

  private finish(left: bigint, paid: bigint): void {
    this.looked += 1;
    const best = left > 0n ? up(left, this.best.content) : 0n;
    const cost = paid + best * this.best.price;
    if (this.found && cost > this.found.cost) return;
    const over = best * this.best.content - left;
    const packs = this.counts.reduce((a, b) => a + b, best);
    const found = { cost, over, packs, counts: [best, ...this.counts] };
    if (!this.found || better(found, this.found)) this.found = found;
  }
}

function better(a: Found, b: Found): boolean {
  const by = compare(a.cost, b.cost) || compare(a.over, b.over) || compare(a.packs, b.packs);
  return by < 0;
}

function up(amount: bigint, by: bigint): bigint {
  return (amount + by - 1n) / by;
}

function common(a: bigint, b: bigint): bigint {
  return b === 0n ? a : common(b, a % b);
}
