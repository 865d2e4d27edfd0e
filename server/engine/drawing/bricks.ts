/** Single pieces of a face, as setting-out places them. */
export type { RowPiece as DrawnBrick } from '../setting-out';
export { bricksOf, piecesIn } from '../setting-out';
