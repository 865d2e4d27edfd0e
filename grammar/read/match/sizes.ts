/** Sizes of a line: sides beside each other, and the unit that serves them. */
import { cover, type Span } from '../../../shared/span';
import type { SizeSlot } from '../../lines/slots';
import type { MeasureItem, WordItem } from '../../syntax';
import { backwards, unitFor } from '../numbers';
import type { SizeValue, Value } from '../values';
import type { Run, Step } from './run';

/** `a x b x c unit`: the last unit serves all sides that have none. A side may be still to be measured: so is the size. */
export function size(run: Run, slot: SizeSlot, at: number): Step | undefined {
  const unknown = run.unknown(slot.key, run.items[at]!, at);
  if (unknown && !run.isSign(at + 1, 'x')) return unknown;
  const sides: (MeasureItem | undefined)[] = [];
  let next = at;
  for (;;) {
    const item = run.items[next];
    const open = run.isSign(next, '?');
    if (!open && (item?.kind !== 'measure' || (item.high && !slot.range)))
      return run.miss(next, slot);
    sides.push(item?.kind === 'measure' ? item : undefined);
    next += open && run.isUnit(slot, next + 1) ? 2 : 1;
    if (!run.isSign(next, 'x') || sides.length === Math.max(...slot.count)) break;
    next += 1;
  }
  if (!slot.count.includes(sides.length)) return run.miss(next, slot);
  const known = sides.filter((side) => side !== undefined);
  if (known.length < sides.length)
    return unmeasured(
      run,
      slot,
      known,
      cover(run.items[at]!.span, run.items[next - 1]!.span),
      next,
    );
  const unit = known.at(-1)!.unit;
  return unit ? sized(run, slot, known, unit, next) : run.miss(next, slot);
}

/** The sides that are measured are read all the same: a wrong number in them is told. */
function unmeasured(
  run: Run,
  slot: SizeSlot,
  known: readonly MeasureItem[],
  span: Span,
  next: number,
): Step {
  for (const { low, unit } of known)
    run.number(low, unit && run.take(unitFor(unit, slot.dimensions)));
  return { next, values: { [slot.key]: { kind: 'unknown', span } } };
}

function sized(run: Run, slot: SizeSlot, items: MeasureItem[], last: WordItem, next: number) {
  const sides: SizeValue['sides'][number][] = [];
  for (const item of items) {
    const unit = run.take(unitFor(item.unit ?? last, slot.dimensions));
    const value = run.number(item.low, unit);
    const high = item.high && run.number(item.high, unit);
    const turned = value && high?.lt(value);
    if (turned) run.faults.push(backwards(item.low, item.high!));
    if (!unit || !value || turned || (item.high && !high)) break;
    sides.push(high ? { value, unit, high, span: item.span } : { value, unit });
  }
  const span = cover(items[0]!.span, items.at(-1)!.span);
  if (sides.length < items.length)
    return { next, values: { [slot.key]: { kind: 'unknown', span } as Value } };
  return { next, values: { [slot.key]: { kind: 'size', span, sides } as Value } };
}
