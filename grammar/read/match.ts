/**
 * Matches the items of a line with what its kind takes. Backtracks over options and alternatives; when
 * nothing fits, the place that got furthest says what was expected there.
 */
import type { Exact } from '../../shared/exact';
import { cover, type Span } from '../../shared/span';
import { UNITS, type Unit } from '../../shared/units';
import type { CountedSlot, ListSlot, QuantitySlot, SizeSlot, Slot } from '../lines/slots';
import type { ClockItem, DateItem, Item, MeasureItem, NumberText, WordItem } from '../syntax';
import { clockFault, dateFault } from './dates';
import type { Fault } from './fault';
import { backwards, checkMost, checkWhole, exactOf, unitFor } from './numbers';
import type { SizeValue, Value, Values } from './values';

export interface Mismatch {
  /** The item that did not fit, or the number of items when one is missing. */
  readonly at: number;
  readonly expected: readonly Slot[];
}

export interface Match {
  readonly values?: Values;
  readonly faults: readonly Fault[];
  readonly mismatch?: Mismatch;
}

const NUMBER_UNIT: Unit = { name: '', dimension: 'number', factor: UNITS[0]!.factor, also: [] };

/** Unit words of a measure that may stand for a money code: `12 EUR`. */
const CODE = /^[A-Z]{3}$/;

interface Step {
  readonly next: number;
  readonly values: Values;
}

export function match(slots: readonly Slot[], items: readonly Item[]): Match {
  const run = new Matching(items);
  const step = run.all(slots, 0, {});
  if (step && step.next === items.length)
    return run.faults.length ? { faults: run.faults } : { values: step.values, faults: [] };
  if (step) run.miss(step.next, undefined);
  return { faults: run.faults, mismatch: { at: run.furthest, expected: run.expected } };
}

/** A unit of another alternative says less of what is wrong than a fault of the one whose unit it is. */
function weight(faults: readonly Fault[]): number {
  return faults.reduce((sum, { code }) => sum + (code === 'unit-wrong' ? 2 : 1), 0);
}

class Matching {
  furthest = 0;
  expected: Slot[] = [];
  faults: Fault[] = [];

  constructor(private readonly items: readonly Item[]) {}

  miss(at: number, slot: Slot | undefined): undefined {
    if (at > this.furthest) {
      this.furthest = at;
      this.expected = [];
    }
    if (at === this.furthest && slot && !this.expected.includes(slot)) this.expected.push(slot);
    return undefined;
  }

  /** All the slots one after another, from item `at`; tries the rest again for each way an option can go. */
  all(slots: readonly Slot[], at: number, values: Values): Step | undefined {
    const [first, ...rest] = slots;
    if (!first) return { next: at, values };
    if (first.slot === 'optional') return this.optional(first.slots, rest, at, values);
    if (first.slot === 'either') return this.either(first.of, rest, at, values);
    if (first.slot === 'list') return this.list(first, rest, at, values);
    const got = this.one(first, at);
    return got && this.all(rest, got.next, { ...values, ...got.values });
  }

  private optional(slots: readonly Slot[], rest: readonly Slot[], at: number, values: Values) {
    const kept = this.faults.length;
    const withIt = this.all([...slots, ...rest], at, values);
    if (withIt && withIt.next === this.items.length) return withIt;
    const faults = this.faults.splice(kept);
    const without = this.all(rest, at, values);
    if (without && (!withIt || without.next > withIt.next)) return without;
    this.faults.push(...faults);
    return withIt ?? without;
  }

  private either(
    of: readonly (readonly Slot[])[],
    rest: readonly Slot[],
    at: number,
    values: Values,
  ) {
    let best: Step | undefined;
    let bestFaults: Fault[] = [];
    const kept = this.faults.length;
    for (const group of this.fitting(of, at)) {
      const step = this.all([...group, ...rest], at, values);
      const faults = this.faults.splice(kept);
      if (step && (!best || weight(faults) < weight(bestFaults) || step.next > best.next)) {
        best = step;
        bestFaults = faults;
      } else if (!best && faults.length && !bestFaults.length) bestFaults = faults;
      if (best && !bestFaults.length && best.next === this.items.length) break;
    }
    this.faults.push(...bestFaults);
    return best;
  }

  /** Of what is still to be measured: those alone whose unit stands behind it, where it is the unit of any. */
  private fitting(of: readonly (readonly Slot[])[], at: number): readonly (readonly Slot[])[] {
    if (!this.isSign(at, '?')) return of;
    const named = of.filter(([slot]) => slot?.slot === 'quantity' && this.isUnit(slot, at + 1));
    return named.length ? named : of;
  }

