/** How far a block reaches: to its last line of words. Comments and empty lines after it lead the next one. */
import type { SourceBlock } from '../workspace/source';

export function lastLine(block: SourceBlock): number {
  const { lines, heading } = block.read.syntax;
  return Math.max(heading?.span.line ?? 0, lines.at(-1)?.span.line ?? 0);
}
