/** Slots and lines, written shortly: what the tables of lines are made with. */
import type { Dimension } from '../../../shared/units';
import type {
  ChoiceSlot,
  ClockSlot,
  CodeSlot,
  CountedSlot,
  DateSlot,
  EitherSlot,
  LineKind,
  ListSlot,
  LiteralSlot,
  MoneySlot,
  NamedKind,
  NameSlot,
  NewNameSlot,
  OptionalSlot,
  QuantitySlot,
  RestSlot,
  SizeSlot,
  Slot,
  TextSlot,
  WordSlot,
} from './types';

export const quantity = (key: string, ...dimensions: Dimension[]): QuantitySlot => ({
  slot: 'quantity',
  key,
  dimensions,
});
export const ranged = (key: string, ...dimensions: Dimension[]): QuantitySlot => ({
  slot: 'quantity',
  key,
  dimensions,
  range: 'usual',
});
/** From what to what is let pass. */
export const limits = (key: string, ...dimensions: Dimension[]): QuantitySlot => ({
  ...ranged(key, ...dimensions),
  limits: true,
});
/** A percentage of something, so no more than all of it. */
export const share = (key: string): QuantitySlot => ({ ...quantity(key, 'percent'), most: 1 });
/** A thickness of a wall: a brick has but a few of them. */
export const thickness = (key: string): QuantitySlot => ({
  ...quantity(key, 'bricks'),
  example: '1/2 brick or 1 brick',
  fixed: 'a wall has one thickness, and another is another wall',
});
/** So many of something that no one makes or builds a part of. */
export const whole = (slot: QuantitySlot): QuantitySlot => ({ ...slot, whole: true });
/** One that is never a range, and why. */
export const fixed = <S extends QuantitySlot | SizeSlot>(slot: S, why: string): S => ({
  ...slot,
  fixed: why,
});
/** A plain number, with no unit. */
export const number = (key: string): QuantitySlot => ({
  slot: 'quantity',
  key,
  dimensions: ['number'],
  bare: true,
});
export const size = (
  key: string,
  count: readonly number[],
  ...dimensions: Dimension[]
): SizeSlot => ({
  slot: 'size',
  key,
  count,
  dimensions,
});
export const counted = (key: string, of: NamedKind): CountedSlot => ({ slot: 'counted', key, of });
export const money = (key: string): MoneySlot => ({ slot: 'money', key });
export const choice = (key: string, ...of: string[]): ChoiceSlot => ({ slot: 'choice', key, of });
export const name = (key: string, ...of: NamedKind[]): NameSlot => ({ slot: 'name', key, of });
export const newName = (): NewNameSlot => ({ slot: 'new-name', key: 'name' });
/** A material that is measured loose, such as sand. */
export const looseMaterial = (): NameSlot => ({ ...name('material', 'material'), by: 'loose' });
/** A material that comes by the piece, such as a lintel. */
export const pieceMaterial = (): NameSlot => ({ ...name('material', 'material'), by: 'piece' });
export const word = (key: string, what: string): WordSlot => ({ slot: 'word', key, what });
export const text = (key: string): TextSlot => ({ slot: 'text', key });
/** A text that papers show, and that may be still to be found out. */
export const toFill = (key: string): TextSlot => ({ ...text(key), blank: true });
export const rest = (key: string, what: string): RestSlot => ({ slot: 'rest', key, what });
export const date = (key: string): DateSlot => ({ slot: 'date', key });
export const clock = (key: string): ClockSlot => ({ slot: 'clock', key });
export const code = (key: string): CodeSlot => ({ slot: 'code', key });
export const lit = (textOf: string): LiteralSlot => ({ slot: 'literal', text: textOf });
export const optional = (...slots: Slot[]): OptionalSlot => ({ slot: 'optional', slots });
export const either = (...of: Slot[][]): EitherSlot => ({ slot: 'either', of });
export const list = (key: string, by: ListSlot['by'], ...slots: Slot[]): ListSlot => ({
  slot: 'list',
  key,
  slots,
  by,
});

export const line = (
  key: string,
  takes: readonly Slot[],
  means: string,
  example: string,
  more: Partial<LineKind> = {},
): LineKind => ({ key, takes, means, example, ...more });
