/** Pieces of brick in words, one or several of them. */
import type { CountedPiece, FacePiece } from '../setting-out';

type Piece = CountedPiece | FacePiece;

const NAMES: Readonly<Record<Piece, readonly [string, string]>> = {
  stretcher: ['stretcher', 'stretchers'],
  header: ['header', 'headers'],
  whole: ['whole brick', 'whole bricks'],
  half: ['half bat', 'half bats'],
  'three-quarter': ['three-quarter bat', 'three-quarter bats'],
  closer: ['closer', 'closers'],
  cut: ['cut', 'cuts'],
};

export function pieceNamed(piece: Piece, count: number): string {
  return NAMES[piece][count === 1 ? 0 : 1];
}
