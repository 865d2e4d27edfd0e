import type { Craft } from './craft';
import { BRICK, EPS } from './grid';
import type { Cell } from './tiling';

/** A way to fill a gap, and how little a bricklayer would like it (0 is as the pattern goes). */
export interface Filling {
  cells: readonly Cell[];
  cost: number;
}

/** What may stand in a gap of one course. */
export interface Palette {
  pieces: readonly { cell: Cell; cost: number }[];
  /** Least width of a cut, steps. */
  leastCut: number;
  /** Greatest: the saw takes the rest of the brick. */
  mostCut: number;
}

/*
 * Costs put in order what a good bricklayer would rather do where the bond must be broken (common
 * practice): pieces of the pattern, then a header or bat out of its course, then three-quarter
 * bats, then a cut, the longer the better. Only their order matters.
 */
const EACH = 0.5;
const STRANGER = 1;
const THREE_QUARTER = 3;
const CUT = 4;
const CUT_SHORT = 3;

/** The pieces that suit a course whose pattern is made of `pattern`. */
export function paletteOf(
  pattern: readonly Cell[],
  { grid, leastCut, mostCut }: Pick<Craft, 'grid' | 'leastCut' | 'mostCut'>,
): Palette {
  const has = (piece: string) => pattern.some((cell) => cell.piece === piece);
  const short = grid.thickness === 1 ? 'half' : 'header';
  return {
    pieces: [
      { cell: { piece: 'stretcher', width: BRICK }, cost: has('stretcher') ? 0 : STRANGER },
      { cell: { piece: short, width: grid.header }, cost: has(short) ? 0 : STRANGER },
      { cell: { piece: 'three-quarter', width: (BRICK * 3) / 4 }, cost: THREE_QUARTER },
    ],
    leastCut: (leastCut + grid.joint) / grid.step,
    mostCut: (mostCut + grid.joint) / grid.step,
  };
}

/**
 * Every way to fill `gap` steps, at most `most` pieces: from whole pieces alone where any do, else
 * with exactly one cut among them that takes what is left.
 */
export function compose(gap: number, palette: Palette, most: number): Filling[] {
  if (gap < -EPS) return [];
  const found: Filling[] = [];
  extend([], 0, 0);
  if (found.length > 0) return found;
  for (const { cells, cost } of partial(gap, palette, most - 1)) withCut(cells, cost);
  return found;

  function extend(cells: readonly Cell[], width: number, cost: number): void {
    if (Math.abs(width - gap) < EPS * 100) found.push({ cells, cost });
    if (width >= gap - EPS * 100 || cells.length === most) return;
    for (const { cell, cost: extra } of palette.pieces)
      if (width + cell.width <= gap + EPS * 100)
        extend([...cells, cell], width + cell.width, cost + extra + EACH);
  }

  function withCut(cells: readonly Cell[], cost: number): void {
    const width = gap - cells.reduce((sum, cell) => sum + cell.width, 0);
    if (width < palette.leastCut - EPS || width > BRICK - EPS * 100) return;
    for (const cuts of cutsOf(width, palette)) {
      const price = cost + cuts.reduce((sum, cut) => sum + priceOf(cut), 0);
      for (let at = 0; at <= cells.length; at++)
        found.push({ cells: [...cells.slice(0, at), ...cuts, ...cells.slice(at)], cost: price });
    }
  }
}

const priceOf = ({ width }: Cell) => EACH + CUT + CUT_SHORT * (1 - width / BRICK);

/** One cut; where the saw would take all that comes off a brick, two: the least cut, and what is left. */
function cutsOf(width: number, { leastCut, mostCut }: Palette): Cell[][] {
  if (width <= mostCut + EPS) return [[{ piece: 'cut', width, takesRest: true }]];
  const least: Cell = { piece: 'cut', width: leastCut };
  const rest: Cell = { piece: 'cut', width: width - leastCut, takesRest: true };
  if (rest.width < leastCut - EPS) return [];
  return [least, rest].map((first) => [first, first === least ? rest : least]);
}

/** Sequences that leave room for one more piece shorter than a brick. */
function partial(gap: number, palette: Palette, most: number): Filling[] {
  const found: Filling[] = [];
  const grow = (cells: readonly Cell[], width: number, cost: number): void => {
    if (gap - width < BRICK) found.push({ cells, cost });
    if (cells.length >= most) return;
    for (const { cell, cost: extra } of palette.pieces)
      if (width + cell.width < gap) grow([...cells, cell], width + cell.width, cost + extra + EACH);
  };
  grow([], 0, 0);
  return found;
}
