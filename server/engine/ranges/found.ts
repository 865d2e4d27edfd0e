/** Amounts and money that a file gives as ranges. */
import type { Slot } from '../../../grammar/lines';
import type {
  MoneyValue,
  QuantityValue,
  ReadLine,
  SizeValue,
  Values,
} from '../../../grammar/read/values';
import { rangeKey } from '../resolve/env';
import type { Origin } from '../working/term';
import type { SourceBlock } from '../workspace/source';

/** One range, where it stands. */
export interface Ranged {
  readonly value: QuantityValue | MoneyValue;
  /** What it is known by: {@link rangeKey}. */
  readonly key: object;
  readonly line: ReadLine;
  readonly origin: Origin;
}

const found = new WeakMap<SourceBlock, readonly Ranged[]>();

/** Those of a block, in the order they stand. A block’s text never changes, so they are looked for once. */
export function rangesIn(block: SourceBlock): readonly Ranged[] {
  let known = found.get(block);
  if (!known) {
    const heading = block.read.heading;
    known = heading ? inLine(heading, block) : [];
    found.set(block, known);
  }
  return known;
}

function inLine(line: ReadLine, block: SourceBlock): Ranged[] {
  const own = isLimit(line.kind.takes) ? [] : inValues(line.values, line, block);
  return [...own, ...line.body.flatMap((inner) => inLine(inner, block))];
}

/** Where `a..b` is not an amount that is not known, but all that is let pass: joints accepted, mixes of a class. */
function isLimit(slots: readonly Slot[]): boolean {
  return slots.some((slot) =>
    slot.slot === 'list' ? isLimit(slot.slots) : slot.slot === 'quantity' && slot.limits,
  );
}

function inValues(values: Values, line: ReadLine, block: SourceBlock): Ranged[] {
  return Object.values(values).flatMap((value) => {
    if (value?.kind === 'list') return value.of.flatMap((each) => inValues(each, line, block));
    if (value?.kind === 'size') return inSides(value, line, block);
    if ((value?.kind !== 'quantity' && value?.kind !== 'money') || !value.high) return [];
    return [{ value, key: rangeKey(block, value), line, origin: { block, span: value.span } }];
  });
}

function inSides({ sides }: SizeValue, line: ReadLine, block: SourceBlock): Ranged[] {
  return sides.flatMap((side) => {
    const { value: low, high, unit, span } = side;
    if (!high || !span) return [];
    const value: QuantityValue = { kind: 'quantity', span, low, high, unit };
    return [{ value, key: rangeKey(block, side), line, origin: { block, span } }];
  });
}
