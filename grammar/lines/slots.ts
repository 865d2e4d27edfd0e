/**
 * What may stand in a line, as data. One table drives reading, messages, completion, highlighting and the
 * reference; so a slot says everything about itself that any of them needs.
 */
import type { Dimension } from '../../shared/units';
import type { Why } from './decided';

/** The kinds of named things a job or a library may hold. */
export type NamedKind =
  | 'wall'
  | 'pier'
  | 'opening'
  | 'repair'
  | 'brick'
  | 'mix'
  | 'material'
  | 'bond'
  | 'limit'
  | 'cost'
  | 'option'
  | 'partner'
  | 'zone'
  | 'tolerance'
  | 'trade'
  | 'measure'
  | 'yield-model'
  | 'mortar-class';

interface Keyed {
  /** Under which the value is found after reading. */
  readonly key: string;
}

/**
 * A number with a unit of one of the dimensions. `bare` allows it without a unit. `range` allows `a..b`: `usual` where
 * that is what one writes there, so that messages speak of it.
 */
export interface QuantitySlot extends Keyed {
  readonly slot: 'quantity';
  readonly dimensions: readonly Dimension[];
  readonly range?: 'usual' | 'may';
  readonly bare?: boolean;
  /** Counted in whole ones, from 1 up; a range of them may begin at none. */
  readonly whole?: boolean;
  /** The most that makes sense, in base units, where it is not the dimension's own. */
  readonly most?: number;
  /** How it may be written, where the dimension's own example would mislead. */
  readonly example?: string;
  /** Never a range, and why: what it chooses is not more or less, but another thing. */
  readonly fixed?: string;
  /** A range of it is what is let pass, and no amount that is not known. */
  readonly limits?: boolean;
}

/** A number and then any word: so many of a trade. The word is found under `key` + `Of`. */
export interface CountedSlot extends Keyed {
  readonly slot: 'counted';
  readonly range?: 'may';
  readonly fixed?: string;
  readonly of: NamedKind;
}

/** `a x b` or `a x b x c` with one unit at the end, or one for each. `range` allows `a x b..c`. */
export interface SizeSlot extends Keyed {
  readonly slot: 'size';
  readonly range?: 'may';
  readonly fixed?: string;
  readonly count: readonly number[];
  readonly dimensions: readonly Dimension[];
}

/** Money. `range` allows `£220..£260`. */
export interface MoneySlot extends Keyed {
  readonly slot: 'money';
  readonly range?: 'may';
  readonly fixed?: string;
}

/** One word of a list. */
export interface ChoiceSlot extends Keyed {
  readonly slot: 'choice';
  readonly of: readonly string[];
}

/** The name of a thing written elsewhere. */
export interface NameSlot extends Keyed {
  readonly slot: 'name';
  readonly of: readonly NamedKind[];
}

/** A name that this line gives. */
export interface NewNameSlot extends Keyed {
  readonly slot: 'new-name';
}

/** Any word; `what` says which kind for a reader. */
export interface WordSlot extends Keyed {
  readonly slot: 'word';
  readonly what: string;
}

export interface TextSlot extends Keyed {
  readonly slot: 'text';
}

export interface DateSlot extends Keyed {
  readonly slot: 'date';
}

/** A time of day: `08:00`. */
export interface ClockSlot extends Keyed {
  readonly slot: 'clock';
}

/** A reference: a word, digits parted by hyphens, or a text. */
export interface CodeSlot extends Keyed {
  readonly slot: 'code';
}

/** A word or a sign that stands there as it is. */
export interface LiteralSlot {
  readonly slot: 'literal';
  readonly text: string;
}

/** All of these, or none. */
export interface OptionalSlot {
  readonly slot: 'optional';
  readonly slots: readonly Slot[];
}

/** The first of these that fits. */
export interface EitherSlot {
  readonly slot: 'either';
  readonly of: readonly (readonly Slot[])[];
}

/** One or more groups, parted by a sign; read into a list under `key`. */
export interface ListSlot extends Keyed {
  readonly slot: 'list';
  readonly slots: readonly Slot[];
  readonly by: ',' | '+' | '';
}

/** All that follows, from a word on: a line of something else, written out. */
export interface RestSlot extends Keyed {
  readonly slot: 'rest';
  readonly what: string;
}

export type Slot =
  | QuantitySlot
  | CountedSlot
  | SizeSlot
  | MoneySlot
  | ChoiceSlot
  | NameSlot
  | NewNameSlot
  | WordSlot
  | TextSlot
  | DateSlot
  | ClockSlot
  | CodeSlot
  | LiteralSlot
  | OptionalSlot
  | EitherSlot
  | ListSlot
  | RestSlot;

