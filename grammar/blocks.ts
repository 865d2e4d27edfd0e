/**
 * Text into blocks, and a block into its lines. A line that begins in the first column opens a block;
 * nothing in the notation crosses from one block into another.
 */
import { span } from '../shared/span';
import { BODY_ONLY, headingNamed, type LineKind, lineOf } from './lines';
import { readItems } from './parser';
import type { BlockSyntax, CommentSyntax, Item, LineSyntax, WordItem } from './syntax';
import { lexLine } from './tokens';

const FIRST_WORD = /^[^\s#"]+/;

/** Whether a line opens a block. A word that only ever stands inside a block does not: it lost its indent. */
export function opensBlock(line: string): boolean {
  const first = FIRST_WORD.exec(line);
  return first !== null && !BODY_ONLY.has(first[0]);
}

/** Where the blocks begin: ascending line numbers, the first always 0. Empty for no lines. */
export function cutBlocks(lines: readonly string[]): number[] {
  const starts = lines.length ? [0] : [];
  for (let i = 1; i < lines.length; i++) if (opensBlock(lines[i]!)) starts.push(i);
  return starts;
}

/** Reads one block. `lines` are without their ends. Never throws, whatever the text. */
export function readBlock(lines: readonly string[]): BlockSyntax {
  const comments: CommentSyntax[] = [];
  const read: LineSyntax[] = [];
  lines.forEach((text, number) => {
    const line = readLine(text, number);
    if (line?.comment && !line.key && !line.items.length) comments.push(line.comment);
    else if (line) read.push(line);
  });
  const text = lines.join('\n');
  const [heading, ...rest] = read;
  if (!heading) return { text, lineCount: lines.length, comments, lines: [] };
  const tree = underHeading(heading, rest);
  return { text, lineCount: lines.length, heading: tree, comments, lines: read };
}

type Growing = Omit<LineSyntax, 'body' | 'strayed'> & { body: Growing[]; strayed?: boolean };

/** One line, or nothing when it is empty. */
export function readLine(text: string, number: number): LineSyntax | undefined {
  const { tokens, groups } = lexLine(text);
  const note = groups.comments?.[0];
  if (!tokens.length && !note) return undefined;
  const comment = note && {
    span: span(number, note.startOffset, note.startOffset + note.image.length),
    text: note.image,
  };
  const items = tokens.length ? readItems(tokens, number) : [];
  const key = items[0]?.kind === 'word' ? (items.shift() as WordItem) : undefined;
  const indent = indentOf(text);
  return { span: spanOf(number, indent, key, items), indent, key, items, comment, body: [] };
}

function spanOf(line: number, indent: number, key: WordItem | undefined, items: Item[]) {
  const start = key?.span.start ?? items[0]?.span.start ?? indent;
  const end = items.at(-1)?.span.end ?? key?.span.end ?? start;
  return span(line, start, end);
}

/** Columns before the first character; a tab reaches the next multiple of four. */
function indentOf(text: string): number {
  let columns = 0;
  for (const c of text) {
    if (c === '\t') columns += 4 - (columns % 4);
    else if (c === ' ' || c === '\u00a0' || c === '\ufeff') columns += 1;
    else break;
  }
  return columns;
}

/**
 * Puts the lines of a block under its heading, and deeper lines under their own heading. Indentation
 * decides, but a word that cannot stand where its indentation puts it goes where it can.
 */
function underHeading(heading: LineSyntax, rest: readonly LineSyntax[]): LineSyntax {
  const root: Growing = { ...heading, body: [] };
  const kind = heading.key && headingNamed(heading.key.text);
  let inner: { line: Growing; kind: LineKind } | undefined;
  for (const line of rest) {
    const grown: Growing = { ...line, body: [] };
    const home = homeOf(grown, kind, inner);
    if (home.strayed) grown.strayed = true;
    (home.inner ? inner!.line : root).body.push(grown);
    if (home.inner) continue;
    const own = kind && grown.key && lineOf(kind, grown.key.text);
    if (own?.body) inner = { line: grown, kind: own };
    else if (!home.strayed) inner = undefined;
  }
  return root as LineSyntax;
}

function homeOf(
  line: Growing,
  outer: LineKind | undefined,
  inner: { line: Growing; kind: LineKind } | undefined,
): { inner: boolean; strayed?: boolean } {
  if (!inner) return { inner: false };
  const key = line.key?.text ?? '';
  const deeper = line.indent > inner.line.indent;
  const fitsInner = lineOf(inner.kind, key) !== undefined;
  const fitsOuter = outer !== undefined && lineOf(outer, key) !== undefined;
  if (deeper) return fitsInner || !fitsOuter ? { inner: true } : { inner: false, strayed: true };
  return fitsInner && !fitsOuter ? { inner: true, strayed: true } : { inner: false };
}
