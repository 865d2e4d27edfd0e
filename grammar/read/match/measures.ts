/** Quantities of a line, with their units and ranges. */
import type { Exact } from '../../../shared/exact';
import { cover, type Span } from '../../../shared/span';
import type { Unit } from '../../../shared/units';
import type { CountedSlot, QuantitySlot } from '../../lines/slots';
import type { Item, MeasureItem } from '../../syntax';
import { backwards, checkWhole, exactOf, unitFor } from '../numbers';
import type { Value } from '../values';
import { NUMBER_UNIT, type Run, type Step } from './run';

/** Where it is still to be measured its unit may stand or be left out. */
export function quantity(run: Run, slot: QuantitySlot, item: Item, at: number): Step | undefined {
  const unknown = run.unknown(slot.key, item, at);
  if (unknown) return run.isUnit(slot, at + 1) ? { ...unknown, next: at + 2 } : unknown;
  if (item.kind !== 'measure' || (item.high && !slot.range)) return run.miss(at, slot);
  if (!item.unit && !slot.bare) {
    const low = exactOf(item.low);
    if ('fault' in low) run.faults.push(low.fault);
    return 'fault' in low ? run.step(slot.key, at, item.span) : run.miss(at, slot);
  }
  if (item.unit && slot.bare) return run.miss(at, slot);
  return measured(run, slot, item, at);
}

function measured(run: Run, slot: QuantitySlot, item: MeasureItem, at: number): Step | undefined {
  const unit = item.unit ? run.take(unitFor(item.unit, slot.dimensions)) : NUMBER_UNIT;
  const measure = item.high ? undefined : item.span;
  const low = run.number(item.low, unit, slot, measure);
  const high = item.high && run.number(item.high, unit, slot);
  if (!unit || !low || (item.high && !high)) return run.step(slot.key, at, item.span);
  const part =
    slot.whole &&
    (checkWhole(low, item.low, high ? 0 : 1) ?? (high && checkWhole(high, item.high!, 1)));
  if (part) {
    run.faults.push(part);
    return run.step(slot.key, at, item.span);
  }
  if (high?.lt(low)) {
    run.faults.push(backwards(item.low, item.high!));
    return run.step(slot.key, at, item.span);
  }
  const second = unit.name === 'ft' && !high ? inches(run, at + 1, slot) : undefined;
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
function inches(
  run: Run,
  at: number,
  slot: QuantitySlot,
): { value: Exact; span: Span } | undefined {
  const item = run.items[at];
  if (item?.kind !== 'measure' || item.high || !slot.dimensions.includes('length'))
    return undefined;
  if (!item.unit || !['in', 'inch', 'inches'].includes(item.unit.text)) return undefined;
  const value = exactOf(item.low);
  return 'fault' in value ? undefined : { value: value.value, span: item.span };
}

export function counted(run: Run, slot: CountedSlot, item: Item, at: number): Step | undefined {
  if (item.kind !== 'measure' || !item.unit) return run.miss(at, slot);
  if (item.high && !slot.range) return run.miss(at, slot);
  const low = run.number(item.low, NUMBER_UNIT);
  const high = item.high && run.number(item.high, NUMBER_UNIT);
  const turned = low && high?.lt(low);
  if (turned) run.faults.push(backwards(item.low, item.high!));
  if (!low || (item.high && !high) || turned) return run.step(slot.key, at, item.span);
  const of: Value = { kind: 'word', span: item.unit.span, text: item.unit.text };
  const span = item.high ? cover(item.low.span, item.high.span) : item.low.span;
  const value: Value = { kind: 'quantity', span, low, high };
  return { next: at + 1, values: { [slot.key]: value, [`${slot.key}Of`]: of } };
}

/** Nobody lays a part of a course: a range of such goes in whole ones. */
function wholeOnes(slot: QuantitySlot, unit: Unit, low: Exact, high: Exact): boolean {
  const ones = slot.whole || unit.dimension === 'courses' || unit.dimension === 'pieces';
  return ones && low.isInteger() && high.isInteger();
}
