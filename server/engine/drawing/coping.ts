import { lengthOn, type Units } from './lengths';
import type { Box, Key, Label } from './model';

/** What stands on a wall or a pier. `at` is the height of its underside, mm. */
export type Topping =
  | {
      kind: 'brick-on-edge';
      from: number;
      to: number;
      at: number;
      /** Of the course, mm: the brick's width on edge. */
      height: number;
      /** Face of one brick on edge along the wall, mm. */
      piece: number;
      wholes: number;
      joint: number;
      /** Cuts, laid together in the middle. */
      cut?: { length: number; count: number };
    }
  | { kind: 'cap'; name: string; from: number; to: number; at: number; height: number };

/** Bricks on edge left to right, cuts in the middle of them. */
function onEdge(topping: Extract<Topping, { kind: 'brick-on-edge' }>): Box[] {
  const { wholes, cut, piece, joint } = topping;
  const before = Math.ceil(wholes / 2);
  const widths = [
    ...Array.from({ length: before }, () => piece),
    ...Array.from({ length: cut?.count ?? 0 }, () => cut!.length),
    ...Array.from({ length: wholes - before }, () => piece),
  ];
  let x = topping.from;
  return widths.map((width, i) => {
    const isCut = i >= before && i < before + (cut?.count ?? 0);
    const { at: y, height } = topping;
    const box: Box = { style: isCut ? 'cut' : 'on-edge', x, y, width, height };
    x += width + joint;
    return box;
  });
}

export function toppingBoxes(topping: Topping): Box[] {
  if (topping.kind === 'brick-on-edge') return onEdge(topping);
  const { from: x, at: y, height } = topping;
  return [{ style: 'cap', x, y, width: topping.to - x, height }];
}

export function toppingLabels(topping: Topping, units: Units): Label[] {
  if (topping.kind === 'cap') {
    const { name: text, from, to, at, height } = topping;
    const room = { width: to - from, height };
    return [{ text, x: (from + to) / 2, y: at + height / 2, size: 2.2, room }];
  }
  return onEdge(topping)
    .filter((box) => box.style === 'cut')
    .map(({ x, y, width, height }) => {
      const room = { width, height };
      return { text: lengthOn(units, width), x: x + width / 2, y: y + height / 2, size: 1.8, room };
    });
}

/** Heights of tops that are known, mm: no line says how thick a cap is. */
export function toppingTops(toppings: readonly Topping[]): number[] {
  return toppings.flatMap((t) => (t.kind === 'cap' ? [] : [t.at + t.height]));
}

/** What is drawn and not to be measured. */
export function toppingNotes(toppings: readonly Topping[]): string[] {
  const caps = toppings.some((topping) => topping.kind === 'cap');
  return caps ? ['Caps are drawn without their true thickness.'] : [];
}

export function toppingKeys(toppings: readonly Topping[]): Key[] {
  const kinds = new Set(toppings.map((topping) => topping.kind));
  const keys: Key[] = [];
  if (kinds.has('brick-on-edge')) keys.push({ style: 'on-edge', text: 'brick on edge' });
  if (kinds.has('cap')) keys.push({ style: 'cap', text: 'cap' });
  return keys;
}
