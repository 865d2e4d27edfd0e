/** What can be folded away: blocks, headings within them, runs of comments, and the lines that name used files. */
import type { LineSyntax } from '../../../grammar/syntax';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { lastLine } from './extent';
import type { Fold } from './types';

export function foldsOf(file: SourceFile): Fold[] {
  const inBlocks = file.blocks.flatMap((block) => [...headings(block), ...comments(block)]);
  return [...inBlocks, ...uses(file)].sort((a, b) => a.first - b.first || b.last - a.last);
}

/** No more than so many: what holds much stays before what lies within it, and a block before comments. */
export function mostFolds(folds: readonly Fold[], most: number): Fold[] {
  if (folds.length <= most) return [...folds];
  const depths = depthsOf(folds);
  const ranks = folds.map((fold, i) => depths[i]! + (fold.kind === 'comment' ? 0.5 : 0));
  const order = folds.map((_, i) => i).sort((a, b) => ranks[a]! - ranks[b]! || a - b);
  const kept = new Set(order.slice(0, Math.max(0, most)));
  return folds.filter((_, i) => kept.has(i));
}

/** In how many others each lies. They are in the order of their first lines. */
function depthsOf(folds: readonly Fold[]): number[] {
  const open: Fold[] = [];
  return folds.map((fold) => {
    while (open.length && open.at(-1)!.last < fold.first) open.pop();
    return open.push(fold) - 1;
  });
}

function headings(block: SourceBlock): Fold[] {
  const heading = block.read.syntax.heading;
  if (!heading) return [];
  const own = fold(block, heading.span.line, lastLine(block));
  return [own, ...heading.body.flatMap((line) => within(block, line))].filter(
    (f) => f.last > f.first,
  );
}

function within(block: SourceBlock, line: LineSyntax): Fold[] {
  if (!line.body.length) return [];
  const own = fold(block, line.span.line, lastOf(line));
  return [own, ...line.body.flatMap((inner) => within(block, inner))];
}

function lastOf(line: LineSyntax): number {
  const last = line.body.at(-1);
  return last ? lastOf(last) : line.span.line;
}

function fold(block: SourceBlock, first: number, last: number, kind: Fold['kind'] = 'block'): Fold {
  return { first: block.firstLine + first, last: block.firstLine + last, kind };
}

/** Two comment lines or more, one under the other. */
function comments(block: SourceBlock): Fold[] {
  const lines = block.read.syntax.comments.map((c) => c.span.line);
  return runs(lines).map(([first, last]) => fold(block, first, last, 'comment'));
}

/** Two lines or more that name used files, one under the other. One that holds lines which do not belong there ends them. */
function uses(file: SourceFile): Fold[] {
  const lines = file.blocks
    .filter(({ kind, read }) => kind === 'use' && !read.syntax.heading?.body.length)
    .map((block) => block.firstLine + (block.read.syntax.heading?.span.line ?? 0));
  return runs(lines).map(([first, last]) => ({ first, last, kind: 'imports' }));
}

/** Numbers that follow each other, two at least: the first and the last of each run. */
function runs(lines: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  let first = 0;
  lines.forEach((line, i) => {
    if (lines[i + 1] === line + 1) return;
    if (i > first) found.push([lines[first]!, line]);
    first = i + 1;
  });
  return found;
}
