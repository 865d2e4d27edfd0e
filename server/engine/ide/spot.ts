/** What stands at a position: the block, its line, and the piece of the line. */
import type { ReadLine, Value } from '../../../grammar/read/values';
import type { LineSyntax } from '../../../grammar/syntax';
import { contains } from '../../../shared/span';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { type Said, saidOf } from './said';
import type { Position } from './types';

export interface Spot {
  readonly block: SourceBlock;
  /** Counted from the block's first line. */
  readonly line: number;
  readonly column: number;
  readonly syntax?: LineSyntax;
  /** The line as read; absent when it is at fault. */
  readonly read?: ReadLine;
  /** Headings it stands under, the block's own first. */
  readonly parents: readonly ReadLine[];
}

export function spotAt(file: SourceFile, at: Position): Spot | undefined {
  const block = file.blocks[file.blockAt(at.line)];
  if (!block) return undefined;
  const line = at.line - block.firstLine;
  const { heading, syntax } = block.read;
  const found = heading && lineIn(heading, line, []);
  const own = found?.read.syntax ?? syntax.lines.find((l) => l.span.line === line);
  return { block, line, column: at.column, syntax: own, parents: [], ...found };
}

function lineIn(
  read: ReadLine,
  line: number,
  parents: readonly ReadLine[],
): (Pick<Spot, 'read' | 'parents'> & { read: ReadLine }) | undefined {
  if (read.syntax.span.line === line) return { read, parents };
  for (const inner of read.body) {
    const found = lineIn(inner, line, [...parents, read]);
    if (found) return found;
  }
  return undefined;
}

export function onKey({ syntax, line, column }: Spot): boolean {
  return syntax?.key !== undefined && contains(syntax.key.span, line, column);
}

export function onComment({ syntax, line, column, block }: Spot): boolean {
  const comment = syntax?.comment ?? block.read.syntax.comments.find((c) => c.span.line === line);
  return comment !== undefined && contains(comment.span, line, column);
}

/** The value that the position is on, with the slot it fills. */
export function valueAt(spot: Spot): Said | undefined {
  if (!spot.read) return undefined;
  return saidOf(spot.read).find((said) => contains(said.value.span, spot.line, spot.column));
}

/** The text of a word, name, text, date or reference. */
export function textOf(value: Value | undefined): string | undefined {
  return value && 'text' in value ? value.text : undefined;
}
