/** Money of a line, however it is written. */
import { cover, type Span } from '../../../shared/span';
import type { Slot } from '../../lines/slots';
import type { Item, MeasureItem, NumberText } from '../../syntax';
import { backwards } from '../numbers';
import { NUMBER_UNIT, type Run, type Step } from './run';

/** Unit words of a measure that may stand for a money code: `12 EUR`. */
const CODE = /^[A-Z]{3}$/;

/** `£6.40`, `GBP 6.40`, `6.40 GBP`, `6.40 €`. */
export function money(
  run: Run,
  slot: Extract<Slot, { slot: 'money' }>,
  item: Item,
  at: number,
): Step | undefined {
  const unknown = run.unknown(slot.key, item, at);
  if (unknown) return unknown;
  const next = run.items[at + 1];
  if (item.kind === 'money')
    return item.high && !slot.range
      ? run.miss(at, slot)
      : paid(run, slot.key, item.sigil, item, item.span, at + 1);
  if (item.kind === 'word' && CODE.test(item.text) && next?.kind === 'measure' && !next.unit)
    return next.high && !slot.range
      ? run.miss(at + 1, slot)
      : paid(run, slot.key, item, ends(next), cover(item.span, next.span), at + 2);
  if (item.kind !== 'measure' || (item.high && !slot.range)) return run.miss(at, slot);
  if (item.unit && CODE.test(item.unit.text))
    return paid(run, slot.key, item.unit, ends(item), item.span, at + 1);
  if (!item.unit && next?.kind === 'junk' && /^[$£¥€¢₠-₿]$/.test(next.text))
    return paid(run, slot.key, next, ends(item), cover(item.span, next.span), at + 2);
  return run.miss(at, slot);
}

function paid(
  run: Run,
  key: string,
  currency: { text: string },
  said: { readonly amount: NumberText; readonly high?: NumberText },
  span: Span,
  next: number,
): Step | undefined {
  const amount = run.number(said.amount, NUMBER_UNIT);
  const high = said.high && run.number(said.high, NUMBER_UNIT);
  const turned = amount && high?.lt(amount);
  if (turned) run.faults.push(backwards(said.amount, said.high!));
  if (!amount || (said.high && !high) || turned)
    return { next, values: { [key]: { kind: 'unknown', span } } };
  return {
    next,
    values: { [key]: { kind: 'money', span, amount, high, currency: currency.text } },
  };
}

function ends({ low, high }: MeasureItem) {
  return { amount: low, high };
}
