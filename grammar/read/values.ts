/** What a line says, once its items are matched with what its kind takes. */
import type { Exact } from '../../shared/exact';
import type { Span } from '../../shared/span';
import type { Unit } from '../../shared/units';
import type { LineKind } from '../lines';
import type { BlockSyntax, Item, LineSyntax } from '../syntax';
import type { Fault } from './fault';

/** `low` and `high` are in the unit written; `high` only for a range. */
export interface QuantityValue {
  readonly kind: 'quantity';
  readonly span: Span;
  readonly low: Exact;
  readonly high?: Exact;
  readonly unit?: Unit;
  /** Of a range: of things that come in whole ones. */
  readonly whole?: boolean;
}

/** `?`: still to be measured, or to be found out. */
export interface UnknownValue {
  readonly kind: 'unknown';
  readonly span: Span;
  /** Of a text that is still to be found out: what is to stand there, where it says so. */
  readonly wanted?: string;
}

export interface SizeValue {
  readonly kind: 'size';
  readonly span: Span;
  /** In the order written, each with its unit. */
  readonly sides: readonly SideValue[];
}

/** A side of a size; `high` and where it stands only of a range. */
export interface SideValue {
  readonly value: Exact;
  readonly unit: Unit;
  readonly high?: Exact;
  readonly span?: Span;
}

export interface MoneyValue {
  readonly kind: 'money';
  readonly span: Span;
  readonly amount: Exact;
  /** Only of a range. */
  readonly high?: Exact;
  /** A sign such as £, or a code such as GBP. */
  readonly currency: string;
}

/** A time of day, in minutes from midnight. */
export interface ClockValue {
  readonly kind: 'clock';
  readonly span: Span;
  readonly minutes: number;
}

/** A word, name, text, date or reference as written. */
export interface WordValue {
  readonly kind: 'word' | 'text' | 'date';
  readonly span: Span;
  readonly text: string;
}

export interface ListValue {
  readonly kind: 'list';
  readonly span: Span;
  readonly of: readonly Values[];
}

/** A line of something else, as its words. */
export interface RestValue {
  readonly kind: 'rest';
  readonly span: Span;
  readonly items: readonly Item[];
}

export type Value =
  | QuantityValue
  | UnknownValue
  | SizeValue
  | MoneyValue
  | ClockValue
  | WordValue
  | ListValue
  | RestValue;
export type Values = Readonly<Record<string, Value | undefined>>;

export interface ReadLine {
  readonly kind: LineKind;
  readonly syntax: LineSyntax;
  readonly values: Values;
  readonly body: readonly ReadLine[];
}

export interface ReadBlock {
  readonly syntax: BlockSyntax;
  /** Absent when the block has no heading that can be read. */
  readonly heading?: ReadLine;
  readonly faults: readonly Fault[];
}
