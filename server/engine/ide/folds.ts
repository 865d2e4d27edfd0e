/** What can be folded away: blocks, openings and piers within them, and runs of comments. */
import type { SourceBlock, SourceFile } from '../workspace/source';
import { lastLine } from './extent';
import type { Fold } from './types';

export function foldsOf(file: SourceFile): Fold[] {
  return file.blocks.flatMap((block) => [...headings(block), ...comments(block)]);
}

function headings(block: SourceBlock): Fold[] {
  const heading = block.read.syntax.heading;
  if (!heading) return [];
  const inner = heading.body.filter((line) => line.body.length);
  const folds = [
    fold(block, heading.span.line, lastLine(block)),
    ...inner.map((line) => fold(block, line.span.line, line.body.at(-1)!.span.line)),
  ];
  return folds.filter((f) => f.last > f.first);
}

function fold(block: SourceBlock, first: number, last: number, kind: Fold['kind'] = 'block'): Fold {
  return { first: block.firstLine + first, last: block.firstLine + last, kind };
}

/** Two comment lines or more, one under the other. */
function comments(block: SourceBlock): Fold[] {
  const lines = block.read.syntax.comments.map((c) => c.span.line);
  const folds: Fold[] = [];
  let first = 0;
  lines.forEach((line, i) => {
    if (lines[i + 1] === line + 1) return;
    if (i > first) folds.push(fold(block, lines[first]!, line, 'comment'));
    first = i + 1;
  });
  return folds;
}
