/** A term read out: the sum, what each part came from, down to a line of a job or a library. */
import { phrase } from '../../../shared/phrase';
import type { WorkingView } from '../../../shared/views';
import type { Env } from '../resolve/env';
import type { Op, Term } from '../working/term';
import { missingOf, showTerm } from './show';

/** Deeper than any working goes; a guard, not a limit on what is shown. */
const DEEPEST = 40;

/**
 * A price is made of its cost eight times over (in the overhead, the profit, the tax …). Up to this many steps
 * each is told in full wherever it comes up; beyond, only where it comes up first.
 */
const IN_FULL = 2000;

/** @param depth how deep the term stands in a working already; at the deepest it is told without its parts */
export function workingOf(term: Term, env: Env, depth = 0): WorkingView {
  return new Reading(env).of(term, depth);
}

class Reading {
  private steps = 0;
  private readonly told = new Set<Term>();

  constructor(private readonly env: Env) {}

  of(term: Term, depth: number): WorkingView {
    const plain = term.op === 'named' ? through(term) : term;
    const origin = plain.origin ?? term.origin;
    const block = origin?.block;
    return {
      label: term.label,
      result: showTerm(term, this.env),
      sum: sumOf(plain, this.env),
      note: term.note ?? plain.note,
      place: origin && block?.place(origin.span),
      line: origin && block?.lines[origin.span.line]?.trim(),
      missing: term.gaps.length ? missingOf(term) : undefined,
      parts: depth < DEEPEST ? this.parts(plain, depth) : [],
    };
  }

  private parts(term: Term, depth: number): WorkingView[] {
    this.steps += 1;
    if (this.steps > IN_FULL && this.told.has(term)) return [];
    this.told.add(term);
    const detail = (term.detail?.() ?? []).map((text) => ({ label: text, result: '', parts: [] }));
    return [...detail, ...term.args.map((arg) => this.of(arg, depth + 1))];
  }
}

/** A name over a name over a sum is the sum. */
function through(term: Term): Term {
  let inner = term;
  while (inner.op === 'named') inner = inner.args[0]!;
  return inner;
}

const SIGNS: Partial<Record<Op, string>> = {
  sum: ' + ',
  difference: ' − ',
  product: ' × ',
  quotient: ' ÷ ',
};

function sumOf(term: Term, env: Env): string | undefined {
  const args = term.args.map((a) => showTerm(a, env));
  const sign = SIGNS[term.op];
  if (sign) return args.length ? args.join(sign) : undefined;
  switch (term.op) {
    case 'share':
      return phrase`${args[0]} of ${args[1]}`;
    case 'raised':
      return `${args[0]} + ${args[1]}`;
    case 'whole':
      return phrase`${args[0]} is ${args[1]} of it`;
    case 'up':
      return args[1]
        ? phrase`${args[0]}, in steps of ${args[1]}`
        : phrase`${args[0]}, up to whole ones`;
    case 'nearest':
      return phrase`${args[0]}, to the nearest ${args[1]}`;
    case 'cents':
      return phrase`${args[0]}, to the currency’s digits`;
    case 'most':
      return phrase`the larger of ${args.join(phrase` and `)}`;
    case 'least':
      return phrase`the smaller of ${args.join(phrase` and `)}`;
    case 'down':
      return phrase`${args[0]}, down to whole ones`;
    case 'packs':
      return phrase`of the cheapest set of packs that holds ${args[0]}`;
    case 'loose':
      return phrase`all of ${args[0]} where that costs less than packs`;
    case 'convert':
      return args[0];
    default:
      return undefined;
  }
}
