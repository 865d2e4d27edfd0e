import type { FacePiece, PieceCount } from '../types';

/**
 * What stands behind one piece of a row's face, itself included. In a row a brick deep two
 * stretchers lie behind one another, one header or closer goes through, and bats and cuts are laid
 * in pairs. In a row half a brick deep a header is snapped to a half bat and a closer to the end of one.
 */
export function through(piece: FacePiece, length: number, deep: 1 | 2): PieceCount {
  if (piece === 'stretcher') return { piece: 'whole', count: deep };
  if (piece === 'header' || piece === 'closer') {
    if (deep === 2) return { piece: piece === 'header' ? 'whole' : 'closer', count: 1 };
    return piece === 'header'
      ? { piece: 'half', count: 1, length }
      : { piece: 'cut', count: 1, length };
  }
  return { piece, count: deep, length };
}
