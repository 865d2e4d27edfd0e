/** A table as pieces: rows that break only where they are long, and headings that come again on every page. */
import type { StructElement } from 'pdfkit';
import type { Column, Row, Table } from '../model';
import { BETWEEN, columnWidths, HEAD, rowStyle } from './columns';
import { MM } from './document';
import type { Hold, Piece } from './flow';
import { artifact, baseline, LEADING, linePieces, marked, rule, type Setting, SIZE } from './sheet';
import type { Style } from './type';
import { wrapped } from './wrap';

/** With more columns than this the type is smaller. */
const MANY = 6;
/** A row of more lines than this may go over to the next page. */
const LONG = 12;
/** Above and below the words of a row, points. */
const PAD = MM;

/** What all rows of one table have alike. */
interface Grid {
  readonly columns: readonly (Column & { readonly at: number; readonly width: number })[];
  readonly size: number;
  readonly set: Setting;
}

export function tablePieces(table: Table, parent: StructElement, set: Setting): Piece[] {
  const { caption } = table;
  const { left: at, width } = set;
  const element = add(parent, 'Table', set);
  const grid = gridOf(table, set);
  const how = { size: SIZE.text, bold: true, at, width, gap: 2 * MM, hold: 2 as Hold };
  const said = caption
    ? linePieces(caption, how, add(element, 'Caption', set), 'Caption', set)
    : [];
  const again = headPieces(grid, undefined);
  const head = headPieces(grid, add(element, 'THead', set));
  const body = add(element, 'TBody', set);
  const rows = table.rows.flatMap((row, i) => {
    const next = table.rows[i + 1];
    // A total belongs to what it is the total of.
    const hold: Hold = next?.role ? 2 : 0;
    return rowPieces(row, add(body, 'TR', set), hold, grid);
  });
  return [...said, ...head, ...rows.map((piece) => ({ ...piece, head: again }))];
}

function add(parent: StructElement, tag: string, { doc }: Setting, scope?: string): StructElement {
  const element = doc.struct(tag, scope ? { scope } : undefined);
  parent.add(element);
  return element;
}

function gridOf(table: Table, set: Setting): Grid {
  const size = table.columns.length > MANY ? SIZE.small : 9.5;
  const widths = columnWidths(table, set.width, { size }, set.type);
  let at = set.left;
  const columns = table.columns.map((column, i) => {
    const placed = { ...column, at, width: widths[i]! };
    at += widths[i]! + BETWEEN;
    return placed;
  });
  return { columns, size, set };
}

/** The titles of the columns; without an element they are there for the eye, on a page that a table goes on to. */
function headPieces(grid: Grid, parent: StructElement | undefined): Piece[] {
  const { columns, set } = grid;
  const row = parent && add(parent, 'TR', set);
  const cells = columns.map(({ title, width }) => ({
    lines: wrapped(title, width, HEAD, set.type),
    style: HEAD,
    // One without a title heads nothing.
    element: row && (title ? add(row, 'TH', set, 'Column') : add(row, 'TD', set)),
    tag: title ? 'TH' : 'TD',
  }));
  return linesOf(cells, grid, { hold: 2, gap: 2 * MM, weight: 0.75 });
}

function rowPieces(row: Row, element: StructElement, hold: Hold, grid: Grid): Piece[] {
  const { columns, set } = grid;
  const style = rowStyle(row, grid.size);
  const cells = columns.map(({ width, holds }, i) => {
    const named = i === 0 && holds === 'text';
    const text = row.cells[i]?.text ?? '';
    return {
      lines: wrapped(text, width, style, set.type),
      style,
      element: named ? add(element, 'TH', set, 'Row') : add(element, 'TD', set),
      tag: named ? 'TH' : 'TD',
    };
  });
  const weight = row.role === 'grand' ? 1.5 : 0.25;
  return linesOf(cells, grid, { hold, gap: 0, weight, above: row.role ? 0.75 : 0 });
}

interface CellLines {
  readonly lines: readonly string[];
  readonly style: Style;
  readonly element: StructElement | undefined;
  readonly tag: string;
}

interface RowLook {
  /** To the next row. */
  readonly hold: Hold;
  readonly gap: number;
  /** Of the rule below it, and above it where there is one. */
  readonly weight: number;
  readonly above?: number;
}

/** A piece for each line of words across all cells of a row. */
function linesOf(cells: readonly CellLines[], grid: Grid, look: RowLook): Piece[] {
  const number = Math.max(1, ...cells.map(({ lines }) => lines.length));
  const { doc, left, width } = grid.set;
  const high = (cells[0]?.style.size ?? SIZE.text) * LEADING;
  return Array.from({ length: number }, (_, i): Piece => {
    const [first, last] = [i === 0, i === number - 1];
    const height = high + (first ? PAD : 0) + (last ? PAD : 0);
    const near = i === 0 || i === number - 2;
    return {
      height,
      gap: first ? look.gap : 0,
      hold: last ? look.hold : near || number <= LONG ? 2 : 0,
      draw: (y) => {
        if (first && look.above) rule(doc, left, y, width, look.above);
        for (const [at, cell] of cells.entries())
          drawLine(cell, i, at, y + (first ? PAD : 0), grid);
        if (last) rule(doc, left, y + height, width, look.weight);
      },
    };
  });
}

function drawLine(cell: CellLines, line: number, at: number, y: number, grid: Grid): void {
  const text = cell.lines[line];
  if (!text) return;
  const { doc, type } = grid.set;
  const column = grid.columns[at]!;
  const over = column.holds === 'number' ? column.width - type.width(text, cell.style) : 0;
  const draw = () => {
    doc.fillColor('#000');
    type.draw(text, column.at + over, y + baseline(cell.style.size), cell.style);
  };
  if (cell.element) marked(doc, cell.element, cell.tag, draw);
  else artifact(doc, draw, 'Pagination');
}
