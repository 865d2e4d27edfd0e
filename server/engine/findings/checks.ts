/** Checks that every line of a block gets from what its kind takes: names that no file gives, money of another currency, work that is not computed yet. */

import type { NamedKind, QuantitySlot, Slot } from '../../../grammar/lines/slots';
import type { ReadLine, Value, Values } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { kindSaid } from '../kinds-said';
import { isTrade } from '../labour/gang';
import { isMeasure, measuresFor } from '../mortar/measures';
import { originOf } from '../resolve/book';
import { currencyOf, type Env } from '../resolve/env';
import { takenBy } from '../resolve/per';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { coursesNotWhole } from './courses-whole';
import { figuresUnreadable } from './idle';
import { nameTwice, nameUnknown } from './names';
import { perUnknown } from './per-unknown';
import type { Remark } from './remark';

/** Names of walls, piers and repairs: they are work, and so stand outside the book. */
export type WorkNames = ReadonlyMap<string, readonly string[]>;

export function checkBlock(block: SourceBlock, env: Env, work: WorkNames): Remark[] {
  const heading = block.read.heading;
  if (!heading) return [];
  const check = new Check(block, env, work);
  check.line(heading);
  return check.remarks;
}

class Check {
  readonly remarks: Remark[] = [];
  /** Alternatives of a line that take the same value look at it once each. */
  private readonly told = new Set<Value>();

  constructor(
    private readonly block: SourceBlock,
    private readonly env: Env,
    private readonly work: WorkNames,
  ) {}

  line(line: ReadLine): void {
    if (line.kind.later) this.later(line, line.kind.key, line.kind.later);
    if (line.kind.key === 'currency' || line.kind.open) this.currency(line);
    if (line.kind.key === 'figures') this.figures(line);
    this.slots(line.kind.takes, line.values);
    for (const inner of line.body) this.line(inner);
  }

  private later(line: ReadLine, word: string, what: string): void {
    const origin = { block: this.block, span: line.syntax.span };
    const message = phrase`“${word}” is read and kept. Not computed yet: ${what}. No total counts it.`;
    this.remarks.push({ code: 'not-computed', severity: 'information', origin, message });
  }

  private figures({ values }: ReadLine): void {
    const sample = values.sample;
    const remark = sample && figuresUnreadable(textOf(sample), originOf(this.block, sample));
    if (remark) this.remarks.push(remark);
  }

  private currency(line: ReadLine): void {
    const value = line.values.currency;
    if (!value || currencyOf(this.env.book, textOf(value))) return;
    const message = phrase`“${textOf(value)}” is no currency of ISO 4217. Write its code of three letters, such as GBP, EUR or USD.`;
    this.remarks.push({
      code: 'currency-unknown',
      severity: 'error',
      origin: originOf(this.block, value),
      message,
    });
  }

  private slots(slots: readonly Slot[], values: Values): void {
    for (const slot of slots) this.slot(slot, values);
  }

  private slot(slot: Slot, values: Values): void {
    if (slot.slot === 'optional') this.slots(slot.slots, values);
    else if (slot.slot === 'either') for (const group of slot.of) this.slots(group, values);
    else if (slot.slot === 'list') this.list(slot.slots, values[slot.key]);
    else if (slot.slot === 'name') this.name(slot.of, values[slot.key]);
    else if (slot.slot === 'counted') this.countedOf(slot.of, values, values[`${slot.key}Of`]);
    else if (slot.slot === 'quantity') this.courses(slot, values[slot.key]);
    else if (slot.slot === 'money') this.money(values[slot.key]);
    else if (slot.slot === 'word') this.per(slot.what, values[slot.key]);
  }

  private courses({ dimensions }: QuantitySlot, value: Value | undefined): void {
    if (value?.kind !== 'quantity' || value.unit?.dimension !== 'courses') return;
    if (!dimensions.includes('courses') || value.low.isInteger() || this.told.has(value)) return;
    this.told.add(value);
    this.remarks.push(coursesNotWhole(originOf(this.block, value), value));
  }

  private list(slots: readonly Slot[], value: Value | undefined): void {
    if (value?.kind === 'list') for (const values of value.of) this.slots(slots, values);
  }

  /** Openings are named inside their own wall, which looks for them itself. */
  private name(of: readonly NamedKind[], value: Value | undefined): void {
    if (!value || !('text' in value) || of.includes('opening')) return;
    if (of.some((kind) => this.isKnown(kind, value.text)) || this.told.has(value)) return;
    this.told.add(value);
    const known = of.flatMap((kind) => [
      ...this.env.book.names(kind),
      ...(this.work.get(kind) ?? []),
    ]);
    this.remarks.push(
      nameUnknown(originOf(this.block, value), of.map(kindSaid).join(phrase` or `), value.text, [
        ...new Set(known),
      ]),
    );
  }

  private isKnown(kind: NamedKind, name: string): boolean {
    const { book } = this.env;
    if (kind === 'trade' || kind === 'zone') return book.names(kind).includes(name);
    return book.find(kind, name) !== undefined || (this.work.get(kind) ?? []).includes(name);
  }

  private countedOf(kind: NamedKind, values: Values, value: Value | undefined): void {
    if (kind === 'measure') this.measure(values, value);
    else this.trade(value);
  }

  /** A measure by its name, or a pack that the material comes in. */
  private measure({ material }: Values, value: Value | undefined): void {
    if (!value || this.told.has(value)) return;
    this.told.add(value);
    const known = measuresFor(textOf(material), this.env);
    if (known.some((measure) => isMeasure(measure, textOf(value)))) return;
    this.remarks.push(
      nameUnknown(originOf(this.block, value), kindSaid('measure'), textOf(value), known),
    );
  }

  private trade(value: Value | undefined): void {
    const known = this.env.book.names('trade');
    if (!value || known.some((trade) => isTrade(trade, textOf(value)))) return;
    this.remarks.push(
      nameUnknown(originOf(this.block, value), kindSaid('trade'), textOf(value), known),
    );
  }

  private per(what: string, value: Value | undefined): void {
    const takes = takenBy(what);
    if (!takes || !value || !('text' in value) || takes.known(value.text)) return;
    if (this.told.has(value)) return;
    this.told.add(value);
    this.remarks.push(perUnknown(originOf(this.block, value), value.text, takes.words));
  }

  private money(value: Value | undefined): void {
    if (value?.kind !== 'money') return;
    const { code, sign } = this.env.money;
    if (value.currency === code || value.currency === sign || this.told.has(value)) return;
    this.told.add(value);
    const message = phrase`This is in ${value.currency}, but the job is priced in ${code}. Write it in ${code}: nothing is converted, and totals leave it out.`;
    this.remarks.push({
      code: 'currency-other',
      severity: 'error',
      origin: originOf(this.block, value),
      message,
    });
  }
}

function textOf(value: Value | undefined): string {
  return value && 'text' in value ? value.text : '';
}

/** Two of one kind and name in a file. */
export function namesTwice(file: SourceFile): Remark[] {
  const seen = new Map<string, SourceBlock>();
  return file.blocks.flatMap((block) => {
    if (!block.kind || block.name === undefined) return [];
    const key = `${block.kind} ${block.name}`;
    const first = seen.get(key);
    if (first) return [nameTwice(block, first, kindSaid(block.kind), block.name)];
    seen.set(key, block);
    return [];
  });
}
