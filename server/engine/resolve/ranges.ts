/** Values that are written as a range: what each is known by, and which value of it is taken. */
import type { Exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Range } from '../working/term';
import type { SourceBlock } from '../workspace/source';

/** Which value of a range stands for it. The same engine is run again with another. */
export type Pick = 'middle' | Sample;

/** One of many runs: each range has a place of its own between its ends. */
export interface Sample {
  /**
   * How far it lies between its low and its high end, 0 to 1; `said` as {@link rangeKey} makes it. Nothing for one that
   * stays a range: terms go on to say how they hang on it.
   */
  readonly of: (said: object) => number | undefined;
}

const rangeKeys = new WeakMap<SourceBlock, Map<object, object>>();

/** What a range is known by. Lines alike of two blocks may have been read into one and the same value. */
export function rangeKey(block: SourceBlock, value: object): object {
  const keys = rangeKeys.get(block) ?? new Map<object, object>();
  rangeKeys.set(block, keys);
  const key = keys.get(value) ?? {};
  keys.set(value, key);
  return key;
}

/** A value as written, or between what and what it lies. */
export interface Said {
  readonly low: Exact;
  readonly high?: Exact;
  /** Of things that come in whole ones. */
  readonly whole?: boolean;
}

/** The exact value of a quantity as written, so far between its ends. */
export function picked({ low, high, whole }: Said, at: number): Exact {
  if (!high) return low;
  return within(low, high, whole ?? false, at);
}

/** So far between two values; of whole ones each as likely as the next, and of two that are as near the greater. */
function within(low: Exact, high: Exact, whole: boolean, at: number): Exact {
  if (!whole) return low.add(high.sub(low).mul(at));
  const ones = high.sub(low).add(1).mul(at).floor();
  const value = low.add(ones);
  return value.gt(high) ? high : value;
}

export function rangeNote({ low, high, whole }: Said, pick: Pick): string | undefined {
  if (!high) return undefined;
  const steps = whole ? phrase`, whole ones` : '';
  return pick === 'middle'
    ? phrase`middle of ${low.toFixed()} to ${high.toFixed()}${steps}`
    : phrase`somewhere of ${low.toFixed()} to ${high.toFixed()}${steps}`;
}

export function rangeOf(said: Said, block: SourceBlock, value: object): Range | undefined {
  const { low, high, whole } = said;
  return high && { low, high, whole: whole ?? false, said: rangeKey(block, value) };
}

let watching: Set<object> | undefined;

/** Told by whoever takes one value of a range as a plain number. */
export function readPlainly(block: SourceBlock, value: object): void {
  watching?.add(rangeKey(block, value));
}

/**
 * Ranges that are read as plain numbers while something is worked out: it cannot tell by its terms how it hangs on
 * them.
 */
export function plainlyRead<T>(work: () => T): {
  readonly made: T;
  readonly plain: ReadonlySet<object>;
} {
  const before = watching;
  const plain = new Set<object>();
  watching = plain;
  try {
    return { made: work(), plain };
  } finally {
    watching = before;
  }
}
