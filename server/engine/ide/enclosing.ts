/** Under which heading a line being written stands, by its indentation. */
import { indentOf } from '../../../grammar/blocks';
import type { ReadLine } from '../../../grammar/read/values';
import type { SourceBlock, SourceFile } from '../workspace/source';

export interface Home {
  readonly block: SourceBlock;
  /** Headings it stands under, the block's own first. */
  readonly parents: readonly ReadLine[];
  /** The line itself, in its block: it does not count as written yet. */
  readonly line: number;
}

/** Nothing above the first heading, or under one that cannot be read. */
export function enclosing(file: SourceFile, line: number, lead: string): Home | undefined {
  const block = file.blocks[file.blockAt(line)];
  const heading = block?.read.heading;
  if (!block || !heading?.kind.body) return undefined;
  const own = line - block.firstLine;
  if (own <= heading.syntax.span.line) return { block, parents: [heading], line: own };
  const above = heading.body.filter((l) => l.syntax.span.line < own);
  const inner = above.findLast((l) => l.kind.body);
  const deeper = inner && indentOf(lead) > inner.syntax.indent;
  return { block, parents: deeper ? [heading, inner] : [heading], line: own };
}
