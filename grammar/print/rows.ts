/** The lines of a block as rows: how deep, which word, what follows, which comment. No columns yet. */
import { indentOf, readBlock } from '../blocks';
import { headingNamed, type LineKind, lineOf } from '../lines';
import { match } from '../read/match';
import type { BlockSyntax, CommentSyntax, LineSyntax } from '../syntax';
import { withoutSpaceAfter } from '../tokens';
import { printItems } from './items';

export interface Row {
  /** Which line of the block it was. */
  readonly source: number;
  readonly indent: number;
  /** The line's word, when what follows it begins in the column of its level. */
  readonly key?: string;
  /** What follows the key; without a key, all that is written. */
  readonly text: string;
  readonly comment?: string;
}

/** A row with the line it came from, to place comments by. */
interface Placed {
  readonly row: Row;
  readonly line: LineSyntax;
  readonly heads: boolean;
}

/** Rows in the order of the lines; empty lines have none. */
export function rowsOf(lines: readonly string[]): Row[] {
  const block = readBlock(lines);
  const placed = new Laying(lines).block(block);
  const comments = block.comments.map((c) => commentRow(c, placed, lines));
  const rows = [...placed.map((p) => p.row), ...comments];
  return rows.sort((a, b) => a.source - b.source);
}

class Laying {
  private readonly placed: Placed[] = [];

  constructor(private readonly lines: readonly string[]) {}

  block(block: BlockSyntax): Placed[] {
    if (!block.heading) return [];
    const kind = block.heading.key && headingNamed(block.heading.key.text);
    this.lay(block.heading, kind, 0, true);
    this.body(block.heading, kind, 2);
    return this.placed.sort((a, b) => a.row.source - b.row.source);
  }

  private body(parent: LineSyntax, kind: LineKind | undefined, indent: number): void {
    for (const line of parent.body) {
      const own = kind && line.key && lineOf(kind, line.key.text);
      const heads = line.body.length > 0 || own?.body !== undefined;
      this.lay(line, own, indent, heads);
      this.body(line, own, indent + 2);
    }
  }

  private lay(line: LineSyntax, kind: LineKind | undefined, indent: number, heads: boolean): void {
    const written = this.lines[line.span.line]!;
    const row = {
      source: line.span.line,
      indent,
      comment: line.comment && withoutSpaceAfter(line.comment.text),
    };
    if (!kind) {
      const text = written.slice(line.span.start, line.span.end);
      this.placed.push({ row: { ...row, text }, line, heads });
      return;
    }
    const key = line.key!.text;
    const value = writtenAfter(kind, line, written);
    const alone = (heads && !kind.inColumn) || !value;
    const text = alone ? `${key}${value && ' '}${value}` : value;
    this.placed.push({ row: { ...row, key: alone ? undefined : key, text }, line, heads });
  }
}

/** What follows the line's word; as written when it cannot be read. */
function writtenAfter(kind: LineKind, line: LineSyntax, written: string): string {
  if (!line.items.length) return '';
  const open = line.items.some((item) => item.kind === 'text' && !item.closed);
  if (!open && match(kind.takes, line.items).values) return printItems(line.items, written);
  return written.slice(line.items[0]!.span.start, line.span.end);
}

/** A comment stands as deep as the line that follows it in the block; at the block's end, where it stood. */
function commentRow(
  comment: CommentSyntax,
  placed: readonly Placed[],
  lines: readonly string[],
): Row {
  const source = comment.span.line;
  const next = placed.findIndex((p) => p.row.source > source);
  const text = withoutSpaceAfter(comment.text);
  if (next >= 0) return { source, indent: placed[next]!.row.indent, text };
  return { source, indent: lastIndent(indentOf(lines[source]!), placed.at(-1)), text };
}

function lastIndent(written: number, before: Placed | undefined): number {
  if (!before || written === 0) return 0;
  const { row, line, heads } = before;
  if (heads && written > line.indent) return row.indent + 2;
  return written >= line.indent ? Math.max(row.indent, 2) : 2;
}
