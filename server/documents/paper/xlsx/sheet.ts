/** One table as a worksheet. */
import { escapeXml } from '../../svg';
import { isNumber } from '../csv';
import type { Cell, Row, Table } from '../model';
import type { Formats } from './styles';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

/** Widths of columns are counted in figures of the plain type; a program may show no more than 255. */
const WIDEST = 60;
/** A cell holds no more signs (ECMA-376 names none; it is what programs take). */
const MOST_SIGNS = 32_767;

export function sheetXml(table: Table, formats: Formats): string {
  const titles = table.columns.map(({ title }): Cell => ({ text: title }));
  const head = rowXml({ cells: titles }, 1, table, formats, true);
  const rows = table.rows.map((row, i) =>
    rowXml(row, i + 2, table, formats, row.role !== undefined),
  );
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<worksheet xmlns="${MAIN}">`,
    // The titles stay in sight while the rows are gone through.
    '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>',
    `<cols>${widths(table)}</cols>`,
    `<sheetData>${head}${rows.join('')}</sheetData>`,
    '</worksheet>',
  ].join('');
}

function widths({ columns, rows }: Table): string {
  return columns
    .map(({ title }, i) => {
      const texts = [title, ...rows.map((row) => row.cells[i]?.text ?? '')];
      const longest = texts.reduce((most, text) => Math.max(most, text.length), 0);
      const width = Math.min(WIDEST, longest + 3);
      return `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`;
    })
    .join('');
}

function rowXml(row: Row, number: number, table: Table, formats: Formats, bold: boolean): string {
  const cells = table.columns.map((_, i) =>
    cellXml(row.cells[i], `${letters(i)}${number}`, formats, bold),
  );
  return `<row r="${number}">${cells.join('')}</row>`;
}

/** A figure is written as its exact digits, whatever a program makes of them; all else is text, and never a formula. */
function cellXml(cell: Cell | undefined, place: string, formats: Formats, bold: boolean): string {
  if (cell?.value !== undefined && isNumber(cell.value)) {
    const decimals = cell.value.split('.')[1]?.length ?? 0;
    const look = formats.of({ bold, wrap: false, decimals: Math.min(decimals, 10) });
    return `<c r="${place}" s="${look}"><v>${cell.value}</v></c>`;
  }
  const text = (cell?.text ?? '').slice(0, MOST_SIGNS);
  if (!text) return '';
  const look = formats.of({
    bold,
    wrap: text.length > WIDEST || text.includes('\n'),
    decimals: undefined,
  });
  return `<c r="${place}" s="${look}" t="inlineStr"><is><t xml:space="preserve">${escapeXml(text)}</t></is></c>`;
}

/** A, B, … Z, AA, … */
function letters(i: number): string {
  const rest = Math.floor(i / 26) - 1;
  return (rest >= 0 ? letters(rest) : '') + String.fromCharCode(65 + (i % 26));
}
