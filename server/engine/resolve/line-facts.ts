/** What one line says. */
import type { MoneyValue, ReadLine, SideValue, Value, Values } from '../../../grammar/read/values';
import type { Exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { toBase } from '../../../shared/units';
import { fact, missing, type Origin, type Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import { lineOrigin, originOf, wordOf } from './book';
import type { Env } from './env';
import { picked, rangeKey, rangeNote, rangeOf, readPlainly, type Said } from './ranges';

/** One line's values as terms, each with where it stands. */
export class LineFacts {
  private readonly numbers = new Map<string, number | undefined>();

  constructor(
    readonly block: SourceBlock,
    readonly line: ReadLine,
    readonly env: Env,
  ) {}

  get values(): Values {
    return this.line.values;
  }

  get origin(): Origin {
    return lineOrigin(this.block, this.line);
  }

  at(key: string): Origin {
    const value = this.values[key];
    return value ? originOf(this.block, value) : this.origin;
  }

  word(key: string): string {
    return wordOf(this.values[key]);
  }

  /** A plain number or quantity in the unit written. */
  term(key: string, label: string, unit?: string): Term {
    return this.termOf(this.values[key], label, unit);
  }

  /** The same of a value that stands in a list of the line. */
  termOf(value: Value | undefined, label: string, unit?: string): Term {
    if (value?.kind === 'quantity')
      return this.said(value, value, label, unit ?? value.unit?.name ?? '');
    if (value?.kind === 'money') return this.money(value, label);
    const at = value ? originOf(this.block, value) : this.origin;
    const open = missing(label, unit ?? '', phrase`${label} is still to be measured`, at);
    return { ...open, origin: at };
  }

  private money(value: MoneyValue, label: string): Term {
    const { code, sign } = this.env.money;
    if (value.currency === sign || value.currency === code)
      return this.said({ low: value.amount, high: value.high }, value, label, code);
    return missing(
      label,
      code,
      phrase`${label} is in another currency`,
      originOf(this.block, value),
    );
  }

  private said(said: Said, of: Value, label: string, unit: string): Term {
    const range = rangeOf(said, this.block, of);
    const pinned = range && this.pinned(range.said);
    const value = picked(said, pinned ?? 0.5);
    const at = originOf(this.block, of);
    const open = pinned === undefined ? range : undefined;
    return fact(label, value, unit, at, rangeNote(said, this.env.pick), open);
  }

  /** How far between the ends of a range, where this run says so. */
  private pinned(key: object): number | undefined {
    const { pick } = this.env;
    return pick === 'middle' ? undefined : pick.of(key);
  }

  /** In base units (mm, m2, l, kg, h), as a plain number for geometry; nothing when it is not known. */
  number(key: string): number | undefined {
    const value = this.values[key];
    if (value?.kind === 'quantity' && value.high) readPlainly(this.block, value);
    if (!this.numbers.has(key)) this.numbers.set(key, this.numberOf(key));
    return this.numbers.get(key);
  }

  private numberOf(key: string): number | undefined {
    const value = this.values[key];
    if (value?.kind !== 'quantity') return undefined;
    const at = value.high ? this.pinned(rangeKey(this.block, value)) : undefined;
    const one = picked(value, at ?? 0.5);
    return (value.unit ? toBase(one, value.unit) : one).toNumber();
  }

  private side(side: SideValue): Exact {
    if (!side.high) return side.value;
    readPlainly(this.block, side);
    const at = this.pinned(rangeKey(this.block, side));
    return picked({ low: side.value, high: side.high }, at ?? 0.5);
  }

  /** The sides of a size in base units. */
  sides(key: string): readonly number[] | undefined {
    const value = this.values[key];
    if (value?.kind !== 'size') return undefined;
    return value.sides.map((side) => toBase(this.side(side), side.unit).toNumber());
  }
}
