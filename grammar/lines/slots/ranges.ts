/** Which slots of a line take a range. */
import type { Why } from '../decided';
import type { LineKind, Slot } from './types';

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
