/** Pieces of brick in words, one or several of them. */
import { later, spoken } from '../../../shared/phrase';
import type { CountedPiece, FacePiece } from '../setting-out';

type Piece = CountedPiece | FacePiece;

const NAMES: Readonly<Record<Piece, readonly [string, string]>> = {
  stretcher: [later`stretcher`, later`stretchers`],
  header: [later`header`, later`headers`],
  whole: [later`whole brick`, later`whole bricks`],
  half: [later`half bat`, later`half bats`],
  'three-quarter': [later`three-quarter bat`, later`three-quarter bats`],
  closer: [later`closer`, later`closers`],
  cut: [later`cut`, later`cuts`],
};

export function pieceNamed(piece: Piece, count: number): string {
  return spoken(NAMES[piece][count === 1 ? 0 : 1]);
}
