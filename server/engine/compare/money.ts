/** What moved a price: the parts it is made of, each with what it moved by, which add up to the difference. */

import { type Exact, ZERO } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { JobPrice } from '../price/total';
import { differenceOf } from '../working/beside';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import { type Part, partsOf } from './parts';
import type { WorkPair } from './work';

export interface MoneyPart {
  /** `buy brick harwick-red`, `labour`, `overhead`, `tax`: the same part of both prices. */
  readonly key: string;
  readonly label: string;
  /** Nothing where that price has no such part. */
  readonly before?: Exact;
  readonly after?: Exact;
  readonly difference: Exact;
  /** Of something that is bought: how much of it. */
  readonly bought?: { readonly before?: Term; readonly after?: Term };
}

export interface MoneyChange {
  /** From cost to price: only what is not the same. */
  readonly steps: readonly MoneyPart[];
  /** What made the difference, the biggest first: together they are it, to the penny. */
  readonly parts: readonly MoneyPart[];
  /** The same by piece of work: its part of the price before tax. Together the difference of that. */
  readonly works: readonly MoneyPart[];
  readonly net: MoneyPart;
  readonly total: MoneyPart;
  /** Either price lacks something that is not known. */
  readonly incomplete: boolean;
}

/** Nothing where either is no job, or they are priced in two currencies. */
export function moneyChange(
  before: Job,
  after: Job,
  pairs: readonly WorkPair[],
): MoneyChange | undefined {
  if (!before.isJob || !after.isJob || before.env.money.code !== after.env.money.code)
    return undefined;
  const [old, now] = [before.price, after.price];
  return {
    steps: changed(stepsOf(old), stepsOf(now)),
    parts: biggestFirst(changed(partsOf(old), partsOf(now))),
    works: biggestFirst(sharesOf(pairs, before, after)),
    net: partOf('net', phrase`Price before tax`, old.price.value, now.price.value),
    total: partOf('price', phrase`Price`, old.total.value, now.total.value),
    incomplete: old.total.gaps.length > 0 || now.total.gaps.length > 0,
  };
}

function partOf(key: string, label: string, before?: Exact, after?: Exact): MoneyPart {
  return { key, label, before, after, difference: (after ?? ZERO).sub(before ?? ZERO) };
}

/** What the price leaves, and what is kept back of it, is no step to it. */
const AFTER_PRICE: ReadonlySet<string> = new Set([
  'asked',
  'asked-total',
  'leaves',
  'earns',
  'deducted',
  'retention',
]);

function stepsOf(price: JobPrice): Part[] {
  return price.figures
    .filter(({ key, term }) => term.unit === price.total.unit && !AFTER_PRICE.has(key))
    .map(({ key, term }) => ({ key, label: term.label, value: term.value }));
}

function changed(old: readonly Part[], now: readonly Part[]): MoneyPart[] {
  const [before, after] = [added(old), added(now)];
  const keys = [...new Set([...after.keys(), ...before.keys()])];
  return keys.flatMap((key) => {
    const [a, b] = [before.get(key), after.get(key)];
    const part = partOf(key, (b ?? a)!.label, a?.value, b?.value);
    if (part.difference.isZero()) return [];
    const bought = a?.bought || b?.bought ? { before: a?.bought, after: b?.bought } : undefined;
    return [{ ...part, bought }];
  });
}

/** Parts of one key together. */
function added(parts: readonly Part[]): Map<string, Part> {
  const found = new Map<string, Part>();
  for (const part of parts) {
    const known = found.get(part.key);
    found.set(part.key, known ? { ...known, value: known.value.add(part.value) } : part);
  }
  return found;
}

function biggestFirst(parts: readonly MoneyPart[]): MoneyPart[] {
  const size = (part: MoneyPart) => part.difference.abs();
  const byName = (a: MoneyPart, b: MoneyPart) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0);
  return [...parts].sort((a, b) => size(b).cmp(size(a)) || byName(a, b));
}

function sharesOf(pairs: readonly WorkPair[], before: Job, after: Job): MoneyPart[] {
  return pairs.flatMap((pair) => {
    const share = (piece: WorkPair['before'], job: Job) =>
      piece?.work ? job.shareOf(piece.work).price : undefined;
    const [a, b] = [share(pair.before, before), share(pair.after, after)];
    const { name, title } = (pair.after ?? pair.before)!;
    const part = partOf(name, title, a?.value, b?.value);
    return differenceOf(a, b)?.isZero() === false ? [part] : [];
  });
}
