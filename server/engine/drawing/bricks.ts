/** Single pieces of a face, as setting-out places them. */
export { bricksOf, piecesIn } from '../setting-out';
