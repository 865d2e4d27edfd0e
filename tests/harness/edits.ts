import { splitLines } from '../../grammar/blocks';
import type { FormatEdit } from '../../grammar/print';
import type { Span } from '../../shared/span';

/** The text with pieces of its lines replaced. Edits may come in any order, and must not overlap. */
export function applied(
  text: string,
  edits: readonly { readonly span: Span; readonly text: string }[],
): string {
  return withEdits(
    text,
    edits.map(({ span, text: instead }) => ({
      startLine: span.line,
      startColumn: span.start,
      endLine: span.line,
      endColumn: span.end,
      text: instead,
    })),
  );
}

/** @throws when an edit lies outside the text, or two overlap */
export function withEdits(text: string, edits: readonly FormatEdit[]): string {
  const offset = offsets(text);
  const pieces = edits
    .map((e) => ({
      from: offset(e.startLine, e.startColumn),
      to: offset(e.endLine, e.endColumn),
      text: e.text,
    }))
    .sort((a, b) => a.from - b.from);
  let done = '';
  let at = 0;
  for (const piece of pieces) {
    if (piece.from < at || piece.to < piece.from) throw new Error('Edits overlap.');
    done += text.slice(at, piece.from) + piece.text;
    at = piece.to;
  }
  return done + text.slice(at);
}

function offsets(text: string): (line: number, column: number) => number {
  const lines = splitLines(text);
  const starts = [0, ...[...text.matchAll(/\r\n|\n|\r/g)].map((end) => end.index + end[0].length)];
  return (line, column) => {
    if (column < 0 || column > (lines[line]?.length ?? -1))
      throw new Error(`There is no place ${line}:${column} in the text.`);
    return starts[line]! + column;
  };
}
