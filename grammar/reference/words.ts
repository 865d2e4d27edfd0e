/** What the table of lines says to a reader, in English: sentences that are translated where they are shown. */
import { HEADINGS, type LineKind, type Slot } from '../lines';

/** Each once, in the order of the table. */
export function wordsOfLines(): string[] {
  return [...new Set(HEADINGS.flatMap(ofKind))];
}

function ofKind(kind: LineKind): string[] {
  const own = [kind.means, kind.unless, kind.later].filter((text) => text !== undefined);
  return [...own, ...kind.takes.flatMap(ofSlot), ...(kind.body ?? []).flatMap(ofKind)];
}

function ofSlot(slot: Slot): string[] {
  switch (slot.slot) {
    case 'quantity':
    case 'counted':
    case 'size':
    case 'money':
      return 'fixed' in slot && slot.fixed ? [slot.fixed] : [];
    case 'word':
    case 'rest':
      return [slot.what];
    case 'optional':
    case 'list':
      return slot.slots.flatMap(ofSlot);
    case 'either':
      return slot.of.flat().flatMap(ofSlot);
    default:
      return [];
  }
}
