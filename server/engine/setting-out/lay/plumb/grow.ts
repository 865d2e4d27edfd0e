import type { Laying } from '../agree';
import { keptPlumb } from './keep';

/** Two stretches that clash. */
export interface Pair {
  readonly key: string;
  readonly other: string;
}

/** Times that stretches cut off already are looked at again with an eye to others that are. */
const AGAIN = 2;
/** Stretches of one wall that are cut off: no wall that anyone builds has so many that clash. Protects the tool. */
const MOST = 1500;

/**
 * Lays stretches that clash in the perpends of the whole wall, and those that come to clash with them, until
 * none does or nothing more can be done: then it answers true. `clashing` finds pairs, those of some stretches or all;
 * none is laid again but such as `may` be.
 */
export function growPlumb(
  laying: Laying,
  clashing: (some?: ReadonlySet<string>) => Iterable<Pair>,
  may: (key: string) => boolean = () => true,
): boolean {
  const times = new Map<string, number>();
  let look: ReadonlySet<string> | undefined;
  for (let left = MOST; ; ) {
    const found = new Set<string>();
    for (const { key, other } of clashing(look)) found.add(key).add(other);
    const able = new Set([...found].filter(may));
    const next = nextOf(able, times).slice(0, Math.max(0, left));
    if (next.length === 0) return found.size > 0;
    const done = new Set(next);
    const changed = next.filter((key) => layPlumb(laying, key));
    for (const key of next) times.set(key, (times.get(key) ?? 0) + 1);
    left -= next.length;
    look = new Set([...changed, ...[...found].filter((key) => !done.has(key))]);
  }
}

/** Those not cut off yet; where all are, those that may be once more. */
function nextOf(clash: ReadonlySet<string>, times: ReadonlyMap<string, number>): string[] {
  const fresh = [...clash].filter((key) => !times.has(key));
  return fresh.length > 0 ? fresh : [...clash].filter((key) => times.get(key)! <= AGAIN);
}

function layPlumb(laying: Laying, key: string): boolean {
  const now = laying.placed.get(key)!;
  const whole = laying.wholeOf(now);
  const plumb = whole && keptPlumb(laying, key, now, whole);
  if (plumb) laying.placed.set(key, plumb);
  return plumb !== null;
}
