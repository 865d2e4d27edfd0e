/**
 * Whole bricks round a core. The outermost half brick of a rectangle is a closed row of an even number of half
 * bricks, so that whole bricks fill it end to end; begun one half brick on, they lap half a brick on every face and
 * go round every corner. So are built the pier of four bricks round a half bat and that of six round a square.
 */
import type { GridPiece } from './types';

interface Cell {
  readonly x: number;
  readonly y: number;
}

/** The half bricks round the outside, from the front left corner along the front. */
function round(width: number, depth: number): Cell[] {
  const along = (n: number) => [...Array(n).keys()];
  return [
    ...along(width - 1).map((i) => ({ x: i, y: 0 })),
    ...along(depth - 1).map((i) => ({ x: width - 1, y: i })),
    ...along(width - 1).map((i) => ({ x: width - 1 - i, y: depth - 1 })),
    ...along(depth - 1).map((i) => ({ x: 0, y: depth - 1 - i })),
  ];
}

function brickOver(a: Cell, b: Cell): GridPiece {
  const lies = a.y === b.y;
  return {
    piece: 'whole',
    x: 2 * Math.min(a.x, b.x),
    y: 2 * Math.min(a.y, b.y),
    w: lies ? 4 : 2,
    d: lies ? 2 : 4,
  };
}

/** The outermost half brick of a rectangle of at least two half bricks each way; `turn` tells one course from the next. */
export function ring(width: number, depth: number, turn: number): GridPiece[] {
  const cells = round(width, depth);
  const first = turn % 2;
  return cells.flatMap((cell, i) => {
    const next = cells[(i + 1) % cells.length]!;
    return i % 2 === first ? [brickOver(cell, next)] : [];
  });
}

/** A row of half a brick's width: wholes, and a half at the one end or the other in turn, or at both in every second course. */
function strip(length: number, lies: boolean, turn: number): GridPiece[] {
  const first = turn % 2 === 1 && length > 2 ? 1 : 0;
  const at = (from: number, halves: number): GridPiece => ({
    piece: halves === 2 ? 'whole' : 'half',
    x: lies ? 2 * from : 0,
    y: lies ? 0 : 2 * from,
    w: lies ? 2 * halves : 2,
    d: lies ? 2 : 2 * halves,
  });
  const wholes = [...Array(Math.floor((length - first) / 2)).keys()].map((i) =>
    at(first + 2 * i, 2),
  );
  const last = (length - first) % 2 ? [at(length - 1, 1)] : [];
  return [...(first ? [at(0, 1)] : []), ...wholes, ...last];
}

/** Wholes and as few halves as may be over a whole rectangle, ring in ring. */
export function solid(width: number, depth: number, turn: number): GridPiece[] {
  if (width < 1 || depth < 1) return [];
  if (depth === 1) return strip(width, true, turn);
  if (width === 1) return strip(depth, false, turn);
  const inner = solid(width - 2, depth - 2, turn);
  return [...ring(width, depth, turn), ...inner.map((p) => ({ ...p, x: p.x + 2, y: p.y + 2 }))];
}

/** Half bats over a rectangle set in by half a brick. */
export function halvesIn(width: number, depth: number): GridPiece[] {
  const pieces: GridPiece[] = [];
  for (let y = 1; y < depth - 1; y++)
    for (let x = 1; x < width - 1; x++)
      pieces.push({ piece: 'half', x: 2 * x, y: 2 * y, w: 2, d: 2 });
  return pieces;
}