  private list(slot: ListSlot, rest: readonly Slot[], at: number, values: Values) {
    const of: Values[] = [];
    let next = at;
    for (;;) {
      const step = this.all(slot.slots, next, {});
      if (!step) {
        if (!of.length || slot.by) return undefined;
        break;
      }
      of.push(step.values);
      next = step.next;
      if (slot.by && !this.isSign(next, slot.by)) break;
      if (slot.by) next += 1;
      else if (next >= this.items.length) break;
    }
    const span = cover(this.items[at]!.span, this.items[next - 1]!.span);
    return this.all(rest, next, { ...values, [slot.key]: { kind: 'list', span, of } });
  }

  /** The unit of a side that is still to be measured. */
  private isUnit({ dimensions }: Pick<SizeSlot, 'dimensions'>, at: number): boolean {
    const item = this.items[at];
    return item?.kind === 'word' && 'value' in unitFor(item, dimensions);
  }

  private isSign(at: number, text: string): boolean {
    const item = this.items[at];
    return item?.kind === 'sign' && item.text === text;
  }

  private one(slot: Slot, at: number): Step | undefined {
    const item = this.items[at];
    if (!item) return this.miss(at, slot);
    switch (slot.slot) {
      case 'quantity':
        return this.quantity(slot, item, at);
      case 'counted':
        return this.counted(slot, item, at);
      case 'size':
        return this.size(slot, at);
      case 'money':
        return this.money(slot, item, at);
      case 'literal':
        return this.literal(slot.text, item, at) ?? this.miss(at, slot);
      case 'choice':
        return item.kind === 'word' && slot.of.includes(item.text)
          ? this.keep(slot.key, item, at)
          : this.miss(at, slot);
      case 'name':
      case 'new-name':
      case 'word':
        return item.kind === 'word' ? this.keep(slot.key, item, at) : this.miss(at, slot);
      case 'text':
        return item.kind === 'text' ? this.keep(slot.key, item, at) : this.miss(at, slot);
      case 'date':
        return item.kind === 'date' ? this.date(slot.key, item, at) : this.miss(at, slot);
      case 'clock':
        return item.kind === 'clock' ? this.clock(slot.key, item, at) : this.miss(at, slot);
      case 'code':
        return this.code(slot.key, item, at) ?? this.miss(at, slot);
      case 'rest':
        return item.kind === 'word' ? this.rest(slot.key, at) : this.miss(at, slot);
      default:
        return undefined;
    }
  }

  private keep(key: string, item: Item & { text: string }, at: number): Step {
    const kind = item.kind === 'text' || item.kind === 'date' ? item.kind : 'word';
    return { next: at + 1, values: { [key]: { kind, span: item.span, text: item.text } } };
  }

  private rest(key: string, at: number): Step {
    const items = this.items.slice(at);
    const span = cover(items[0]!.span, items.at(-1)!.span);
    return { next: this.items.length, values: { [key]: { kind: 'rest', span, items } } };
  }

  private date(key: string, item: DateItem, at: number): Step {
    const wrong = dateFault(item);
    if (!wrong) return this.keep(key, item, at);
    this.faults.push(wrong);
    return this.step(key, at, item.span);
  }

  private clock(key: string, item: ClockItem, at: number): Step | undefined {
    const [hours, minutes] = item.text.split(':').map(Number) as [number, number];
    if (hours < 24 && minutes < 60)
      return {
        next: at + 1,
        values: { [key]: { kind: 'clock', span: item.span, minutes: hours * 60 + minutes } },
      };
    this.faults.push(clockFault(item));
    return this.step(key, at, item.span);
  }

  private literal(text: string, item: Item, at: number): Step | undefined {
    const same =
      (item.kind === 'word' && item.text === text) ||
      (item.kind === 'sign' && (item.text === text || (text === 'per' && item.text === '/')));
    return same ? { next: at + 1, values: {} } : undefined;
  }

  private code(key: string, item: Item, at: number): Step | undefined {
    if (
      item.kind === 'word' ||
      item.kind === 'text' ||
      item.kind === 'code' ||
      item.kind === 'date'
    )
      return this.keep(key, item, at);
    if (item.kind !== 'measure' || item.unit || item.high) return undefined;
    const text = item.low.digits ?? '';
    return { next: at + 1, values: { [key]: { kind: 'word', span: item.span, text } } };
  }

  private unknown(key: string, item: Item, at: number): Step | undefined {
    if (item.kind !== 'sign' || item.text !== '?') return undefined;
    return { next: at + 1, values: { [key]: { kind: 'unknown', span: item.span } } };
  }

