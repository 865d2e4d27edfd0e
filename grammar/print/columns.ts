/** Rows into text, with their values and comments in columns. */
import type { Row } from './rows';

/** Values begin here at the earliest, comments there: most blocks then share their columns. */
const VALUES = 12;
const COMMENTS = 38;

/** What is longer has no say in where a column stands, so one long line cannot push all others. */
const LONGEST_KEY = 24;
const LONGEST_LINE = 78;

/** The text of each row, in the order given. */
export function inColumns(rows: readonly Row[]): string[] {
  const columns = new Map<number, number>();
  for (const row of rows) columns.set(row.indent, columnFor(row, columns.get(row.indent)));
  const texts = rows.map((row) => withValue(row, columns.get(row.indent)!));
  const commented = texts.filter((_, i) => rows[i]!.comment !== undefined);
  const column = commentColumn(commented);
  return rows.map((row, i) => withComment(texts[i]!, row.comment, column));
}

/** Even, so that a word one letter longer seldom moves a whole block. */
function columnFor(row: Row, sofar = VALUES): number {
  if (row.key === undefined || row.key.length > LONGEST_KEY) return sofar;
  const needed = row.indent + row.key.length + 2;
  return Math.max(sofar, needed + (needed % 2));
}

function withValue(row: Row, column: number): string {
  const room = ' '.repeat(row.indent);
  if (row.key === undefined) return room + row.text;
  return padded(room + row.key, column) + row.text;
}

function commentColumn(texts: readonly string[]): number {
  const lengths = texts.map((text) => text.length).filter((length) => length <= LONGEST_LINE);
  return lengths.reduce((most, length) => Math.max(most, length + 2), COMMENTS);
}

function withComment(text: string, comment: string | undefined, column: number): string {
  return comment === undefined ? text : padded(text, column) + comment;
}

/** At least two spaces. */
function padded(text: string, column: number): string {
  return text + ' '.repeat(Math.max(2, column - text.length));
}
