/** A paper in the form that was asked for. */
import { phrase } from '../../../shared/phrase';
import { csvOf } from './csv';
import type * as heavy from './heavy';
import { htmlOf } from './html';
import { paperJson } from './json';
import { markdownOf } from './markdown';
import type { Paper } from './model';
import { tablesOf } from './tables';

export type Written = 'pdf' | 'html' | 'md' | 'csv' | 'xlsx' | 'json';

/** The writers that weigh much, and the fonts of a PDF. */
export interface Heavy {
  readonly writers: typeof heavy;
  readonly fonts: heavy.Fonts;
}

export interface How {
  /** Of CSV: begin with the mark by which spreadsheets know UTF-8. */
  readonly bom?: boolean;
  /** The job’s file, as JSON names it. */
  readonly file: string;
  /** Asked only for what needs it. */
  heavy(form: Written): Heavy;
}

export interface AsFile {
  readonly content: string | Uint8Array;
  /** What of the paper is not in it as it should be. */
  readonly asides: readonly string[];
}

export function isHeavy(form: string): boolean {
  return form === 'pdf' || form === 'xlsx';
}

/** @returns a sentence where a paper has no such form */
export function written(paper: Paper, form: Written, how: How): AsFile | string {
  if (form === 'csv' || form === 'xlsx') return tables(paper, form, how);
  if (form === 'pdf') return pdf(paper, how);
  if (form === 'json') return whole(paperJson(paper, how.file));
  return whole(form === 'html' ? htmlOf(paper) : markdownOf(paper));
}

function whole(content: AsFile['content']): AsFile {
  return { content, asides: [] };
}

function tables(paper: Paper, form: 'csv' | 'xlsx', how: How): AsFile | string {
  const found = tablesOf(paper.parts);
  if (!found.length) return phrase`There is no table in ${paper.title}.`;
  if (form === 'xlsx') return whole(how.heavy(form).writers.xlsxOf(paper));
  // Several stand under each other, an empty line between them.
  const texts = found.map((table) => csvOf(table)).join('\r\n');
  return whole((how.bom ? '\ufeff' : '') + texts);
}

function pdf(paper: Paper, how: How): AsFile {
  const { writers, fonts } = how.heavy('pdf');
  const { bytes, missing, noLogo } = writers.pdfOf(paper, fonts);
  const asides = [
    ...(missing.length ? [notInFonts(missing)] : []),
    ...(noLogo ? [phrase`The logo cannot be read, and is left out.`] : []),
  ];
  return { content: bytes, asides };
}

/** So many are named; a text in another alphabet would have hundreds. */
const NAMED = 12;

function notInFonts(missing: readonly string[]): string {
  const some = missing.slice(0, NAMED).join(' ');
  const more = missing.length > NAMED ? phrase` and others` : '';
  return phrase`The fonts of a PDF have no ${some}${more}: a box stands for each. A page of HTML shows them.`;
}
