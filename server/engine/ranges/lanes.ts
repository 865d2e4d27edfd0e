/**
 * A term worked out for many values of its ranges at once: the same sum that the term keeps, in plain numbers, one
 * lane for each sample. Nothing here knows what a wall or a price is.
 */
import { phrase } from '../../../shared/phrase';
import type { Range, Term } from '../working/term';
import { type Column, laneByLane, productOf, RULES, sumOf } from './rules';

export type Lanes = Float64Array;

/** Thrown where a term hangs on a range in a way that it does not say: then the work has to be done again. */
export class Unfollowed extends Error {}

export class Samples {
  /**
   * `of`: where the samples lie in a range; `given`: terms that are known lane by lane already; `known`: what was
   * worked out before of terms that still stand.
   */
  constructor(
    private readonly count: number,
    private readonly of: (range: Range) => Lanes,
    private readonly given: ReadonlyMap<Term, Lanes> = new Map(),
    private readonly known = new WeakMap<Term, Lanes>(),
  ) {}

  /** Its value in every lane. */
  lanesOf(term: Term): Lanes {
    const column = this.column(term);
    return typeof column === 'number' ? new Float64Array(this.count).fill(column) : column;
  }

  /** One number where it is the same in every lane. */
  private column(term: Term): Column {
    if (!term.ranged) return term.value.toNumber();
    const known = this.given.get(term) ?? this.known.get(term);
    if (known) return known;
    const lanes = this.worked(term);
    this.known.set(term, lanes);
    return lanes;
  }

  private worked(term: Term): Lanes {
    if (term.range) return this.of(term.range);
    const args = term.args.map((arg) => this.column(arg));
    if (term.op === 'sum') return sumOf(args, this.count);
    if (term.op === 'product') return productOf(args, this.count);
    return laneByLane(ruleOf(term), args, this.count);
  }
}

function ruleOf(term: Term) {
  const rule = term.again ?? RULES[term.op];
  if (!rule) throw new Unfollowed(phrase`${term.label} hangs on a range, and does not say how`);
  return rule;
}

/** Whether a term says of every part of it how it hangs on its ranges. */
export function followable(term: Term, seen = new Set<Term>()): boolean {
  if (!term.ranged || term.range || seen.has(term)) return true;
  seen.add(term);
  if (!saysHow(term)) return false;
  return term.args.every((arg) => followable(arg, seen));
}

/** Whether a term says how it hangs on its own parts. */
export function saysHow(term: Term): boolean {
  const { range, again, op } = term;
  return !!(range || again || RULES[op]) || op === 'sum' || op === 'product';
}

/** Every range that a term was made of. */
export function* rangesIn(term: Term, seen = new Set<Term>()): Iterable<Range> {
  if (!term.ranged || seen.has(term)) return;
  seen.add(term);
  if (term.range) yield term.range;
  for (const arg of term.args) yield* rangesIn(arg, seen);
}
