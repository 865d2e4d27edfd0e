/** Whether a room can be parted into pieces at all, row by row: cheap beside looking through every way to fill it. */
import type { Region } from '../../piers/region';
import type { GridPiece } from '../../piers/types';

/** Quarter bricks: as wide as pieces are laid. */
const WIDTHS = [4, 2, 3, 1];

/** Whether every row of the region can be made up of pieces, but for barred ones: if not, no search is needed. */
export function canPart(region: Region, barred: (piece: GridPiece) => boolean): boolean {
  for (let y = 0; y < region.depth; y++) if (!rowParts(region, y, barred)) return false;
  return true;
}

/** A row of cells is made up of pieces as wide as some are; how deep each is, is not asked. */
function rowParts(
  { width, at }: Region,
  y: number,
  barred: (piece: GridPiece) => boolean,
): boolean {
  const reached = new Set([0]);
  for (let x = 0; x < width; x++) {
    if (!reached.has(x)) continue;
    if (at(x, y) !== 'fill') reached.add(x + 1);
    else
      for (const w of WIDTHS) {
        const inside = Array.from({ length: w }, (_, i) => x + i);
        if (!inside.every((c) => c < width && at(c, y) === 'fill')) continue;
        if (!barred({ piece: 'cut', x, y, w, d: 1 })) reached.add(x + w);
      }
  }
  return reached.has(width);
}
