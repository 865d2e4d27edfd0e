/** Things of two revisions put beside each other. What is done one way round is done the other way round alike. */

export interface Paired<T> {
  readonly pairs: readonly (readonly [T, T])[];
  readonly gone: readonly T[];
  readonly added: readonly T[];
}

/** Those of one key together: of several alike the first with the first, the second with the second. */
export function pairedBy<T>(
  before: readonly T[],
  after: readonly T[],
  keyOf: (item: T) => string | undefined,
): Paired<T> {
  const waiting = new Map<string, T[]>();
  // From the last, so that the first is taken from the end, which costs nothing.
  for (const item of [...after].reverse()) {
    const key = keyOf(item);
    if (key === undefined) continue;
    const alike = waiting.get(key);
    if (alike) alike.push(item);
    else waiting.set(key, [item]);
  }
  const taken = new Set<T>();
  const pairs: [T, T][] = [];
  const gone: T[] = [];
  for (const item of before) {
    const key = keyOf(item);
    const other = key === undefined ? undefined : waiting.get(key)?.pop();
    if (other === undefined) gone.push(item);
    else {
      pairs.push([item, other]);
      taken.add(other);
    }
  }
  return { pairs, gone, added: after.filter((item) => !taken.has(item)) };
}

/** What one rule leaves over, paired by the next. */
export function pairedOn<T>(
  so: Paired<T>,
  next: (gone: readonly T[], added: readonly T[]) => Paired<T>,
): Paired<T> {
  if (!so.gone.length || !so.added.length) return so;
  const more = next(so.gone, so.added);
  return { pairs: [...so.pairs, ...more.pairs], gone: more.gone, added: more.added };
}

/** In their order, as far as both go. */
export function pairedInOrder<T>(before: readonly T[], after: readonly T[]): Paired<T> {
  const both = Math.min(before.length, after.length);
  return {
    pairs: before.slice(0, both).map((item, i) => [item, after[i]!] as const),
    gone: before.slice(both),
    added: after.slice(both),
  };
}

/** What takes longer than this is not looked at one by one: what a file holds is somebody else’s choice. */
const MOST_EFFORT = 1_000_000;

/**
 * The most alike first; none that are less alike than half. `likeness` is 0 to 1 and the same both ways, and so is
 * which of two pairs that are as alike is taken. `effort`: what it takes to look at one.
 */
export function pairedByLikeness<T>(
  before: readonly T[],
  after: readonly T[],
  likeness: (a: T, b: T) => number,
  effort: (item: T) => number,
): Paired<T> {
  const all = (of: readonly T[]) => of.reduce((sum, item) => sum + 1 + effort(item), 0);
  if (before.length * all(after) + after.length * all(before) > MOST_EFFORT)
    return { pairs: [], gone: before, added: after };
  const found = before.flatMap((a, i) =>
    after.flatMap((b, j) => {
      const like = likeness(a, b);
      return like >= 0.5 ? [{ i, j, like }] : [];
    }),
  );
  found.sort((p, q) => q.like - p.like || least(p) - least(q) || p.i + p.j - (q.i + q.j));
  const [left, right] = [new Set<number>(), new Set<number>()];
  for (const { i, j } of found)
    if (!left.has(i) && !right.has(j)) {
      left.add(i);
      right.add(j);
    }
  // Taken one by one of both: the first of the one goes with the first of the other.
  const [is, js] = [[...left], [...right]];
  return {
    pairs: is.map((i, n) => [before[i]!, after[js[n]!]!] as const),
    gone: before.filter((_, i) => !left.has(i)),
    added: after.filter((_, j) => !right.has(j)),
  };
}

const least = ({ i, j }: { readonly i: number; readonly j: number }) => Math.min(i, j);
