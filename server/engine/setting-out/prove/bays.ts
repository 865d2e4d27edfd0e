/** Pieces of a course sorted into the stretches that they fill. */
import { type BuiltCourse, type BuiltPiece, type Outline, SAME } from './types';

/** A clear stretch and the pieces in it, left to right. */
export interface Bay {
  readonly outline: Outline;
  readonly pieces: readonly BuiltPiece[];
}

export interface Sorted {
  readonly bays: readonly Bay[];
  /** Pieces in none of the stretches. */
  readonly stray: readonly BuiltPiece[];
  /** What is no piece at all: no length, or none that can be told. */
  readonly broken: readonly BuiltPiece[];
}

const isPiece = ({ from, to }: BuiltPiece) =>
  Number.isFinite(from) && Number.isFinite(to) && to > from;

/** A piece belongs where its middle is; only a tooth may lie past the line. */
export function baysOf({ pieces, outline }: BuiltCourse): Sorted {
  const sound = pieces.filter(isPiece).sort((a, b) => a.from - b.from || a.to - b.to);
  const stretches = [...outline].sort((a, b) => a.from - b.from);
  const bays = stretches.map((each) => ({ outline: each, pieces: [] as BuiltPiece[] }));
  const stray: BuiltPiece[] = [];
  let i = 0;
  for (const piece of [...sound].sort((a, b) => middle(a) - middle(b))) {
    while (i < bays.length - 1 && middle(piece) > between(bays[i]!, bays[i + 1]!)) i++;
    const bay = bays[i];
    if (bay && isIn(piece, bay.outline)) bay.pieces.push(piece);
    else stray.push(piece);
  }
  return { bays, stray, broken: pieces.filter((piece) => !isPiece(piece)) };
}

const middle = ({ from, to }: BuiltPiece) => (from + to) / 2;

const between = (a: Bay, b: Bay) => (a.outline.to + b.outline.from) / 2;

function isIn(piece: BuiltPiece, { from, to, left, right }: Outline): boolean {
  const low = left === 'toothed' ? piece.to : middle(piece);
  const high = right === 'toothed' ? piece.from : middle(piece);
  return low >= from - SAME && high <= to + SAME;
}
