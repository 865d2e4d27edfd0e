/** The ways in which a line may go on, each as parts in a row: the table of lines read as signatures. */
import type { LineKind, Slot } from '../../../grammar/lines';
import { patternOf } from '../../../grammar/read/describe';

/** A slot of a line, or the sign after which a list goes on. */
export interface Part {
  /** As the signature shows it, without the brackets round what may be left out. */
  readonly text: string;
  readonly slot: Slot | 'on';
  /** Brackets that stand before and after it. */
  readonly opens: string;
  readonly closes: string;
}

export interface Form {
  readonly parts: readonly Part[];
  /** What the matcher takes for it. */
  readonly takes: readonly Slot[];
}

/** More than anyone steps through: then the ways stand beside each other in one. */
const MOST = 10;

export function formsOf({ takes }: Pick<LineKind, 'takes'>): readonly Form[] {
  const ways = waysOf(takes);
  return (ways.length > MOST ? [takes] : ways).map((way) => ({
    takes: way,
    parts: way.flatMap(partsOf),
  }));
}

/** Every way to choose one of what stands beside each other, what may be left out included. */
function waysOf(slots: readonly Slot[]): (readonly Slot[])[] {
  return slots.reduce<(readonly Slot[])[]>(
    (ways, slot) => {
      const own = choicesOf(slot);
      return ways.flatMap((way) => own.map((choice) => [...way, ...choice]));
    },
    [[]],
  );
}

function choicesOf(slot: Slot): (readonly Slot[])[] {
  if (slot.slot === 'either') return slot.of.flatMap(waysOf);
  if (slot.slot === 'optional') return waysOf(slot.slots).map((slots) => [{ ...slot, slots }]);
  if (slot.slot === 'list') return waysOf(slot.slots).map((slots) => [{ ...slot, slots }]);
  return [[slot]];
}

function partsOf(slot: Slot): Part[] {
  if (slot.slot === 'optional') return between('[', slot.slots.flatMap(partsOf), ']');
  if (slot.slot === 'either') return between('(', slot.of.flat().flatMap(partsOf), ')');
  if (slot.slot !== 'list') return [{ text: textOf(slot), slot, opens: '', closes: '' }];
  const on: Part = { text: `${slot.by} …`.trim(), slot: 'on', opens: '[', closes: ']' };
  return [...slot.slots.flatMap(partsOf), on];
}

function between(opens: string, parts: readonly Part[], closes: string): Part[] {
  return parts.map((part, i) => ({
    ...part,
    opens: i === 0 ? opens + part.opens : part.opens,
    closes: i === parts.length - 1 ? part.closes + closes : part.closes,
  }));
}

/** A word that stands there as it is bears no quotation marks; of a text is told which. */
function textOf(slot: Slot): string {
  if (slot.slot === 'literal') return slot.text;
  return slot.slot === 'text' ? `"${slot.key}"` : patternOf(slot);
}
