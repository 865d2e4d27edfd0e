/** The outline of a file: its blocks, the openings and piers within them, and lines that give names. */
import type { ReadLine } from '../../../grammar/read/values';
import type { LineSyntax } from '../../../grammar/syntax';
import { wordOf } from '../resolve/book';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { lastLine } from './extent';
import { givenAt, isCounted } from './names';
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
  const given = read && givenAt({ block, read, line: 0, column: 0, parents: [] });
  const title = wordOf(read?.values.title) || wordOf(read?.values.text);
  const inner = (read?.body ?? []).filter((line) => isPart(block, line));
  return {
    name: isCounted(given?.kind) ? kind : [kind, given?.name].filter(Boolean).join(' '),
    detail: title,
    kind: given?.kind ?? kind,
    lines: { first: block.firstLine + first, last: block.firstLine + last },
    end: block.lines[last]!.length,
    select: { ...syntax.span, line: block.firstLine + first },
    children: inner.map((line) => symbol(block, line.syntax, line, lastOf(line))),
  };
}

/** It has lines of its own, or gives a name. */
function isPart(block: SourceBlock, line: ReadLine): boolean {
  if (line.kind.body && !line.kind.inColumn) return true;
  return givenAt({ block, read: line, line: 0, column: 0, parents: [] }) !== undefined;
}

function lastOf(line: ReadLine): number {
  return Math.max(line.syntax.span.line, ...line.syntax.body.map((l) => l.span.line));
}