  /** Where it is still to be measured its unit may stand or be left out. */
  private quantity(slot: QuantitySlot, item: Item, at: number): Step | undefined {
    const unknown = this.unknown(slot.key, item, at);
    if (unknown) return this.isUnit(slot, at + 1) ? { ...unknown, next: at + 2 } : unknown;
    if (item.kind !== 'measure' || (item.high && !slot.range)) return this.miss(at, slot);
    if (!item.unit && !slot.bare) {
      const low = exactOf(item.low);
      if ('fault' in low) this.faults.push(low.fault);
      return 'fault' in low ? this.step(slot.key, at, item.span) : this.miss(at, slot);
    }
    if (item.unit && slot.bare) return this.miss(at, slot);
    return this.measured(slot, item, at);
  }

  private measured(slot: QuantitySlot, item: MeasureItem, at: number): Step | undefined {
    const unit = item.unit ? this.take(unitFor(item.unit, slot.dimensions)) : NUMBER_UNIT;
    const measure = item.high ? undefined : item.span;
    const low = this.number(item.low, unit, slot, measure);
    const high = item.high && this.number(item.high, unit, slot);
    if (!unit || !low || (item.high && !high)) return this.step(slot.key, at, item.span);
    const part =
      slot.whole &&
      (checkWhole(low, item.low, high ? 0 : 1) ?? (high && checkWhole(high, item.high!, 1)));
    if (part) {
      this.faults.push(part);
      return this.step(slot.key, at, item.span);
    }
    if (high?.lt(low)) {
      this.faults.push(backwards(item.low, item.high!));
      return this.step(slot.key, at, item.span);
    }
    const second = unit.name === 'ft' && !high ? this.inches(at + 1, slot) : undefined;
    if (second) {
      const span = cover(item.span, second.span);
      const both = low.add(second.value.div(12));
      return { next: at + 2, values: { [slot.key]: { kind: 'quantity', span, low: both, unit } } };
    }
    const named = unit === NUMBER_UNIT ? undefined : unit;
    const whole = high && wholeOnes(slot, unit, low, high);
    const value: Value = { kind: 'quantity', span: item.span, low, high, unit: named, whole };
    return { next: at + 1, values: { [slot.key]: value } };
  }

  /** The inches of `6 ft 8 in`. */
  private inches(at: number, slot: QuantitySlot): { value: Exact; span: Span } | undefined {
    const item = this.items[at];
    if (item?.kind !== 'measure' || item.high || !slot.dimensions.includes('length'))
      return undefined;
    if (!item.unit || !['in', 'inch', 'inches'].includes(item.unit.text)) return undefined;
    const value = exactOf(item.low);
    return 'fault' in value ? undefined : { value: value.value, span: item.span };
  }

  private number(
    text: MeasureItem['low'],
    unit: Unit | undefined,
    slot?: QuantitySlot,
    measure?: Span,
  ) {
    const value = this.take(exactOf(text, { unit: unit?.name, measure }));
    if (!value || !unit) return undefined;
    const absurd = checkMost(value, unit, text, slot?.most);
    if (absurd) this.faults.push(absurd);
    return absurd ? undefined : value;
  }

  private take<T>(outcome: { value: T } | { fault: Fault }): T | undefined {
    if ('value' in outcome) return outcome.value;
    this.faults.push(outcome.fault);
    return undefined;
  }

  /** Goes on after a number that is wrong in itself: the fault has been noted, the line is lost. */
  private step(key: string, at: number, span: Span): Step {
    return { next: at + 1, values: { [key]: { kind: 'unknown', span } } };
  }

  private counted(slot: CountedSlot, item: Item, at: number): Step | undefined {
    if (item.kind !== 'measure' || !item.unit) return this.miss(at, slot);
    if (item.high && !slot.range) return this.miss(at, slot);
    const low = this.number(item.low, NUMBER_UNIT);
    const high = item.high && this.number(item.high, NUMBER_UNIT);
    const turned = low && high?.lt(low);
    if (turned) this.faults.push(backwards(item.low, item.high!));
    if (!low || (item.high && !high) || turned) return this.step(slot.key, at, item.span);
    const of: Value = { kind: 'word', span: item.unit.span, text: item.unit.text };
    const span = item.high ? cover(item.low.span, item.high.span) : item.low.span;
    const value: Value = { kind: 'quantity', span, low, high };
    return { next: at + 1, values: { [slot.key]: value, [`${slot.key}Of`]: of } };
  }