export const quantity = (key: string, ...dimensions: Dimension[]): QuantitySlot => ({
  slot: 'quantity',
  key,
  dimensions,
});
export const ranged = (key: string, ...dimensions: Dimension[]): QuantitySlot => ({
  slot: 'quantity',
  key,
  dimensions,
  range: 'usual',
});
/** From what to what is let pass. */
export const limits = (key: string, ...dimensions: Dimension[]): QuantitySlot => ({
  ...ranged(key, ...dimensions),
  limits: true,
});
/** A percentage of something, so no more than all of it. */
export const share = (key: string): QuantitySlot => ({ ...quantity(key, 'percent'), most: 1 });
/** A thickness of a wall: a brick has but a few of them. */
export const thickness = (key: string): QuantitySlot => ({
  ...quantity(key, 'bricks'),
  example: '1/2 brick or 1 brick',
  fixed: 'a wall has one thickness, and another is another wall',
});
/** So many of something that no one makes or builds a part of. */
export const whole = (slot: QuantitySlot): QuantitySlot => ({ ...slot, whole: true });
/** One that is never a range, and why. */
export const fixed = <S extends QuantitySlot | SizeSlot>(slot: S, why: string): S => ({
  ...slot,
  fixed: why,
});
/** A plain number, with no unit. */
export const number = (key: string): QuantitySlot => ({
  slot: 'quantity',
  key,
  dimensions: ['number'],
  bare: true,
});
export const size = (
  key: string,
  count: readonly number[],
  ...dimensions: Dimension[]
): SizeSlot => ({
  slot: 'size',
  key,
  count,
  dimensions,
});
export const counted = (key: string, of: NamedKind): CountedSlot => ({ slot: 'counted', key, of });
export const money = (key: string): MoneySlot => ({ slot: 'money', key });
export const choice = (key: string, ...of: string[]): ChoiceSlot => ({ slot: 'choice', key, of });
export const name = (key: string, ...of: NamedKind[]): NameSlot => ({ slot: 'name', key, of });
export const newName = (): NewNameSlot => ({ slot: 'new-name', key: 'name' });
export const word = (key: string, what: string): WordSlot => ({ slot: 'word', key, what });
export const text = (key: string): TextSlot => ({ slot: 'text', key });
export const rest = (key: string, what: string): RestSlot => ({ slot: 'rest', key, what });
export const date = (key: string): DateSlot => ({ slot: 'date', key });
export const clock = (key: string): ClockSlot => ({ slot: 'clock', key });
export const code = (key: string): CodeSlot => ({ slot: 'code', key });
export const lit = (textOf: string): LiteralSlot => ({ slot: 'literal', text: textOf });
export const optional = (...slots: Slot[]): OptionalSlot => ({ slot: 'optional', slots });
export const either = (...of: Slot[][]): EitherSlot => ({ slot: 'either', of });
export const list = (key: string, by: ListSlot['by'], ...slots: Slot[]): ListSlot => ({
  slot: 'list',
  key,
  slots,
  by,
});

/** One kind of line: a heading, or a line that belongs to one. */
export interface LineKind {
  readonly key: string;
  readonly takes: readonly Slot[];
  /** What it means, in a sentence or two, as the reference and the editor show it. */
  readonly means: string;
  /** As it would be written. Tested: it reads without a finding. */
  readonly example: string;
  /** May stand more than once in its block. */
  readonly many?: boolean;
  /** What holds when it is left out, for a reader. */
  readonly unless?: string;
  /** What the engine does not compute yet; said in a finding at each use. */
  readonly later?: string;
  /** The word is any word (a trade, a currency): `key` is only its name in the reference. */
  readonly open?: boolean;
  /** A heading: the lines that may belong to it. */
  readonly body?: readonly LineKind[];
  /** Its values stand in the column of the lines beside it, though lines may belong to it. */
  readonly inColumn?: boolean;
  /** A heading in the first column. */
  readonly top?: boolean;
}

export const line = (
  key: string,
  takes: readonly Slot[],
  means: string,
  example: string,
  more: Partial<LineKind> = {},
): LineKind => ({ key, takes, means, example, ...more });

/**
 * The same kind of line, its amounts, money and sizes taking ranges, and those of the lines that belong to it: for what
 * a job may not know exactly yet. `decided`: lines that take none, and why.
 */
export function inRanges(kind: LineKind, decided: Why = {}): LineKind {
  const why = typeof decided === 'string' ? decided : undefined;
  const body = kind.body?.map((inner) => inRanges(inner, why ?? whyOf(decided, inner.key)));
  return { ...kind, takes: kind.takes.map((slot) => rangedSlot(slot, why)), body };
}

function whyOf(decided: Why, key: string): Why | undefined {
  return typeof decided !== 'string' && Object.hasOwn(decided, key) ? decided[key] : undefined;
}

function rangedSlot(slot: Slot, why: string | undefined): Slot {
  const all = (slots: readonly Slot[]) => slots.map((each) => rangedSlot(each, why));
  switch (slot.slot) {
    case 'quantity':
      if (why && !slot.range) return { ...slot, fixed: slot.fixed ?? why };
      return slot.fixed ? slot : { ...slot, range: slot.range ?? 'may' };
    case 'money':
    case 'counted':
    case 'size':
      if (why) return { ...slot, fixed: slot.fixed ?? why };
      return slot.fixed ? slot : { ...slot, range: 'may' };
    case 'list':
      return { ...slot, slots: all(slot.slots) };
    case 'optional':
      return { ...slot, slots: all(slot.slots) };
    case 'either':
      return { ...slot, of: slot.of.map(all) };
    default:
      return slot;
  }
}
