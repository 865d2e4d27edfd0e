/**
 * A value with its working. Every sum of the engine is made by one of these functions, which keep what they
 * were given: so a working is the sum itself read out, and no second formula stands anywhere.
 */

import {
  ceil,
  type Exact,
  exact,
  floor,
  fromGeometry,
  HUNDRED,
  ONE,
  roundTo,
  ZERO,
} from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
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
  | 'whole'
  | 'up'
  | 'nearest'
  | 'cents'
  | 'most'
  | 'least'
  | 'down'
  | 'packs'
  | 'loose'
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
  /** Of a fact that is not known exactly: between which two values it lies, in `unit`. */
  readonly range?: Range;
  /** Whether a range stands anywhere below it. */
  readonly ranged?: boolean;
  /** The value from those of `args`, where the op alone does not say it: so that it can be worked out again within ranges. */
  readonly again?: (args: readonly number[]) => number;
  /** Said as these, each in its own unit, where more than one is anything: 1 bulk bag of 850 kg + 2 bags of 25 kg. */
  readonly mixed?: readonly Term[];
  /** Of packs: what one of them holds, as its line says it. */
  readonly holds?: Term;
}

/** A value that a line gives as `60..75%`. */
export interface Range {
  readonly low: Exact;
  readonly high: Exact;
  /** Of things that come in whole ones. */
  readonly whole: boolean;
  /** What the line says, as it was read: the same object wherever it is used. */
  readonly said: object;
}

const NO_GAPS: readonly Gap[] = [];

function gapsOf(args: readonly Term[]): readonly Gap[] {
  // Hardly any figure lacks anything: no list is made to find that out.
  if (!args.some((arg) => arg.gaps.length > 0)) return NO_GAPS;
  const some = args.filter((arg) => arg.gaps.length > 0);
  if (some.length < 2) return some[0]!.gaps;
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
  const ranged = args.some((arg) => arg.ranged);
  return { op, label, unit, value, args, note, gaps: gapsOf(args), ranged };
}

/** A value as a line says it. */
export function fact(
  label: string,
  value: Exact | number | string,
  unit: string,
  origin?: Origin,
  note?: string,
  range?: Range,
): Term {
  const ranged = range !== undefined;
  const amount = exact(value);
  return {
    op: 'fact',
    label,
    unit,
    value: amount,
    args: [],
    origin,
    note,
    gaps: NO_GAPS,
    range,
    ranged,
  };
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
  more: {
    note?: string;
    detail?: () => readonly string[];
    args?: readonly Term[];
    again?: Term['again'];
  } = {},
): Term {
  const { note, detail, again, args = [] } = more;
  const amount = typeof value === 'number' ? fromGeometry(value) : value;
  const [gaps, ranged] = [gapsOf(args), args.some((arg) => arg.ranged)];
  // Put down in one go, not made and copied: most terms are these.
  return { op: 'count', label, unit, value: amount, args, note, gaps, ranged, detail, again };
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
  const gap: Gap = { what: phrase`${b.label} is zero`, origin: b.origin };
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

/** The whole of which a value is `percent`. Nothing is no part of anything: a gap, never an endless number. */
export function wholeOf(label: string, unit: string, of: Term, percent: Term, note?: string): Term {
  if (percent.value.gt(0))
    return made(
      'whole',
      label,
      unit,
      of.value.mul(HUNDRED).div(percent.value),
      [of, percent],
      note,
    );
  const term = made('whole', label, unit, ZERO, [of, percent], note);
  const gap: Gap = { what: phrase`${percent.label} is nothing or less`, origin: percent.origin };
  return { ...term, gaps: percent.gaps.length ? term.gaps : [...term.gaps, gap] };
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
  const minor = 10 ** digits;
  const again = ([a]: readonly number[]) =>
    (Math.sign(a!) * Math.floor(Math.abs(a!) * minor + 0.5 + 1e-7)) / minor;
  return { ...made('cents', label, of.unit, roundTo(of.value, digits), [of], note), again };
}

export function most(label: string, unit: string, a: Term, b: Term, note?: string): Term {
  return made('most', label, unit, a.value.gte(b.value) ? a.value : b.value, [a, b], note);
}

/** The smaller of two. */
export function least(label: string, unit: string, a: Term, b: Term, note?: string): Term {
  return made('least', label, unit, a.value.lte(b.value) ? a.value : b.value, [a, b], note);
}

/** Down to a whole one: a part of a brick is not a brick. A billionth short of a whole is the arithmetic’s. */
export function down(label: string, unit: string, of: Term, note?: string): Term {
  return made('down', label, unit, floor(roundTo(of.value, 9)), [of], note);
}

/**
 * How many of one kind of pack are bought where several kinds are to be had. `args` are the amount needed, what that
 * pack holds and costs, and the same of each other kind; at the end, where it is also sold loose, what one of it costs.
 * `loose`: how much is bought loose, from the same.
 */
export function packs(
  op: 'packs' | 'loose',
  label: string,
  unit: string,
  args: readonly Term[],
  count: (args: readonly Exact[]) => Exact,
  note?: string,
): Term {
  const value = count(args.map((arg) => arg.value));
  const again = (values: readonly number[]) =>
    count(values.map((v) => exact(Number.isFinite(v) ? v : 0))).toNumber();
  return { ...made(op, label, unit, value, args, note), again };
}

/** The same amount in another unit; `factor` of the new unit make one of the old. */
export function convert(label: string, unit: string, of: Term, factor: Exact, note?: string): Term {
  return {
    ...made('convert', label, unit, of.value.mul(factor), [of], note),
    again: times(factor),
  };
}

/** In plain numbers; the factor is turned into one when it is first wanted. */
function times(factor: Exact): Term['again'] {
  let by: number | undefined;
  return ([a]) => {
    by ??= factor.toNumber();
    return a! * by;
  };
}

export function withGaps(term: Term, gaps: readonly Gap[]): Term {
  return gaps.length ? { ...term, gaps: [...term.gaps, ...gaps] } : term;
}
