/** What every purchase is said in, and the sums that all of them share. */
import { phrase } from '../../../../shared/phrase';
import type { Env } from '../../resolve/env';
import {
  cents,
  counted,
  missing,
  named,
  type Origin,
  product,
  sum,
  type Term,
} from '../../working/term';

/** One line of what is bought. */
export interface Purchase {
  readonly kind: 'brick' | 'material' | 'piece';
  readonly name: string;
  readonly title: string;
  /** What the work takes, before losses. */
  readonly needed: Term;
  /** What is bought: bricks, or packs of a material. */
  readonly bought: Term;
  readonly cost: Term;
  /** Of a material bought in packs: what is left in the last, in the unit of what is needed. */
  readonly left?: Term;
}

export function pooled<T extends { origin: Origin }>(
  needs: readonly T[],
  key: (need: T) => string,
): Map<string, T[]> {
  const pools = new Map<string, T[]>();
  for (const need of needs) {
    const pool = pools.get(key(need));
    if (pool) pool.push(need);
    else pools.set(key(need), [need]);
  }
  return pools;
}

export function total(label: string, unit: string, terms: readonly Term[]): Term {
  return terms.length === 1 ? named(label, terms[0]!) : sum(label, unit, terms);
}

/** Every cost is rounded to the currency where it arises: the reader can add up what is printed. */
export function paid(label: string, of: Term, env: Env): Term {
  return cents(label, of, env.money.digits);
}

/** What is not known at all costs nothing and says why: the reason is the same as for its count. */
export function unknown(title: string, of: Term, env: Env): Term {
  return product(phrase`${title}, cost`, env.money.code, [
    of,
    counted(phrase`price`, 0, env.money.code, { note: phrase`not known` }),
  ]);
}

export function noPrice(title: string, env: Env, origin: Origin): Term {
  return missing(
    phrase`${title}, cost`,
    env.money.code,
    phrase`no price is given for ${title}`,
    origin,
  );
}
