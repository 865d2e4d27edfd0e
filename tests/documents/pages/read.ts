/** What stands on a page, for a test to look at. */
import { pageOf } from '../../../server/documents/pages';
import { type Paper, type Table, tablesOf } from '../../../server/documents/paper';
import type { Job } from '../../../server/engine/workspace/job';
import type { PageKind, PageOptions } from '../../../shared/protocol/pages';

/** @throws Error where there is none */
export function pageFor(job: Job, kind: PageKind, options?: PageOptions): Paper {
  const made = pageOf(job, kind, { version: '1', options });
  if (typeof made === 'string') throw new Error(made);
  return made.paper;
}

export function tableNamed(paper: Paper, name: string): Table {
  const found = tablesOf(paper.parts).find((table) => table.name === name);
  if (!found) throw new Error(`There is no table ${name} on it.`);
  return found;
}

/** Rows as texts, spaces that may not break as spaces. */
export function rowsOf({ rows }: Table): string[][] {
  return rows.map(({ cells }) => cells.map(({ text }) => text.replaceAll('\u00a0', ' ')));
}

/** The exact value beside a label, of the column that is asked for. */
export function figureIn(table: Table, label: string | RegExp, column = 1): number {
  const is = (text: string) => (typeof label === 'string' ? text === label : label.test(text));
  const row = table.rows.find(({ cells }) => is(cells[0]!.text.replaceAll('\u00a0', ' ')));
  if (!row) throw new Error(`There is no row ${label}.`);
  return Number(row.cells[column]!.value);
}
