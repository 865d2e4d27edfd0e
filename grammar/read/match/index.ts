/**
 * Matches the items of a line with what its kind takes. Backtracks over options and alternatives; when
 * nothing fits, the place that got furthest says what was expected there.
 */
import { cover } from '../../../shared/span';
import type { ListSlot, Slot } from '../../lines/slots';
import type { Item } from '../../syntax';
import type { Fault } from '../fault';
import type { Values } from '../values';
import { counted, quantity } from './measures';
import { money } from './money';
import { Run, type Step } from './run';
import { size } from './sizes';
import { clock, code, date, keep, literal, rest, text } from './words';

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

class Matching extends Run {
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

  private one(slot: Slot, at: number): Step | undefined {
    const item = this.items[at];
    if (!item) return this.miss(at, slot);
    switch (slot.slot) {
      case 'quantity':
        return quantity(this, slot, item, at);
      case 'counted':
        return counted(this, slot, item, at);
      case 'size':
        return size(this, slot, at);
      case 'money':
        return money(this, slot, item, at);
      case 'literal':
        return literal(slot.text, item, at) ?? this.miss(at, slot);
      case 'choice':
        return item.kind === 'word' && slot.of.includes(item.text)
          ? keep(slot.key, item, at)
          : this.miss(at, slot);
      case 'name':
      case 'new-name':
      case 'word':
        return item.kind === 'word' ? keep(slot.key, item, at) : this.miss(at, slot);
      case 'text':
        return text(this, slot, item, at);
      case 'date':
        return item.kind === 'date' ? date(this, slot.key, item, at) : this.miss(at, slot);
      case 'clock':
        return item.kind === 'clock' ? clock(this, slot.key, item, at) : this.miss(at, slot);
      case 'code':
        return code(slot.key, item, at) ?? this.miss(at, slot);
      case 'rest':
        return item.kind === 'word' ? rest(this, slot.key, at) : this.miss(at, slot);
      default:
        return undefined;
    }
  }
}
