/**
 * A value with its working. Every sum of the engine is made by one of these functions, which keep what they
 * were given: so a working is the sum itself read out, and no second formula stands anywhere.
 */
import {
  ceil,
  type Exact,
  exact,
  fromGeometry,
  HUNDRED,
  ONE,
  roundTo,
  ZERO,
} from '../../../shared/exact';
import type { Span } from '../../../shared/span';
import type { SourceBlock } from '../workspace/source';

/** The piece of a line that a fact came from. */
export interface Origin {
  readonly block: SourceBlock;
  readonly span: Span;
}

/** Something a figure needs and does not have. */
export interface Gap {
  readonly what: string;
  readonly origin?: Origin;
  /** A finding at that place says it already. */
  readonly told?: boolean;
}

export type Op =
  | 'fact'
  | 'count'
  | 'named'
  | 'sum'
  | 'difference'
  | 'product'
  | 'quotient'
  | 'share'
  | 'raised'
  | 'up'
  | 'nearest'
  | 'cents'
  | 'most'
  | 'convert';

export interface Term {
  readonly value: Exact;
  /** The unit it is said in: a unit's name, a currency's code, or a word such as "bricks". */
  readonly unit: string;
  readonly label: string;
  readonly op: Op;
  readonly args: readonly Term[];
  readonly origin?: Origin;
  /** By which rule, or from which source. */
  readonly note?: string;
  readonly gaps: readonly Gap[];
  /** More lines of explanation, made when asked for. */
  readonly detail?: () => readonly string[];
}

const NO_GAPS: readonly Gap[] = [];

function gapsOf(args: readonly Term[]): readonly Gap[] {
  const some = args.filter((arg) => arg.gaps.length > 0);
  if (some.length < 2) return some[0]?.gaps ?? NO_GAPS;
  return [...new Set(some.flatMap((arg) => arg.gaps))];
}

function made(
  op: Op,
  label: string,
  unit: string,
  value: Exact,
  args: readonly Term[],
  note?: string,
): Term {
  return { op, label, unit, value, args, note, gaps: gapsOf(args) };
}

/** A value as a line says it. */
export function fact(
  label: string,
  value: Exact | number | string,
  unit: string,
  origin?: Origin,
  note?: string,
): Term {
  return { op: 'fact', label, unit, value: exact(value), args: [], origin, note, gaps: NO_GAPS };
}

/** A value that nothing says: zero, and every figure made of it is incomplete. */
export function missing(label: string, unit: string, what: string, origin?: Origin): Term {
  return { op: 'fact', label, unit, value: ZERO, args: [], gaps: [{ what, origin }] };
}

/** What the setting-out counted or measured, in plain numbers; `detail` tells how. */
export function counted(
  label: string,
  value: number | Exact,
  unit: string,
  more: { note?: string; detail?: () => readonly string[]; args?: readonly Term[] } = {},
): Term {
  const args = more.args ?? [];
  const amount = typeof value === 'number' ? fromGeometry(value) : value;
  return { ...made('count', label, unit, amount, args, more.note), detail: more.detail };
}

/** The same value under another label: the joint of one working and the next. */
export function named(label: string, of: Term, note?: string): Term {
  return made('named', label, of.unit, of.value, [of], note);
}

export function sum(label: string, unit: string, args: readonly Term[], note?: string): Term {
  const value = args.reduce((total, a) => total.add(a.value), ZERO);
  return made('sum', label, unit, value, args, note);
}

export function difference(label: string, unit: string, a: Term, b: Term, note?: string): Term {
  return made('difference', label, unit, a.value.sub(b.value), [a, b], note);
}

export function product(label: string, unit: string, args: readonly Term[], note?: string): Term {
  const value = args.reduce((total, a) => total.mul(a.value), ONE);
  return made('product', label, unit, value, args, note);
}

/** Zero below the line makes a gap, never an endless number. */
export function quotient(label: string, unit: string, a: Term, b: Term, note?: string): Term {
  if (!b.value.isZero()) return made('quotient', label, unit, a.value.div(b.value), [a, b], note);
  const gap: Gap = { what: `${b.label} is zero`, origin: b.origin };
  const term = made('quotient', label, unit, ZERO, [a, b], note);
  return { ...term, gaps: b.gaps.length ? term.gaps : [...term.gaps, gap] };
}

/** `percent` of a value. */
export function share(label: string, unit: string, percent: Term, of: Term, note?: string): Term {
  return made('share', label, unit, of.value.mul(percent.value).div(HUNDRED), [percent, of], note);
}

/** A value and `percent` of it more. */
export function raised(label: string, unit: string, of: Term, percent: Term, note?: string): Term {
  const value = of.value.add(of.value.mul(percent.value).div(HUNDRED));
  return made('raised', label, unit, value, [of, percent], note);
}

/**
 * Up to the next whole multiple of a step, one when none is given. A billionth over a whole is the arithmetic's,
 * not another brick. A step of zero leaves it alone.
 */
export function up(label: string, unit: string, of: Term, note?: string, step?: Term): Term {
  const by = step?.value ?? ONE;
  const value = by.isZero() ? of.value : ceil(roundTo(of.value.div(by), 9)).mul(by);
  return made('up', label, unit, value, step ? [of, step] : [of], note);
}

/** To the nearest multiple of a step, half away from zero. A step of zero leaves it alone. */
export function nearest(label: string, unit: string, of: Term, step: Term, note?: string): Term {
  const value = step.value.isZero()
    ? of.value
    : roundTo(of.value.div(step.value), 0).mul(step.value);
  return made('nearest', label, unit, value, [of, step], note);
}

/** Money to the currency's digits, half away from zero. */
export function cents(label: string, of: Term, digits: number, note?: string): Term {
  return made('cents', label, of.unit, roundTo(of.value, digits), [of], note);
}

export function most(label: string, unit: string, a: Term, b: Term, note?: string): Term {
  return made('most', label, unit, a.value.gte(b.value) ? a.value : b.value, [a, b], note);
}

/** The same amount in another unit; `factor` of the new unit make one of the old. */
export function convert(label: string, unit: string, of: Term, factor: Exact, note?: string): Term {
  return made('convert', label, unit, of.value.mul(factor), [of], note);
}

export function withGaps(term: Term, gaps: readonly Gap[]): Term {
  return gaps.length ? { ...term, gaps: [...term.gaps, ...gaps] } : term;
}
