/** What every way of reading a line needs. */
import type { Span } from '../../../shared/span';
import { UNITS, type Unit } from '../../../shared/units';
import type { QuantitySlot, SizeSlot, Slot } from '../../lines/slots';
import type { Item, MeasureItem } from '../../syntax';
import type { Fault } from '../fault';
import { checkMost, exactOf, unitFor } from '../numbers';
import type { Values } from '../values';

export const NUMBER_UNIT: Unit = {
  name: '',
  dimension: 'number',
  factor: UNITS[0]!.factor,
  also: [],
};

/** What a slot was read into, and the item that comes next. */
export interface Step {
  readonly next: number;
  readonly values: Values;
}

/** One try to read the items of a line: what is wrong with them, and how far any way through them got. */
export class Run {
  furthest = 0;
  expected: Slot[] = [];
  faults: Fault[] = [];

  constructor(readonly items: readonly Item[]) {}

  miss(at: number, slot: Slot | undefined): undefined {
    if (at > this.furthest) {
      this.furthest = at;
      this.expected = [];
    }
    if (at === this.furthest && slot && !this.expected.includes(slot)) this.expected.push(slot);
    return undefined;
  }

  /** The unit of a side that is still to be measured. */
  isUnit({ dimensions }: Pick<SizeSlot, 'dimensions'>, at: number): boolean {
    const item = this.items[at];
    return item?.kind === 'word' && 'value' in unitFor(item, dimensions);
  }

  isSign(at: number, text: string): boolean {
    const item = this.items[at];
    return item?.kind === 'sign' && item.text === text;
  }

  unknown(key: string, item: Item, at: number): Step | undefined {
    if (item.kind !== 'sign' || item.text !== '?') return undefined;
    return { next: at + 1, values: { [key]: { kind: 'unknown', span: item.span } } };
  }

  number(text: MeasureItem['low'], unit: Unit | undefined, slot?: QuantitySlot, measure?: Span) {
    const value = this.take(exactOf(text, { unit: unit?.name, measure }));
    if (!value || !unit) return undefined;
    const absurd = checkMost(value, unit, text, slot?.most);
    if (absurd) this.faults.push(absurd);
    return absurd ? undefined : value;
  }

  take<T>(outcome: { value: T } | { fault: Fault }): T | undefined {
    if ('value' in outcome) return outcome.value;
    this.faults.push(outcome.fault);
    return undefined;
  }

  /** Goes on after a number that is wrong in itself: the fault has been noted, the line is lost. */
  step(key: string, at: number, span: Span): Step {
    return { next: at + 1, values: { [key]: { kind: 'unknown', span } } };
  }
}
