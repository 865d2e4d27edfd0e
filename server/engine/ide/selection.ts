/** What a selection grows to: a word, its value, the line, the lines under it, the block, the file. */
import type { ReadLine } from '../../../grammar/read/values';
import type { LineSyntax, TextItem } from '../../../grammar/syntax';
import type { Span } from '../../../shared/span';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { lastLine } from './extent';
import { saidOf } from './said';
import { onComment, type Spot, spotAt } from './spot';
import type { Position } from './types';

/** From one place to another, which may stand in other lines. */
export interface Stretch {
  readonly start: Position;
  readonly end: Position;
}

/** From the smallest to the whole file; each holds the one before and is larger. */
export function selectionsAt(file: SourceFile, at: Position): Stretch[] {
  const spot = spotAt(file, at);
  const inLine = spot ? [...inner(spot), ...wholeLine(spot)] : [];
  const around = spot ? [...underHeadings(spot), ...wholeBlock(spot.block)] : [];
  const all = [{ start: at, end: at }, ...inLine, ...around, wholeFile(file)];
  return growing(all.filter((each) => holds(each, at)));
}

/** Words and signs, values, and what stands between quotation marks. */
function inner(spot: Spot): Stretch[] {
  const spans = [...wordsOf(spot), ...valuesOf(spot), ...(onComment(spot) ? commentOf(spot) : [])];
  return spans.map((span) => inFile(span, spot.block)).sort((a, b) => lengthOf(a) - lengthOf(b));
}

function wordsOf({ syntax }: Spot): Span[] {
  if (!syntax) return [];
  const items = syntax.items.flatMap((item) => {
    if (item.kind === 'text') return [within(item), item.span];
    if (item.kind === 'measure')
      return [item.low.span, item.high?.span, item.unit?.span, item.span].flatMap((s) => s ?? []);
    if (item.kind === 'money')
      return [item.amount.span, item.high?.span, item.span].flatMap((s) => s ?? []);
    return [item.span];
  });
  return [...(syntax.key ? [syntax.key.span] : []), ...items];
}

/** Between its quotation marks; the closing one may not be written yet. */
function within({ span: { line, start, end }, closed }: TextItem): Span {
  return { line, start: start + 1, end: closed ? end - 1 : end };
}

function valuesOf({ read, syntax }: Spot): Span[] {
  const values = read ? saidOf(read).map(({ value }) => value.span) : [];
  const last = syntax?.items.at(-1)?.span;
  const first = syntax?.items[0]?.span;
  return first && last ? [...values, { ...first, end: last.end }] : values;
}

function commentOf({ syntax, block, line }: Spot): Span[] {
  const comment = syntax?.comment ?? block.read.syntax.comments.find((c) => c.span.line === line);
  return comment ? [comment.span] : [];
}

/** Its words, then all of it with its indent. */
function wholeLine({ block, line, syntax }: Spot): Stretch[] {
  const text = block.lines[line] ?? '';
  const whole = { line, start: 0, end: text.length };
  const words = syntax ? [{ ...syntax.span, end: Math.max(syntax.span.end, whole.end) }] : [];
  return [...words, { ...whole, start: text.length - text.trimStart().length }, whole].map((span) =>
    inFile(span, block),
  );
}

/** Of each heading that the line stands under, or is: the lines below it, then those with it. */
function underHeadings({ block, read, parents }: Spot): Stretch[] {
  const headings = [...(read?.body.length ? [read] : []), ...[...parents].reverse()];
  return headings.flatMap((heading) => {
    const last = lastOf(heading.syntax);
    const first = heading.syntax.span.line;
    const below = firstBelow(heading);
    return [below, first].map((from) => lines(block, from, last));
  });
}

function firstBelow({ syntax }: ReadLine): number {
  return syntax.body[0]?.span.line ?? syntax.span.line;
}

function lastOf(syntax: LineSyntax): number {
  return Math.max(syntax.span.line, ...syntax.body.map(lastOf));
}

function wholeBlock(block: SourceBlock): Stretch[] {
  const heading = block.read.syntax.heading;
  return heading ? [lines(block, heading.span.line, lastLine(block))] : [];
}

function lines(block: SourceBlock, first: number, last: number): Stretch {
  const end = block.lines[last]?.length ?? 0;
  return {
    start: { line: block.firstLine + first, column: 0 },
    end: { line: block.firstLine + last, column: end },
  };
}

function wholeFile({ lines: all }: SourceFile): Stretch {
  const last = Math.max(0, all.length - 1);
  return { start: { line: 0, column: 0 }, end: { line: last, column: all[last]?.length ?? 0 } };
}

function inFile({ line, start, end }: Span, block: SourceBlock): Stretch {
  const at = block.firstLine + line;
  return { start: { line: at, column: start }, end: { line: at, column: end } };
}

function lengthOf({ start, end }: Stretch): number {
  return end.column - start.column;
}

function holds({ start, end }: Stretch, at: Position): boolean {
  return compare(start, at) <= 0 && compare(at, end) <= 0;
}

function compare(a: Position, b: Position): number {
  return a.line - b.line || a.column - b.column;
}

/** Each that holds the one before it and is larger. */
function growing(all: readonly Stretch[]): Stretch[] {
  const found: Stretch[] = [];
  for (const each of all) {
    const last = found.at(-1);
    if (!last || (contains(each, last) && !contains(last, each))) found.push(each);
  }
  return found;
}

function contains(a: Stretch, b: Stretch): boolean {
  return compare(a.start, b.start) <= 0 && compare(b.end, a.end) <= 0;
}
