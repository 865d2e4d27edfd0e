/** Drawings as DXF, for whoever has a CAD program: at full size in millimetres, one layer for each ink. */
import type { Sheet } from '../../engine/drawing';
import { entityOf, planeOf } from './entities';
import { extentOf } from './extent';
import { layers } from './layers';
import { blocks, header, objects, tables } from './tables';
import { Handles, type Tag, written } from './tags';

/** Between sheets that lie one under another, mm on paper. */
const BETWEEN = 20;

/**
 * Sheets as one DXF file of the year 2000: the work at full size, words and hatches as large as they are on
 * paper at the sheet's scale. Plain ASCII; the same sheets give the same bytes.
 */
export function sheetsToDxf(sheets: readonly Sheet[]): string {
  const handles = new Handles();
  let lower = 0;
  const entities = sheets.flatMap((sheet): Tag[] => {
    const plane = planeOf(sheet, lower);
    lower += (sheet.height + BETWEEN) * sheet.scale;
    return sheet.marks.flatMap((mark) => entityOf(mark, plane, handles));
  });
  const extent = extentOf(entities);
  const scale = sheets[0]?.scale ?? 1;
  return written([
    ...header(extent, handles.seed),
    [0, 'SECTION'],
    [2, 'CLASSES'],
    [0, 'ENDSEC'],
    ...tables(extent, layers(), scale),
    ...blocks(),
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...entities,
    [0, 'ENDSEC'],
    ...objects(),
    [0, 'EOF'],
  ]);
}
