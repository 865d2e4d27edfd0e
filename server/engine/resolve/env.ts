/** What every part of the work is worked out in: the book, the units and money of the reader, and which end of a range is taken. */

import type { NamedKind } from '../../../grammar/lines/slots';
import type { MoneyValue, ReadLine, SideValue, Value, Values } from '../../../grammar/read/values';
import type { Exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { type FigureStyle, PLAIN_STYLE, readStyle } from '../../../shared/show';
import { toBase } from '../../../shared/units';
import { fact, missing, type Origin, type Range, type Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import { type Book, lineOrigin, originOf, type Setting, wordOf } from './book';

/** Which value of a range stands for it. The same engine is run again with another. */
export type Pick = 'middle' | Sample;

/** One of many runs: each range has a place of its own between its ends. */
export interface Sample {
  /**
   * How far it lies between its low and its high end, 0 to 1; `said` as {@link rangeKey} makes it. Nothing for one that
   * stays a range: terms go on to say how they hang on it.
   */
  readonly of: (said: object) => number | undefined;
}

const rangeKeys = new WeakMap<SourceBlock, Map<object, object>>();

/** What a range is known by. Lines alike of two blocks may have been read into one and the same value. */
export function rangeKey(block: SourceBlock, value: object): object {
  const keys = rangeKeys.get(block) ?? new Map<object, object>();
  rangeKeys.set(block, keys);
  const key = keys.get(value) ?? {};
  keys.set(value, key);
  return key;
}

export interface Money {
  readonly code: string;
  readonly sign: string;
  readonly digits: number;
}

export interface Env {
  readonly book: Book;
  readonly pick: Pick;
  readonly imperial: boolean;
  readonly style: FigureStyle;
  readonly money: Money;
}

export function envOf(book: Book, pick: Pick): Env {
  const units = wordOf(book.setting('defaults', 'units')?.line.values.units);
  const sample = wordOf(book.setting('defaults', 'figures')?.line.values.sample);
  return {
    book,
    pick,
    imperial: units === 'imperial',
    style: readStyle(sample) ?? PLAIN_STYLE,
    money: moneyOf(book),
  };
}

/** The job's currency, else the defaults'. */
export function currencyLine(book: Book): Setting | undefined {
  return book.setting('job', 'currency') ?? book.setting('defaults', 'currency');
}

function moneyOf(book: Book): Money {
  const code = wordOf(currencyLine(book)?.line.values.currency) || 'XXX';
  const known = currencyOf(book, code);
  const digits = known?.line.values.digits;
  const sign = wordOf(known?.line.values.sign) || code;
  return { code, sign, digits: digits?.kind === 'quantity' ? digits.low.toNumber() : 2 };
}

/** By its code; the nearest block that has it, so that the long list is read only for a currency no library names. */
export function currencyOf(book: Book, code: string): Setting | undefined {
  for (const block of book.blocksOf('currencies')) {
    const line = block.read.heading?.body.find((l) => l.syntax.key?.text === code);
    if (line) return { line, block };
  }
  return undefined;
}

/** A value as written, or between what and what it lies. */
export interface Said {
  readonly low: Exact;
  readonly high?: Exact;
  /** Of things that come in whole ones. */
  readonly whole?: boolean;
}

/** The exact value of a quantity as written, so far between its ends. */
export function picked({ low, high, whole }: Said, at: number): Exact {
  if (!high) return low;
  return within(low, high, whole ?? false, at);
}

/** So far between two values; of whole ones each as likely as the next, and of two that are as near the greater. */
function within(low: Exact, high: Exact, whole: boolean, at: number): Exact {
  if (!whole) return low.add(high.sub(low).mul(at));
  const ones = high.sub(low).add(1).mul(at).floor();
  const value = low.add(ones);
  return value.gt(high) ? high : value;
}

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
    if (watching && value?.kind === 'quantity' && value.high)
      watching.add(rangeKey(this.block, value));
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
    const key = rangeKey(this.block, side);
    watching?.add(key);
    return picked({ low: side.value, high: side.high }, this.pinned(key) ?? 0.5);
  }

  /** The sides of a size in base units. */
  sides(key: string): readonly number[] | undefined {
    const value = this.values[key];
    if (value?.kind !== 'size') return undefined;
    return value.sides.map((side) => toBase(this.side(side), side.unit).toNumber());
  }
}

