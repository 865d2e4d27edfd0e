import { later, phrase, spoken } from '../../../../shared/phrase';
import { lengthOn, type Units } from '../lengths';
import type { Box, Key, Label, Style } from '../model';

/** What stands on a wall or a pier. `at` is the height of its underside, mm. */
export type Topping = Run | Cap;

interface Top {
  from: number;
  to: number;
  at: number;
  height: number;
  /** Through the work: sides of the pieces of one row, mm, a joint between each two. */
  deep?: readonly number[];
  /** The faces of what it stands on, mm from the wall's front; those of the wall when left out. */
  faces?: { front: number; back: number };
}

export interface RunPiece {
  readonly length: number;
  readonly cut: boolean;
}

/** Pieces side by side. */
export interface Run extends Top {
  kind: 'brick-on-edge' | 'brick-on-end' | 'precast' | 'tiles';
  /** Face of one whole piece along the wall, mm. */
  piece: number;
  wholes: number;
  joint: number;
  /** Cuts, laid together in the middle. */
  cut?: { length: number; count: number };
  /** All pieces in their order, where that is known: then `wholes` and `cut` do not say where they lie. */
  pieces?: readonly RunPiece[];
  /** Rows through the work with joints of their own, one for each of `deep`, the front first. */
  rows?: readonly { readonly pieces: readonly RunPiece[]; readonly joint: number }[];
  /** Joint between rows, mm; as along the work when left out. */
  between?: number;
  /** No line says how thick it is: `height` is for the eye only. */
  unsaid?: boolean;
}

interface Cap extends Top {
  kind: 'cap';
  name: string;
}

const STYLES: Readonly<Record<Run['kind'], Style>> = {
  'brick-on-edge': 'on-edge',
  'brick-on-end': 'on-edge',
  precast: 'precast',
  tiles: 'tile',
};

const WORDS: Readonly<Record<Topping['kind'], string>> = {
  'brick-on-edge': later`brick on edge`,
  'brick-on-end': later`brick on end`,
  precast: later`precast coping`,
  tiles: later`tile creasing`,
  cap: later`cap`,
};

/** In their order; else whole ones with the cuts in the middle of them. */
function piecesOf({ pieces, wholes, cut, piece }: Run): readonly RunPiece[] {
  if (pieces) return pieces;
  const before = Math.ceil(wholes / 2);
  const some = (count: number, length: number, isCut: boolean) =>
    Array.from({ length: count }, () => ({ length, cut: isCut }));
  return [
    ...some(before, piece, false),
    ...some(cut?.count ?? 0, cut?.length ?? 0, true),
    ...some(wholes - before, piece, false),
  ];
}

/** Pieces left to right; what is too long to show piece by piece ends as one band. */
export function runBoxes(topping: Run): Box[] {
  const { piece, joint, at: y, height, kind } = topping;
  let x = topping.from;
  const boxes = piecesOf(topping).map(({ length: width, cut }): Box => {
    const box: Box = { style: cut ? 'cut' : STYLES[kind], x, y, width, height };
    x += width + joint;
    return box;
  });
  const rest = topping.to - x;
  return rest > piece ? [...boxes, { style: STYLES[kind], x, y, width: rest, height }] : boxes;
}

export function toppingBoxes(topping: Topping): Box[] {
  if (topping.kind !== 'cap') return runBoxes(topping);
  const { from: x, at: y, height } = topping;
  return [{ style: 'cap', x, y, width: topping.to - x, height }];
}

export function toppingLabels(topping: Topping, units: Units): Label[] {
  if (topping.kind === 'cap') {
    const { name: text, from, to, at, height } = topping;
    const room = { width: to - from, height };
    return [{ text, x: (from + to) / 2, y: at + height / 2, size: 2.2, room }];
  }
  return runBoxes(topping)
    .filter((box) => box.style === 'cut')
    .map((box) => cutLabel(box, units));
}

/** The length along the wall, written on a cut. */
export function cutLabel({ x, y, width, height }: Box, units: Units): Label {
  const at = { x: x + width / 2, y: y + height / 2, size: 1.8, room: { width, height } };
  return { ...at, text: lengthOn(units, width), cut: width };
}

function isUnsaid(topping: Topping): boolean {
  return topping.kind === 'cap' || topping.unsaid === true;
}

/** Heights of tops that are known, mm: no line says how thick a cap is. */
export function toppingTops(toppings: readonly Topping[]): number[] {
  return toppings.flatMap((t) => (isUnsaid(t) ? [] : [t.at + t.height]));
}

/** What is drawn and not to be measured. */
export function toppingNotes(toppings: readonly Topping[]): string[] {
  const caps = toppings.some((topping) => topping.kind === 'cap');
  const runs = toppings.some((topping) => topping.kind !== 'cap' && topping.unsaid);
  return [
    ...(caps ? [phrase`Caps are drawn without their true thickness.`] : []),
    ...(runs ? [phrase`The coping is drawn without its true thickness.`] : []),
  ];
}

export function toppingKeys(toppings: readonly Topping[]): Key[] {
  const kinds = new Set(toppings.map((topping) => topping.kind));
  return (Object.keys(WORDS) as Topping['kind'][])
    .filter((kind) => kinds.has(kind))
    .map((kind) => ({ style: kind === 'cap' ? 'cap' : STYLES[kind], text: spoken(WORDS[kind]) }));
}
