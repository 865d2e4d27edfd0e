/** Figures of a job in the cells of a table, and tables under headings. */
import { showTerm } from '../engine/views/show';
import type { Term } from '../engine/working/term';
import type { Job } from '../engine/workspace/job';
import type { Cell, Column, Part, Row, Table } from './paper/model';

/** What is not known at all is a question mark, never a nought. */
export function termCell(term: Term | undefined, { env }: Pick<Job, 'env'>): Cell {
  if (!term) return { text: '' };
  if (term.gaps.length && term.value.isZero()) return { text: '?' };
  const text = showTerm(term, env);
  return term.mixed ? { text } : { text, value: term.value.toFixed(), unit: term.unit };
}

/** @param numbers which columns hold figures, by their places; without it all but the first */
export function tableOf(
  name: string,
  heads: readonly string[],
  rows: readonly Row[],
  numbers?: readonly number[],
): Table {
  const isNumber = (i: number) => (numbers ? numbers.includes(i) : i > 0);
  const columns = heads.map(
    (title, i): Column => ({ title, holds: isNumber(i) ? 'number' : 'text' }),
  );
  return { part: 'table', name, columns, rows };
}

export function rowOf(label: string, ...cells: readonly (Cell | string)[]): Row {
  return { cells: [label, ...cells].map((of) => (typeof of === 'string' ? { text: of } : of)) };
}

/** Parts under a heading of theirs, on one page where they go on one; nothing where there are none. */
export function under(text: string, ...parts: readonly Part[]): Part[] {
  if (!parts.length) return [];
  return [{ part: 'together', parts: [{ part: 'heading', level: 2, text }, ...parts] }];
}

/** A table under a heading; nothing where it has no rows. */
export function tableUnder(text: string, table: Table): Part[] {
  return table.rows.length ? under(text, table) : [];
}
