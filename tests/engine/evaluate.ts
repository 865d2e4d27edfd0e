/**
 * Works a term out again from its parts alone, by the meaning of its operation and the table of units: nothing of
 * the engine's own arithmetic is used. Fractions are exact to 40 digits, so agreement is to 30.
 */

import type { Op, Term } from '../../server/engine/working/term';
import { Decimal } from '../../shared/exact';
import { unitNamed } from '../../shared/units';

type Rule = (args: readonly Decimal[], term: Term) => Decimal;

const ZERO = new Decimal(0);
const total = (args: readonly Decimal[]) => args.reduce((a, b) => a.plus(b), ZERO);

function halfAway(value: Decimal): Decimal {
  const whole = value.abs().plus('0.5').floor();
  return value.isNegative() ? whole.negated() : whole;
}

/** Decimal places of the money a term is in, as its own value cannot tell: those of the arguments of the test. */
export const digitsOf = (term: Term): number => (term.unit === 'JPY' ? 0 : 2);

/** How many of the first kind stand in the cheapest set, by looking at every set; loose, where that costs less. */
function cheapest(args: readonly Decimal[]): { count: Decimal; loose: Decimal } {
  const [need = ZERO, ...rest] = args;
  const loose = rest.length % 2 ? rest.at(-1)! : undefined;
  const kinds = Array.from({ length: Math.floor(rest.length / 2) }, (_, i) => ({
    holds: rest[2 * i]!,
    costs: rest[2 * i + 1]!,
  }));
  let best: { cost: Decimal; over: Decimal; packs: number; first: number } | undefined;
  const look = (i: number, left: Decimal, cost: Decimal, packs: number, first: number): void => {
    const kind = kinds[i];
    if (kind) {
      const most = Decimal.max(0, left.div(kind.holds).toDecimalPlaces(9).ceil()).toNumber();
      for (let n = 0; n <= most; n++)
        look(
          i + 1,
          left.minus(kind.holds.times(n)),
          cost.plus(kind.costs.times(n)),
          packs + n,
          i ? first : n,
        );
      return;
    }
    if (left.gt('1e-9')) return;
    const set = { cost, over: left.negated(), packs, first };
    const by = best && (cost.cmp(best.cost) || set.over.cmp(best.over) || packs - best.packs);
    if (by === undefined || by < 0) best = set;
  };
  look(0, need, ZERO, 0, 0);
  if (loose && best && need.times(loose).lt(best.cost)) return { count: ZERO, loose: need };
  return { count: new Decimal(best?.first ?? 0), loose: ZERO };
}

const RULES: Readonly<Record<Exclude<Op, 'fact' | 'count'>, Rule>> = {
  named: ([a]) => a!,
  sum: total,
  difference: ([a, b]) => a!.minus(b!),
  product: (args) => args.reduce((a, b) => a.times(b), new Decimal(1)),
  quotient: ([a, b]) => (b!.isZero() ? ZERO : a!.dividedBy(b!)),
  share: ([percent, of]) => percent!.times(of!).dividedBy(100),
  raised: ([of, percent]) => of!.plus(percent!.times(of!).dividedBy(100)),
  whole: ([of, percent]) => (percent!.gt(0) ? of!.dividedBy(percent!.dividedBy(100)) : ZERO),
  up: ([of, step = new Decimal(1)]) =>
    step.isZero() ? of! : of!.dividedBy(step).toDecimalPlaces(9).ceil().times(step),
  nearest: ([of, step]) => (step!.isZero() ? of! : halfAway(of!.dividedBy(step!)).times(step!)),
  cents: ([of], term) => {
    const minor = new Decimal(10).pow(digitsOf(term));
    return halfAway(of!.times(minor)).dividedBy(minor);
  },
  most: ([a, b]) => (a!.greaterThan(b!) ? a! : b!),
  least: ([a, b]) => (a!.lessThan(b!) ? a! : b!),
  down: ([of]) => of!.toDecimalPlaces(9).floor(),
  packs: (args) => cheapest(args).count,
  loose: (args) => cheapest(args).loose,
  convert: ([of], term) => {
    // So much in an hour is converted as so much is: the hour is the same on both sides.
    const [from, to] = [term.args[0]!.unit, term.unit].map(
      (u) => unitNamed(u.replace(/\/h$/, ''))!,
    );
    return of!.times(from!.factor).dividedBy(to!.factor);
  },
};

/** The value from the leaves up. */
export function evaluated(term: Term): Decimal {
  if (term.op === 'fact' || term.op === 'count') return term.value;
  const known = done.get(term);
  if (known) return known;
  const value = RULES[term.op](
    term.args.map((arg) => evaluated(arg)),
    term,
  );
  done.set(term, value);
  return value;
}

/** Terms stand in many figures: each is worked out once. A term is never changed. */
const done = new WeakMap<Term, Decimal>();

/** Every term under a term, itself first; each once. */
export function allTerms(term: Term, seen = new Set<Term>()): ReadonlySet<Term> {
  if (seen.has(term)) return seen;
  seen.add(term);
  for (const arg of term.args) allTerms(arg, seen);
  return seen;
}

export function agree(a: Decimal, b: Decimal): boolean {
  const scale = Decimal.max(1, a.abs(), b.abs());
  return a.minus(b).abs().dividedBy(scale).lessThan('1e-30');
}
