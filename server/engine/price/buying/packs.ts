/** Whole packs of one thing, the cheapest that are enough, each count and the cost with its working. */

import { type Exact, ZERO } from '../../../../shared/exact';
import { phrase, spoken } from '../../../../shared/phrase';
import type { Env } from '../../resolve/env';
import { showValue } from '../../views/show';
import { difference, packs, product, quotient, sum, type Term, up } from '../../working/term';
import { cheapestPacks } from './cheapest';
import { paid } from './purchase';

/** One way it is packed. What it holds is in the unit of what is needed. */
export interface Pack {
  /** What the pack is called: a bag. */
  readonly unit: string;
  readonly content: Term;
  /** The same as its line says it; left out where that is no more than what it makes. */
  readonly holds?: Term;
  readonly price: Term;
}

/** What a set of packs comes to. */
export interface PackedBuy {
  readonly bought: Term;
  readonly cost: Term;
  /** What is bought and not needed. */
  readonly left: Term;
}

/** More kinds than this and the first of them are enough to choose from: a guard, no merchant has so many. */
const MOST_KINDS = 8;

/**
 * @param each what one unit of it costs loose, where it is sold so: all of it is then bought loose if that is cheaper
 */
export function buyPacked(
  title: string,
  needed: Term,
  offers: readonly Pack[],
  env: Env,
  each?: Term,
): PackedBuy {
  // The largest first, as one says it: a bulk bag and two bags.
  const kinds = offers.slice(0, MOST_KINDS).sort((a, b) => b.content.value.cmp(a.content.value));
  const [first] = kinds;
  if (kinds.length === 1 && !each) return oneKind(title, needed, first!, env);
  return severalKinds(title, needed, kinds, each, env);
}

function oneKind(title: string, needed: Term, { unit, content, price }: Pack, env: Env): PackedBuy {
  const count = quotient(title, unit, needed, content);
  const bought = up(phrase`${title}, to buy`, unit, count, phrase`whole ${spoken(unit)}s`);
  const cost = paid(phrase`${title}, cost`, product(title, env.money.code, [bought, price]), env);
  const held = product(phrase`in ${spoken(unit)}s`, needed.unit, [bought, content]);
  return { bought, cost, left: difference(phrase`${title}, left over`, needed.unit, held, needed) };
}

function severalKinds(
  title: string,
  needed: Term,
  kinds: readonly Pack[],
  each: Term | undefined,
  env: Env,
): PackedBuy {
  const counts = kinds.map((kind) => countOf(title, needed, kind, kinds, each));
  const loose = each && looseOf(title, needed, kinds, each);
  const parts = loose ? [...counts, loose] : counts;
  const priced = kinds.map(({ unit, price }, i) =>
    product(phrase`${title}, ${spoken(unit)}s`, env.money.code, [counts[i]!, price]),
  );
  if (loose) priced.push(product(phrase`${title}, loose`, env.money.code, [loose, each]));
  const held = kinds.map(({ unit, content }, i) =>
    product(phrase`in ${spoken(unit)}s`, needed.unit, [counts[i]!, content]),
  );
  const all = sum(phrase`all that is bought`, needed.unit, loose ? [...held, loose] : held);
  const cost = paid(phrase`${title}, cost`, sum(title, env.money.code, priced), env);
  const detail = () => otherWays(needed, kinds, each, env);
  return {
    bought: { ...togetherOf(title, parts), detail },
    cost,
    left: difference(phrase`${title}, left over`, needed.unit, all, needed),
  };
}

/** Of one kind only, its own unit; of several, so many packs, said each by its own name. */
function togetherOf(title: string, parts: readonly Term[]): Term {
  const some = parts.filter((part) => !part.value.isZero());
  const unit = some.length === 1 ? some[0]!.unit : 'packs';
  return { ...sum(phrase`${title}, to buy`, unit, parts), mixed: parts };
}

function countOf(
  title: string,
  needed: Term,
  kind: Pack,
  kinds: readonly Pack[],
  each?: Term,
): Term {
  const args = [needed, ...inTurn(kind, kinds).flatMap((k) => [k.content, k.price])];
  const all = each ? [...args, each] : args;
  const count = (values: readonly Exact[]) => chosen(values).count;
  const term = packs('packs', phrase`${title}, ${spoken(kind.unit)}s`, kind.unit, all, count);
  return kind.holds ? { ...term, holds: kind.holds } : term;
}

/** The kind that is counted stands first. */
function inTurn(kind: Pack, kinds: readonly Pack[]): Pack[] {
  return [kind, ...kinds.filter((other) => other !== kind)];
}

function looseOf(title: string, needed: Term, kinds: readonly Pack[], each: Term): Term {
  const args = [needed, ...kinds.flatMap((k) => [k.content, k.price]), each];
  const amount = (values: readonly Exact[]) => chosen(values).loose;
  const note = phrase`all of it loose where that costs less than packs`;
  return packs('loose', phrase`${title}, loose`, needed.unit, args, amount, note);
}

/** From the values of a count's arguments: how many of the first kind, and how much loose. */
function chosen(values: readonly Exact[]): { readonly count: Exact; readonly loose: Exact } {
  const [need = ZERO, ...rest] = values;
  const each = rest.length % 2 ? rest.at(-1) : undefined;
  const offers = Array.from({ length: Math.floor(rest.length / 2) }, (_, i) => ({
    content: rest[2 * i]!,
    price: rest[2 * i + 1]!,
  }));
  const counts = cheapestPacks(need, offers);
  if (!counts) return { count: ZERO, loose: each ? need : ZERO };
  const costs = counts.reduce((all, n, i) => all.add(offers[i]!.price.mul(n)), ZERO);
  if (each && need.mul(each).lt(costs)) return { count: ZERO, loose: need };
  return { count: ZERO.add(counts[0] ?? 0), loose: ZERO };
}

/** What each kind alone would come to, and all of it loose. */
function otherWays(
  needed: Term,
  kinds: readonly Pack[],
  each: Term | undefined,
  env: Env,
): string[] {
  const money = (amount: Exact) =>
    showValue(amount.toDecimalPlaces(env.money.digits), env.money.code, env);
  const alone = kinds.flatMap(({ unit, content, price }) => {
    const [count] =
      cheapestPacks(needed.value, [{ content: content.value, price: price.value }]) ?? [];
    if (count === undefined) return [];
    const over = showValue(content.value.mul(count).sub(needed.value), needed.unit, env);
    const packed = showValue(ZERO.add(count), unit, env);
    const of = showValue(content.value, needed.unit, env);
    return [phrase`${packed} of ${of} alone: ${money(price.value.mul(count))}, ${over} left over`];
  });
  if (!each) return alone;
  return [
    ...alone,
    phrase`all of it loose: ${money(needed.value.mul(each.value))}, nothing left over`,
  ];
}

/** Of two packs alike the first. */
export function differing(packs: readonly Pack[]): Pack[] {
  const alike = (a: Pack, b: Pack) =>
    a.content.value.eq(b.content.value) && a.price.value.eq(b.price.value);
  return packs.filter((pack, i) => packs.findIndex((other) => alike(other, pack)) === i);
}
