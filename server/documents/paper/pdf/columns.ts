/** How wide the columns of a table are. */
import type { Row, Table } from '../model';
import { SIZE } from './sheet';
import { type Style, seen, type Type } from './type';
import { longestWord } from './wrap';

/** Room between two columns, points. */
export const BETWEEN = 12;

/** Of the titles of columns. */
export const HEAD: Style = { size: SIZE.small, bold: true };

/** A total is bold, and the one that counts is larger. */
export function rowStyle({ role }: Row, size: number): Style {
  return role === 'grand' ? { size: size * 1.2, bold: true } : { size, bold: role === 'total' };
}

interface Want {
  /** With everything on one line, and with only its longest word. */
  readonly whole: number;
  readonly least: number;
}

/** Points, of the text in each: together with the room between them as wide as the page's text. */
export function columnWidths(table: Table, width: number, style: Style, type: Type): number[] {
  const room = width - BETWEEN * (table.columns.length - 1);
  const wants = table.columns.map((_, i) => want(table, i, room, style, type));
  const whole = sum(wants.map((each) => each.whole));
  if (whole <= room) return spread(wants, room - whole, table);
  const least = sum(wants.map((each) => each.least));
  if (least >= room) return wants.map((each) => (each.least * room) / least);
  // What is over goes to those that would take more, so much as they would.
  const share = (room - least) / (whole - least);
  return wants.map((each) => each.least + (each.whole - each.least) * share);
}

function want(table: Table, i: number, room: number, style: Style, type: Type): Want {
  const { title, holds } = table.columns[i]!;
  const texts = table.rows.map((row) => ({
    text: row.cells[i]?.text ?? '',
    how: rowStyle(row, style.size),
  }));
  const all = [{ text: title, how: HEAD }, ...texts];
  const whole = Math.max(...all.map(({ text, how }) => widest(text, how, type)));
  const words = holds === 'number' ? texts.map(({ text, how }) => widest(text, how, type)) : [];
  const least = Math.max(...all.map(({ text, how }) => longestWord(text, how, type)), ...words);
  // A hair more than is measured: no text may be broken for a rounding.
  return { whole: whole + 0.01, least: Math.min(least, room * 0.6) + 0.01 };
}

function widest(text: string, style: Style, type: Type): number {
  return Math.max(...text.split('\n').map((line) => type.width(seen(line), style)));
}

/** Room that is over goes to columns of text, each by what it holds, so that figures stand at the right edge. */
function spread(wants: readonly Want[], over: number, { columns }: Table): number[] {
  const takes = columns.map(({ holds }) => holds === 'text');
  if (!takes.includes(true)) takes[0] = true;
  const all = sum(wants.map(({ whole }, i) => (takes[i] ? whole : 0)));
  return wants.map(({ whole }, i) => (takes[i] ? whole + (over * whole) / all : whole));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
