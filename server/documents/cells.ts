/** Figures of a job in the cells of a table, and tables under headings. */
import { showTerm } from '../engine/views/show';
import type { Term } from '../engine/working/term';
import type { Job } from '../engine/workspace/job';
import { fromTerms } from './from';
import type { Cell, Column, From, Part, Row, Table } from './paper/model';

/** What is not known at all is a question mark, never a nought. */
export function termCell(term: Term | undefined, { env }: Pick<Job, 'env'>): Cell {
  if (!term) return { text: '' };
  const from = fromTerms(term);
  if (term.gaps.length && term.value.isZero()) return { text: '?', from };
  const text = showTerm(term, env);
  return term.mixed ? { text, from } : { text, value: term.value.toFixed(), unit: term.unit, from };
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

/** A heading, and what it is of where that is a block or a line. */
export type Title = string | { readonly text: string; readonly from: From };

/** Parts under a heading of theirs, on one page where they go on one; nothing where there are none. */
export function under(title: Title, ...parts: readonly Part[]): Part[] {
  if (!parts.length) return [];
  const said = typeof title === 'string' ? { text: title } : title;
  return [{ part: 'together', parts: [{ part: 'heading', level: 2, ...said }, ...parts] }];
}

/** A table under a heading; nothing where it has no rows. */
export function tableUnder(title: Title, table: Table): Part[] {
  return table.rows.length ? under(title, table) : [];
}
