/** Batches of mortar one after the other, over work that goes faster and slower. Plain numbers. */

/** Work that goes at one pace: so much mortar in so many hours. */
export interface Spell {
  readonly amount: number;
  readonly hours: number;
}

export interface Batches {
  readonly count: number;
  readonly largest: number;
  readonly last: number;
  /** Whether any but the last is smaller than the largest. */
  readonly differ: boolean;
}

/** As good as nothing: of a batch, or of its time. */
const NOTHING = 1e-9;

/** Mortar in an hour, where it takes no time. */
const AT_ONCE = 1e15;

/**
 * Each begins where the one before ends, and is laid within `most.hours` from there; none is larger than `most.amount`.
 * @returns nothing where no batch could be laid
 */
export function oneByOne(
  spells: readonly Spell[],
  most: { readonly amount?: number; readonly hours: number },
): Batches | undefined {
  const mixer = most.amount ?? Number.POSITIVE_INFINITY;
  const sizes: { size: number; times: number }[] = [];
  let [held, time] = [0, most.hours];
  for (const { amount, hours } of spells.filter((s) => s.amount > NOTHING)) {
    const pace = hours > 0 ? amount / hours : AT_ONCE;
    const whole = Math.min(mixer, pace * most.hours);
    if (!(whole > NOTHING) || !Number.isFinite(amount)) return undefined;
    let left = amount;
    // First what the batch that is open still takes, then whole ones, then one is opened.
    if (held > 0) {
      const more = Math.min(left, mixer - held, pace * time);
      [held, time, left] = [held + more, time - more / pace, left - more];
      if (left <= NOTHING) continue;
      sizes.push({ size: held, times: 1 });
    }
    const times = Math.max(0, Math.ceil(left / whole - NOTHING) - 1);
    if (times) sizes.push({ size: whole, times });
    held = left - times * whole;
    time = most.hours - held / pace;
  }
  if (held > 0) sizes.push({ size: held, times: 1 });
  return summed(sizes);
}

function summed(sizes: readonly { size: number; times: number }[]): Batches | undefined {
  const last = sizes.at(-1)?.size;
  if (!last) return undefined;
  const largest = Math.max(...sizes.map((s) => s.size));
  const before = sizes.slice(0, sizes.at(-1)!.times > 1 ? undefined : -1);
  return {
    count: sizes.reduce((sum, s) => sum + s.times, 0),
    largest,
    last,
    differ: before.some((s) => s.size < largest - NOTHING),
  };
}