function rangeNote({ low, high, whole }: Said, pick: Pick): string | undefined {
  if (!high) return undefined;
  const where = pick === 'middle' ? pick : 'somewhere';
  return phrase`${where} of ${low.toFixed()} to ${high.toFixed()}${whole ? phrase`, whole ones` : ''}`;
}

function rangeOf(said: Said, block: SourceBlock, value: object): Range | undefined {
  const { low, high, whole } = said;
  return high && { low, high, whole: whole ?? false, said: rangeKey(block, value) };
}

let watching: Set<object> | undefined;

/**
 * Ranges that are read as plain numbers while something is worked out: it cannot tell by its terms how it hangs on
 * them.
 */
export function plainlyRead<T>(work: () => T): {
  readonly made: T;
  readonly plain: ReadonlySet<object>;
} {
  const before = watching;
  const plain = new Set<object>();
  watching = plain;
  try {
    return { made: work(), plain };
  } finally {
    watching = before;
  }
}

/** The lines of a heading (or of a heading within it), by their word. */
export class BlockFacts {
  private readonly byKey = new Map<string, LineFacts[]>();

  constructor(
    readonly block: SourceBlock,
    readonly heading: ReadLine,
    readonly env: Env,
    private readonly also: readonly SourceBlock[] = [],
  ) {
    this.take(block, heading.body);
    for (const other of also) this.take(other, other.read.heading?.body ?? []);
  }

  /** Lines of a word that a nearer block has already said are passed over. */
  private take(block: SourceBlock, lines: readonly ReadLine[]): void {
    const said = new Set(this.byKey.keys());
    for (const line of lines) {
      const key = line.kind.key;
      if (said.has(key)) continue;
      const facts = new LineFacts(block, line, this.env);
      const list = this.byKey.get(key);
      if (list) list.push(facts);
      else this.byKey.set(key, [facts]);
    }
  }

  get name(): string {
    return wordOf(this.heading.values.name);
  }

  /** As the nearest file that gives one has it. */
  get title(): string {
    const titles = [this.heading, ...this.also.map((b) => b.read.heading)];
    return titles.map((h) => wordOf(h?.values.title)).find(Boolean) ?? this.name;
  }

  get origin(): Origin {
    return lineOrigin(this.block, this.heading);
  }

  line(key: string): LineFacts | undefined {
    return this.byKey.get(key)?.[0];
  }

  lines(key: string): readonly LineFacts[] {
    return this.byKey.get(key) ?? [];
  }

  /** The block's own line, else the nearest defaults' line of the same word. */
  orDefault(key: string): LineFacts | undefined {
    return this.line(key) ?? defaultLine(this.env, key);
  }
}

/** What was looked up in an environment: its book never changes, and every piece of work asks for the same few. */
class LookedUp {
  readonly defaults = new Map<string, LineFacts | undefined>();
  readonly named = new Map<string, BlockFacts | undefined>();
  readonly blocks = new WeakMap<SourceBlock, BlockFacts>();
}

const looked = new WeakMap<Env, LookedUp>();

function lookedUp(env: Env): LookedUp {
  let known = looked.get(env);
  if (!known) {
    known = new LookedUp();
    looked.set(env, known);
  }
  return known;
}

function once<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  if (!known.has(key)) known.set(key, make());
  return known.get(key)!;
}

export function defaultLine(env: Env, key: string): LineFacts | undefined {
  return once(lookedUp(env).defaults, key, () => {
    const setting = env.book.setting('defaults', key);
    return setting && new LineFacts(setting.block, setting.line, env);
  });
}

/** A default that is a number; a gap when no library gives it. */
export function defaultTerm(env: Env, key: string, value: string, label: string): Term {
  const line = defaultLine(env, key);
  return line?.term(value, label) ?? missing(label, '', phrase`no defaults give ${key}`);
}

export function factsOf(block: SourceBlock, env: Env): BlockFacts | undefined {
  const heading = block.read.heading;
  if (!heading) return undefined;
  const { blocks } = lookedUp(env);
  const facts = blocks.get(block) ?? new BlockFacts(block, heading, env);
  blocks.set(block, facts);
  return facts;
}

/** A named thing with all that any file of the scope says of it, the nearest first. */
export function factsNamed(env: Env, kind: NamedKind, name: string): BlockFacts | undefined {
  return once(lookedUp(env).named, `${kind} ${name}`, () => {
    const [first, ...also] = env.book.findAll(kind, name);
    const heading = first?.read.heading;
    return first && heading && new BlockFacts(first, heading, env, also);
  });
}
