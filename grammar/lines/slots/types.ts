/**
 * What may stand in a line, as data. One table drives reading, messages, completion, highlighting and the
 * reference; so a slot says everything about itself that any of them needs.
 */
import type { Dimension } from '../../../shared/units';

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
  /** Of its dimensions those that one would mostly write; the others are read all the same. */
  readonly offers?: readonly Dimension[];
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
  /** Of a material: what is meant is measured loose, or counted by the piece. Others are read, but not offered. */
  readonly by?: 'loose' | 'piece';
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

/**
 * A text. `blank`: it may be still to be found out, written `?`, or as a text that begins with `?` and says what is
 * wanted: `"? Your town"`.
 */
export interface TextSlot extends Keyed {
  readonly slot: 'text';
  readonly blank?: boolean;
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
