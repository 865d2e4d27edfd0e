/** A table of a paper as CSV (RFC 4180): for other programs, with figures as they are reckoned with. */
import type { Cell, Table } from '../model';

export interface CsvOptions {
  /** A mark at the beginning, by which spreadsheets know UTF-8. */
  readonly bom?: boolean;
}

/** Figures as their exact values, without units; a text that a spreadsheet would take for a formula is made a text. */
export function csvOf(table: Table, { bom = false }: CsvOptions = {}): string {
  const head = table.columns.map(({ title }) => quoted(title));
  const rows = table.rows.map(({ cells }) => table.columns.map((_, i) => field(cells[i])));
  const lines = [head, ...rows].map((fields) => fields.join(','));
  return `${bom ? '\ufeff' : ''}${lines.map((line) => `${line}\r\n`).join('')}`;
}

/** A figure is its exact value; all else is text. */
function field(cell: Cell | undefined): string {
  if (cell?.value !== undefined && isNumber(cell.value)) return cell.value;
  return quoted(cell?.text ?? '');
}

/** Plain digits: nothing that could be taken for anything else. */
export function isNumber(value: string): boolean {
  return /^-?\d+(\.\d+)?$/.test(value);
}

/**
 * A spreadsheet takes a text that begins with one of these for a formula, and a formula can fetch and send: an
 * apostrophe before it makes it a text (OWASP, CSV Injection).
 */
const FORMULA = /^[\s]*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/;

function quoted(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
