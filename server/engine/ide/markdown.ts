/** Markdown for hovers: escaped text, code, and workings as nested lists. */
import { phrase } from '../../../shared/phrase';
import type { WorkingView } from '../../../shared/views';
import { type Linker, PLAIN } from './types';

/** What readers of Markdown make addresses of by themselves: `http:`, `www.`, and what has an `@` in it. */
const ADDRESS = /\b(?:https?|ftp)(?=:)|\bwww(?=\.)/gi;

/** Text as it is, whatever signs are in it: no mark, and no link. */
export function plain(text: string): string {
  const signs = text.replace(/[\\`*_{}[\]<>#|~!@]/g, '\\$&');
  return signs.replace(ADDRESS, '$&\\').replace(/\r?\n/g, ' ');
}

/** Between more backticks than there are in it. */
export function code(text: string): string {
  const runs = (text.match(/`+/g) ?? []).map((run) => run.length);
  const fence = '`'.repeat(Math.max(0, ...runs) + 1);
  return runs.length ? `${fence} ${text} ${fence}` : `${fence}${text}${fence}`;
}

/** Lines of the notation, coloured. */
export function notation(lines: readonly string[]): string {
  return ['```perpend', ...lines.map((l) => l.replace(/```/g, "'''")), '```'].join('\n');
}

/** How deep a working is read out, and how many lines it may take. */
export interface Reading {
  readonly deep: number;
  readonly most: number;
  readonly link?: Linker;
}

/** A working as a nested list: each figure with its sum, and where it was said. */
export function workingList(view: WorkingView, reading: Reading): string {
  const lines: string[] = [];
  const whole = put(view, 0, reading, lines);
  return [...lines, ...(whole ? [] : ['- …'])].join('\n');
}

/** False when it had to stop. */
function put(view: WorkingView, depth: number, reading: Reading, lines: string[]): boolean {
  if (lines.length >= reading.most) return false;
  // What is told in words may be indented itself: a course under the stretch it is of.
  const deeper = view.result ? 0 : (/^ */.exec(view.label)?.[0].length ?? 0) >> 1;
  lines.push(`${'  '.repeat(depth + deeper)}- ${workingLine(view, reading.link ?? PLAIN)}`);
  if (depth + 1 >= reading.deep) return true;
  return view.parts.every((part) => put(part, depth + 1, reading, lines));
}

function workingLine(view: WorkingView, link: Linker): string {
  if (!view.result) return plain(view.label.trim());
  const sum = view.sum && view.sum !== view.result ? ` = ${plain(view.sum)}` : '';
  const note = view.note ? ` *(${plain(view.note)})*` : '';
  const from = view.line ? ` — ${saidAt(view, link)}` : '';
  const missing = view.missing?.length ? phrase` — incomplete` : '';
  return `${plain(view.label)}: **${plain(view.result)}**${sum}${note}${from}${missing}`;
}

/** The line a fact stands in, and a way there. */
export function saidAt(view: WorkingView, link: Linker): string {
  const said = code(squeezed(view.line!));
  return view.place ? `${said} ${link(whereOf(view.place), view.place)}` : said;
}

/** `firm.perp:12`. */
export function whereOf(place: { readonly file: string; readonly line: number }): string {
  return `${place.file.split(/[\\/]/).at(-1)}:${place.line + 1}`;
}

/** A line without its columns and its comment. */
export function squeezed(line: string): string {
  const bare = line.replace(/^((?:"[^"]*"|[^"#])*)#.*$/, '$1');
  return bare.trim().replace(/ {2,}/g, ' ');
}
