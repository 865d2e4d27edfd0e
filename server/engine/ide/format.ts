/** The formatter as edits of an open file, as small as can be: what a cursor stands in is only touched where it changes. */
import { type FormatEdit, format, formatEdits, formatLines } from '../../../grammar/print';
import type { SourceFile } from '../workspace/source';
import { smallest } from './smallest';
import type { LineRange } from './types';

export type { FormatEdit };

/** The whole file, or only some lines of it. None for a file that is not read. */
export function formatting(file: SourceFile, ranges?: readonly LineRange[]): FormatEdit[] {
  if (file.refused) return [];
  const { text, lines } = file;
  const edits = ranges ? ofLines(file, ranges) : formatEdits(text);
  return edits.flatMap((edit) => smallest(edit, lines));
}

/** How deep a line stands may decide what those after it belong to: then their whole blocks are put in order. */
function ofLines({ text, lines, blocks }: SourceFile, ranges: readonly LineRange[]): FormatEdit[] {
  const edits = linesOf(text, ranges);
  if (saysTheSame(text, lines, edits)) return edits;
  const wide = ranges.map(({ first, last }) => {
    const touched = blocks.filter(
      (b) => b.firstLine <= last && first < b.firstLine + b.lines.length,
    );
    const end = touched.at(-1);
    return {
      first: Math.min(first, touched[0]?.firstLine ?? first),
      last: Math.max(last, end ? end.firstLine + end.lines.length - 1 : last),
    };
  });
  return linesOf(text, wide);
}

function linesOf(text: string, ranges: readonly LineRange[]): FormatEdit[] {
  return formatLines(text, (line) => ranges.some((r) => r.first <= line && line <= r.last));
}

/** Whether the text would come out alike with these edits made first. */
export function saysTheSame(
  text: string,
  lines: readonly string[],
  edits: readonly FormatEdit[],
): boolean {
  return format(withEdits(lines, edits)) === format(text);
}

/** Edits in the order of the text. */
function withEdits(lines: readonly string[], edits: readonly FormatEdit[]): string {
  const after = [...lines];
  for (const { startLine, startColumn, endLine, endColumn, text } of edits.toReversed()) {
    const before = (after[startLine] ?? '').slice(0, startColumn);
    const rest = (after[endLine] ?? '').slice(endColumn);
    after.splice(startLine, endLine - startLine + 1, ...`${before}${text}${rest}`.split('\n'));
  }
  return after.join('\n');
}
