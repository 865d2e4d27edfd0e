/** What a good bricklayer would rather not do, as numbers to choose plans by. Rules of the trade; common practice. */
import type { CountedPiece } from '../types';
import { type Region, shows } from './region';
import type { GridPiece, Side } from './types';

/** Shapes in quarter bricks, the wholes first: they are tried first. */
export const SHAPES: readonly (readonly [CountedPiece, number, number])[] = [
  ['whole', 4, 2],
  ['whole', 2, 4],
  ['three-quarter', 3, 2],
  ['three-quarter', 2, 3],
  ['closer', 1, 4],
  ['closer', 4, 1],
  ['half', 2, 2],
];

const HIDDEN: Readonly<Record<CountedPiece, number>> = {
  whole: 0,
  half: 1,
  'three-quarter': 2,
  closer: 3,
  cut: 4,
};

/** What it costs to lay a piece here; nothing where it is never laid so. */
export function worth(piece: GridPiece, region: Region): number | undefined {
  if (piece.piece === 'whole') return 0;
  const sides = shows(piece, region);
  if (!sides.length) return HIDDEN[piece.piece];
  const quoin = turnsCorner(sides);
  if (piece.piece === 'closer') return quoin ? undefined : closerWorth(piece, sides, region);
  if (piece.piece === 'half') return quoin ? 8 : 4;
  return quoin ? 4 : 3;
}

function turnsCorner(sides: readonly Side[]): boolean {
  const across = sides.some((s) => s === 'front' || s === 'back');
  return across && sides.some((s) => s === 'left' || s === 'right');
}

/** A queen closer shows its end, beside the header at a quoin: elsewhere it is a poor second, on its long side nothing. */
function closerWorth(piece: GridPiece, sides: readonly Side[], region: Region): number | undefined {
  const ends: readonly Side[] = piece.w === 1 ? ['front', 'back'] : ['left', 'right'];
  if (sides.some((side) => !ends.includes(side))) return undefined;
  return sides.every((side) => besideQuoin(piece, side, region)) ? 2 : 6;
}

const HEADER = 2;

function besideQuoin(piece: GridPiece, side: Side, region: Region): boolean {
  const { x, y, w, d } = piece;
  const deep = { front: y, back: y + d - 1, left: x, right: x + w - 1 }[side];
  const air = (along: number) =>
    (piece.w === 1 ? region.at(along, deep) : region.at(deep, along)) === 'air';
  const at = piece.w === 1 ? x : y;
  return air(at - HEADER - 1) || air(at + HEADER + 1);
}

/** A brick that runs from one part into the other: it ties what stands out to the wall. */
export function ties(piece: GridPiece, line: number): boolean {
  return piece.y < line && piece.y + piece.d > line;
}
