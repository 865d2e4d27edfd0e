/**
 * Text into blocks, and a block into its lines. A line that begins in the first column opens a block;
 * nothing in the notation crosses from one block into another.
 */

import { nearest } from '../shared/nearest';
import { span } from '../shared/span';
import { BODY_ONLY, headingNamed, type LineKind, lineOf } from './lines';
import { readItems } from './parser';
import type { BlockSyntax, CommentSyntax, Item, LineSyntax, WordItem } from './syntax';
import { lexLine } from './tokens';

/** A byte order mark before it takes no room. */
const FIRST_WORD = /^\ufeff*([^\s#"]+)/;

/** The lines of a text, without their ends: CRLF, LF or a lone CR, as editors count them. */
export function splitLines(text: string): string[] {
  return text.split(/\r\n|\n|\r/);
}

/** Whether a line opens a block. A word that only ever stands inside a block does not: it lost its indent. */
export function opensBlock(line: string): boolean {
  const first = FIRST_WORD.exec(line);
  return first !== null && !BODY_ONLY.has(first[1]!);
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

type Growing = Omit<LineSyntax, 'body' | 'strayed' | 'parted'> & {
  body: Growing[];
  strayed?: boolean;
  parted?: boolean;
};

/** Lines read lately: from one keystroke to the next, all lines of a block but one are as they were. */
const lately = new Map<string, LineSyntax | undefined>();
const MOST_KEPT = 512;
/** Longer ones are no lines that anyone types at, and would only be held. */
const LONGEST_KEPT = 400;

/** One line, or nothing when it is empty. */
export function readLine(text: string, number: number): LineSyntax | undefined {
  if (text.length > LONGEST_KEPT) return readAnew(text, number);
  const key = `${number} ${text}`;
  if (lately.has(key)) return lately.get(key);
  const line = readAnew(text, number);
  if (lately.size >= MOST_KEPT) lately.clear();
  lately.set(key, line);
  return line;
}

function readAnew(text: string, number: number): LineSyntax | undefined {
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
export function indentOf(text: string): number {
  let columns = 0;
  for (const c of text) {
    if (c === '\t') columns += 4 - (columns % 4);
    else if (c === ' ' || c === '\u00a0' || c === '\u202f') columns += 1;
    else if (c !== '\ufeff') break;
  }
  return columns;
}

/**
 * A line that may have lines under it. `kind` is absent for one that nobody knows (a slip of the pen in
 * `opening`): what stands deeper is its own, so that it is not taken for a line of the block.
 */
interface Inner {
  readonly line: Growing;
  readonly kind?: LineKind;
  /** Whether another line of the block has come after it. */
  passed: boolean;
}

/**
 * Puts the lines of a block under its heading, and deeper lines under their own heading. Indentation
 * decides, but a word that cannot stand where its indentation puts it goes where it can.
 */
function underHeading(heading: LineSyntax, rest: readonly LineSyntax[]): LineSyntax {
  const root: Growing = { ...heading, body: [] };
  const kind = heading.key && headingNamed(heading.key.text);
  let inner: Inner | undefined;
  for (const line of rest) {
    const grown: Growing = { ...line, body: [] };
    const home = homeOf(grown, kind, inner);
    Object.assign(grown, home.signs);
    (home.inner ? inner!.line : root).body.push(grown);
    if (home.inner) continue;
    const own = kind && grown.key && lineOf(kind, grown.key.text);
    if (own ? own.body : headsUnknown(kind, grown))
      inner = { line: grown, kind: own, passed: false };
    else if (inner) inner.passed = true;
  }
  return root as LineSyntax;
}

/** Whether an unknown line is to be taken for a heading: unless it looks like one of the plain lines. */
function headsUnknown(outer: LineKind | undefined, line: Growing): boolean {
  if (!outer) return true;
  if (!line.key) return false;
  if (headingNamed(line.key.text)) return true;
  const meant = nearest(
    line.key.text,
    (outer.body ?? []).map((k) => k.key),
  );
  return !meant || lineOf(outer, meant)?.body !== undefined;
}

interface Home {
  readonly inner: boolean;
  readonly signs?: Pick<Growing, 'strayed' | 'parted'>;
}

function homeOf(line: Growing, outer: LineKind | undefined, inner: Inner | undefined): Home {
  if (!inner) return { inner: false };
  const key = line.key?.text ?? '';
  const deeper = line.indent > inner.line.indent;
  if (!inner.kind) return { inner: deeper };
  const fitsInner = lineOf(inner.kind, key) !== undefined;
  const fitsOuter = outer !== undefined && lineOf(outer, key) !== undefined;
  if (fitsInner && fitsOuter)
    return { inner: deeper, signs: { parted: (deeper && inner.passed) || undefined } };
  if (fitsInner || fitsOuter)
    return { inner: fitsInner, signs: { strayed: fitsInner !== deeper || undefined } };
  return { inner: deeper };
}
