/** After Enter: the line just left is put in order, and the new one begins as deep as its place wants. */
import { indentOf } from '../../../grammar/blocks';
import { headingNamed } from '../../../grammar/lines';
import { type FormatEdit, formatLines } from '../../../grammar/print';
import type { SourceFile } from '../workspace/source';
import { saysTheSame } from './format';
import { smallest } from './smallest';
import { spotAt } from './spot';
import type { Position } from './types';

/** `at`: in the new line. Nothing else is touched, so that the cursor stays where the writer has it. */
export function onEnter(file: SourceFile, { line }: Position): FormatEdit[] {
  if (file.refused || line === 0 || line >= file.lines.length) return [];
  const left = inLine(file, line - 1);
  return [...left, ...indent(file, line)];
}

/** Nobody types at a longer one, and to put it in order and look whether it says the same takes its time. */
const LONGEST = 10_000;

/** An empty line stays: two in a row are wanted while one writes. A line that others hang on by its depth is left as it is. */
function inLine(file: SourceFile, line: number): FormatEdit[] {
  const written = file.lines[line]!;
  if (written.length > LONGEST) return [];
  if (!written.trim()) return written ? [room(line, written.length, '')] : [];
  const block = file.blocks[file.blockAt(line)]!;
  const { lines, firstLine } = block;
  const text = lines.join('\n');
  const edits = formatLines(text, (each) => each === line - firstLine).filter(isWithin);
  if (!saysTheSame(text, lines, edits)) return [];
  const small = edits.flatMap((edit) => smallest(edit, lines));
  return small.map((edit) => ({ ...edit, startLine: line, endLine: line }));
}

function isWithin({ startLine, endLine, text }: FormatEdit): boolean {
  return startLine === endLine && !text.includes('\n');
}

function indent(file: SourceFile, line: number): FormatEdit[] {
  const written = file.lines[line]!;
  const has = written.length - written.trimStart().length;
  if (written.trim()) {
    const [first] = inLine(file, line);
    return first?.startColumn === 0 && !first.text.trim() ? [first] : [];
  }
  const wanted = depthAfter(file, line - 1);
  return wanted === undefined || written === ' '.repeat(wanted)
    ? []
    : [room(line, has, ' '.repeat(wanted))];
}

/** How deep the line after this one stands; nothing where the editor knows as well, as after an empty line. */
function depthAfter(file: SourceFile, line: number): number | undefined {
  const written = file.lines[line]!;
  if (!written.trim()) return undefined;
  const spot = spotAt(file, { line, column: 0 });
  if (!spot?.syntax) return tidyDepth(file, line);
  const depth = spot.parents.length * 2;
  const kind =
    spot.read?.kind ??
    (spot.syntax.key && /^\S/.test(written) ? headingNamed(spot.syntax.key.text) : undefined);
  if (!kind) return /^\S/.test(written) ? undefined : tidyDepth(file, line);
  return kind.body && !kind.inColumn ? depth + 2 : depth;
}

/** As deep as the line itself will be: a comment, a line that cannot be read yet. */
function tidyDepth(file: SourceFile, line: number): number {
  const written = file.lines[line]!;
  const own = written.length - written.trimStart().length;
  const first = inLine(file, line).find((edit) => edit.startColumn === 0 && edit.endColumn === own);
  return first ? first.text.length : indentOf(written);
}

function room(line: number, length: number, text: string): FormatEdit {
  return { startLine: line, startColumn: 0, endLine: line, endColumn: length, text };
}