  /** `a x b x c unit`: the last unit serves all sides that have none. A side may be still to be measured: so is the size. */
  private size(slot: SizeSlot, at: number): Step | undefined {
    const unknown = this.unknown(slot.key, this.items[at]!, at);
    if (unknown && !this.isSign(at + 1, 'x')) return unknown;
    const sides: (MeasureItem | undefined)[] = [];
    let next = at;
    for (;;) {
      const item = this.items[next];
      const open = this.isSign(next, '?');
      if (!open && (item?.kind !== 'measure' || (item.high && !slot.range)))
        return this.miss(next, slot);
      sides.push(item?.kind === 'measure' ? item : undefined);
      next += open && this.isUnit(slot, next + 1) ? 2 : 1;
      if (!this.isSign(next, 'x') || sides.length === Math.max(...slot.count)) break;
      next += 1;
    }
    if (!slot.count.includes(sides.length)) return this.miss(next, slot);
    const known = sides.filter((side) => side !== undefined);
    if (known.length < sides.length)
      return this.unmeasured(
        slot,
        known,
        cover(this.items[at]!.span, this.items[next - 1]!.span),
        next,
      );
    const unit = known.at(-1)!.unit;
    return unit ? this.sized(slot, known, unit, next) : this.miss(next, slot);
  }

  /** The sides that are measured are read all the same: a wrong number in them is told. */
  private unmeasured(
    slot: SizeSlot,
    known: readonly MeasureItem[],
    span: Span,
    next: number,
  ): Step {
    for (const { low, unit } of known)
      this.number(low, unit && this.take(unitFor(unit, slot.dimensions)));
    return { next, values: { [slot.key]: { kind: 'unknown', span } } };
  }

  private sized(slot: SizeSlot, items: MeasureItem[], last: WordItem, next: number) {
    const sides: SizeValue['sides'][number][] = [];
    for (const item of items) {
      const unit = this.take(unitFor(item.unit ?? last, slot.dimensions));
      const value = this.number(item.low, unit);
      const high = item.high && this.number(item.high, unit);
      const turned = value && high?.lt(value);
      if (turned) this.faults.push(backwards(item.low, item.high!));
      if (!unit || !value || turned || (item.high && !high)) break;
      sides.push(high ? { value, unit, high, span: item.span } : { value, unit });
    }
    const span = cover(items[0]!.span, items.at(-1)!.span);
    if (sides.length < items.length)
      return { next, values: { [slot.key]: { kind: 'unknown', span } as Value } };
    return { next, values: { [slot.key]: { kind: 'size', span, sides } as Value } };
  }

  /** `£6.40`, `GBP 6.40`, `6.40 GBP`, `6.40 €`. */
  private money(slot: Extract<Slot, { slot: 'money' }>, item: Item, at: number): Step | undefined {
    const unknown = this.unknown(slot.key, item, at);
    if (unknown) return unknown;
    const next = this.items[at + 1];
    if (item.kind === 'money')
      return item.high && !slot.range
        ? this.miss(at, slot)
        : this.paid(slot.key, item.sigil, item, item.span, at + 1);
    if (item.kind === 'word' && CODE.test(item.text) && next?.kind === 'measure' && !next.unit)
      return next.high && !slot.range
        ? this.miss(at + 1, slot)
        : this.paid(slot.key, item, ends(next), cover(item.span, next.span), at + 2);
    if (item.kind !== 'measure' || (item.high && !slot.range)) return this.miss(at, slot);
    if (item.unit && CODE.test(item.unit.text))
      return this.paid(slot.key, item.unit, ends(item), item.span, at + 1);
    if (!item.unit && next?.kind === 'junk' && /^[$£¥€¢₠-₿]$/.test(next.text))
      return this.paid(slot.key, next, ends(item), cover(item.span, next.span), at + 2);
    return this.miss(at, slot);
  }

  private paid(
    key: string,
    currency: { text: string },
    said: { readonly amount: NumberText; readonly high?: NumberText },
    span: Span,
    next: number,
  ): Step | undefined {
    const amount = this.number(said.amount, NUMBER_UNIT);
    const high = said.high && this.number(said.high, NUMBER_UNIT);
    const turned = amount && high?.lt(amount);
    if (turned) this.faults.push(backwards(said.amount, said.high!));
    if (!amount || (said.high && !high) || turned)
      return { next, values: { [key]: { kind: 'unknown', span } } };
    return {
      next,
      values: { [key]: { kind: 'money', span, amount, high, currency: currency.text } },
    };
  }
}

function ends({ low, high }: MeasureItem) {
  return { amount: low, high };
}

/** Nobody lays a part of a course: a range of such goes in whole ones. */
function wholeOnes(slot: QuantitySlot, unit: Unit, low: Exact, high: Exact): boolean {
  const ones = slot.whole || unit.dimension === 'courses' || unit.dimension === 'pieces';
  return ones && low.isInteger() && high.isInteger();
}
