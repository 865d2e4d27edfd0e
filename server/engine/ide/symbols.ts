/** The outline of a file: its blocks, and the openings and piers within them. */
import type { ReadLine } from '../../../grammar/read/values';
import type { LineSyntax } from '../../../grammar/syntax';
import { wordOf } from '../resolve/book';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { lastLine } from './extent';
import type { OutlineItem } from './types';

/** They open no block of the work; a reader does not look for them. */
const LEFT_OUT: ReadonlySet<string> = new Set(['perpend', 'use']);

export function symbolsOf(file: SourceFile): OutlineItem[] {
  return file.blocks.flatMap((block) => {
    const heading = block.read.syntax.heading;
    if (!heading?.key || LEFT_OUT.has(heading.key.text)) return [];
    return [symbol(block, heading, block.read.heading, lastLine(block))];
  });
}

/** A heading that cannot be read is listed too, by its words. */
function symbol(
  block: SourceBlock,
  syntax: LineSyntax,
  read: ReadLine | undefined,
  last: number,
): OutlineItem {
  const kind = syntax.key!.text;
  const first = syntax.span.line;
  const name = wordOf(read?.values.name);
  const title = wordOf(read?.values.title) || wordOf(read?.values.text);
  const inner = (read?.body ?? []).filter((line) => line.kind.body && !line.kind.inColumn);
  return {
    name: [kind, name].filter(Boolean).join(' '),
    detail: title,
    kind,
    lines: { first: block.firstLine + first, last: block.firstLine + last },
    end: block.lines[last]!.length,
    select: { ...syntax.span, line: block.firstLine + first },
    children: inner.map((line) => symbol(block, line.syntax, line, lastOf(line))),
  };
}

function lastOf(line: ReadLine): number {
  return Math.max(line.syntax.span.line, ...line.syntax.body.map((l) => l.span.line));
}
