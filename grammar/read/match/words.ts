/** Words, texts, dates and references of a line. */
import { cover } from '../../../shared/span';
import type { TextSlot } from '../../lines/slots';
import type { ClockItem, DateItem, Item } from '../../syntax';
import { blankIn } from '../blank';
import { clockFault, dateFault } from '../dates';
import type { Run, Step } from './run';

export function keep(key: string, item: Item & { text: string }, at: number): Step {
  const kind = item.kind === 'text' || item.kind === 'date' ? item.kind : 'word';
  return { next: at + 1, values: { [key]: { kind, span: item.span, text: item.text } } };
}

export function text(run: Run, slot: TextSlot, item: Item, at: number): Step | undefined {
  const open = slot.blank && blankIn(item);
  if (open) return { next: at + 1, values: { [slot.key]: open } };
  return item.kind === 'text' ? keep(slot.key, item, at) : run.miss(at, slot);
}

export function rest(run: Run, key: string, at: number): Step {
  const items = run.items.slice(at);
  const span = cover(items[0]!.span, items.at(-1)!.span);
  return { next: run.items.length, values: { [key]: { kind: 'rest', span, items } } };
}

export function date(run: Run, key: string, item: DateItem, at: number): Step {
  const wrong = dateFault(item);
  if (!wrong) return keep(key, item, at);
  run.faults.push(wrong);
  return run.step(key, at, item.span);
}

export function clock(run: Run, key: string, item: ClockItem, at: number): Step | undefined {
  const [hours, minutes] = item.text.split(':').map(Number) as [number, number];
  if (hours < 24 && minutes < 60)
    return {
      next: at + 1,
      values: { [key]: { kind: 'clock', span: item.span, minutes: hours * 60 + minutes } },
    };
  run.faults.push(clockFault(item));
  return run.step(key, at, item.span);
}

export function literal(text: string, item: Item, at: number): Step | undefined {
  const same =
    (item.kind === 'word' && item.text === text) ||
    (item.kind === 'sign' && (item.text === text || (text === 'per' && item.text === '/')));
  return same ? { next: at + 1, values: {} } : undefined;
}

export function code(key: string, item: Item, at: number): Step | undefined {
  if (item.kind === 'word' || item.kind === 'text' || item.kind === 'code' || item.kind === 'date')
    return keep(key, item, at);
  if (item.kind !== 'measure' || item.unit || item.high) return undefined;
  const text = item.low.digits ?? '';
  return { next: at + 1, values: { [key]: { kind: 'word', span: item.span, text } } };
}
