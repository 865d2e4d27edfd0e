/** Whether a piece of work brings a caution up: which of its lines do, and why. What no line says brings none up: it is asked. */
import { later, spoken } from '../../../shared/phrase';
import { type Held, type Holding, worst } from './holding';
import type { Condition, Rule } from './rules';

export interface BroughtUp {
  readonly rule: Rule;
  /** The first of them is where it is shown. */
  readonly at: readonly Held[];
  /** Each reason once. */
  readonly why: readonly string[];
  /** It is of this very work, how high it is or how it leans: told of each that it holds for. */
  readonly eachTime: boolean;
  /** Reasons for which it is told again where it has been told for others. */
  readonly news: readonly string[];
}

export function broughtUp(rule: Rule, holding: Holding): BroughtUp | undefined {
  const met = rule.when.flatMap((conditions) =>
    conditions.some((c) => c.unsaid) ? [] : (metBy(conditions, holding) ?? []),
  );
  const told = met.filter((m, i) => !met.slice(0, i).some((before) => samePlaces(before, m)));
  if (!told.length) return undefined;
  const at = distinct(told.flatMap((m) => m.at));
  return {
    rule,
    at,
    why: [...new Set(told.flatMap((m) => m.why))],
    eachTime: told.some((m) => m.eachTime),
    news: told.flatMap((m) => m.news),
  };
}

/** Over 30 mm is over 100 mm’s place too: the first limit that is passed says enough. */
function samePlaces(a: Met, b: Met): boolean {
  return a.at.length === b.at.length && a.at.every((held, i) => held === b.at[i]);
}

interface Met {
  readonly at: readonly Held[];
  readonly why: readonly string[];
  readonly eachTime: boolean;
  readonly news: readonly string[];
}

/** What the job does not say and the caution hangs on, and the thing that it is asked for. */
export interface Asked {
  readonly rule: Rule;
  /** The word of the line that would say it. */
  readonly what: string;
  readonly at: Held;
}

/** A line with `unsaid` in it asks, where all the rest of it holds. A caution that is shown as it is has nothing to ask. */
export function askedFor(rule: Rule, holding: Holding): Asked[] {
  const found = new Map<string, Asked>();
  for (const conditions of rule.when) {
    const open = conditions.filter((c) => c.unsaid).map((c) => c.what);
    if (!open.length || open.some((what) => holding.said.has(what))) continue;
    const rest = metBy(
      conditions.filter((c) => !c.unsaid),
      holding,
    );
    for (const what of rest ? open : []) found.set(what, { rule, what, at: rest!.at[0]! });
  }
  return [...found.values()];
}

/** All of a line must hold; what is said of one word twice must hold of one and the same thing. */
function metBy(conditions: readonly Condition[], holding: Holding): Met | undefined {
  const parts: Met[] = [];
  for (const what of new Set(conditions.map((c) => c.what))) {
    const mine = conditions.filter((c) => c.what === what);
    const met = wordMet(what, mine, holding);
    if (!met) return undefined;
    parts.push(met);
  }
  const placed = parts.find((part) => part.at.length);
  if (!placed) return undefined;
  return {
    at: placed.at,
    why: parts.flatMap((part) => part.why),
    eachTime: parts.some((part) => part.eachTime),
    news: parts.flatMap((part) => part.news),
  };
}

function wordMet(
  what: string,
  conditions: readonly Condition[],
  holding: Holding,
): Met | undefined {
  const at = (holding.held.get(what) ?? []).filter((held) =>
    conditions.every((condition) => holds(held, condition)),
  );
  if (!at.length) return undefined;
  const why = at.flatMap((held) => reason(held, conditions));
  const goods = at.some((held) => held.goods);
  const own = at.some((held) => held.own) || conditions.some((c) => c.limit);
  return { at, why, eachTime: own && !goods, news: goods ? why : [] };
}

/**
 * What could not be worked out may be any: the caution is told, and says so. Of a range its worst end is what holds:
 * a hazard within it is one.
 */
function holds({ amount: ends }: Held, { limit }: Condition): boolean {
  if (!limit || ends === undefined) return true;
  const amount = worst(ends, limit);
  switch (limit.than) {
    case 'over':
      return amount > limit.amount + NEAR;
    case 'from':
      return amount >= limit.amount - NEAR;
    case 'under':
      return amount < limit.amount - NEAR;
    case 'within':
      return amount <= limit.amount + NEAR;
  }
}

/** Sums of geometry are no more exact than this, mm or kg. */
const NEAR = 1e-6;

function reason({ why, amount, saysLimit }: Held, conditions: readonly Condition[]): string[] {
  if (!why) return [];
  const limit = conditions.find((c) => c.limit)?.limit;
  const told =
    limit && amount !== undefined && !saysLimit
      ? `, ${spoken(WORDS[limit.than])} ${limit.text}`
      : '';
  return [`${why(limit)}${told}`];
}

const WORDS = {
  over: later`over`,
  from: later`no less than`,
  under: later`under`,
  within: later`within`,
} as const;

function distinct(held: readonly Held[]): Held[] {
  const seen = new Set<string>();
  return held.filter(({ origin: { block, span } }) => {
    const key = `${block.firstLine} ${span.line} ${span.start}`;
    return !seen.has(key) && seen.add(key);
  });
}
