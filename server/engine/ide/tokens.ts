/** Words by what they are, for colouring. Depends on the text alone, so a block’s answer is kept with it. */

import type { ReadLine } from '../../../grammar/read/values';
import type { Item, LineSyntax } from '../../../grammar/syntax';
import type { Span } from '../../../shared/span';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { saidOf } from './said';
import type { LineRange, Token, TokenKind } from './types';

/** In the order of the text. Lines count from the file’s first. */
export function tokensOf(file: SourceFile, range?: LineRange): Token[] {
  const first = range?.first ?? 0;
  const last = range?.last ?? file.lines.length;
  const found: Token[] = [];
  for (let i = range ? file.blockAt(first) : 0; i < file.blocks.length; i++) {
    const block = file.blocks[i]!;
    if (block.firstLine > last) break;
    for (const token of blockTokens(block)) {
      const line = block.firstLine + token.line;
      if (line >= first && line <= last) found.push({ ...token, line });
    }
  }
  return found;
}

const kept = new WeakMap<SourceBlock, readonly Token[]>();

/** Lines count from the block’s first. */
function blockTokens(block: SourceBlock): readonly Token[] {
  const known = kept.get(block);
  if (known) return known;
  const { syntax, heading } = block.read;
  const reads = new Map<number, ReadLine>();
  if (heading) gather(heading, reads);
  const found = [
    ...syntax.lines.flatMap((line) => lineTokens(line, reads.get(line.span.line))),
    ...syntax.comments.map((c) => token(c.span, 'comment')),
  ].sort((a, b) => a.line - b.line || a.start - b.start);
  kept.set(block, found);
  return found;
}

function gather(read: ReadLine, reads: Map<number, ReadLine>): void {
  reads.set(read.syntax.span.line, read);
  for (const inner of read.body) gather(inner, reads);
}

function lineTokens(line: LineSyntax, read: ReadLine | undefined): Token[] {
  const found: Token[] = [];
  if (line.key && read) found.push(token(line.key.span, keyKind(read)));
  const words = read ? wordKinds(read) : new Map<string, Token>();
  for (const item of line.items) found.push(...itemTokens(item, words, read !== undefined));
  if (line.comment) found.push(token(line.comment.span, 'comment'));
  return found;
}

function keyKind(read: ReadLine): TokenKind {
  if (read.kind.top || (read.kind.body && !read.kind.inColumn)) return 'keyword';
  return read.kind.open ? 'class' : 'property';
}

/** Words of a line that are names or choices, by where they start. */
function wordKinds(read: ReadLine): Map<string, Token> {
  const found = new Map<string, Token>();
  for (const { slot, value, names } of saidOf(read)) {
    const declares = slot.slot === 'new-name' || undefined;
    const kind =
      declares || names.length ? 'class' : slot.slot === 'choice' ? 'enumMember' : undefined;
    if (kind) found.set(`${value.span.start}`, { ...value.span, kind, declares });
  }
  return found;
}

function itemTokens(item: Item, words: ReadonlyMap<string, Token>, read: boolean): Token[] {
  const known = words.get(`${item.span.start}`);
  switch (item.kind) {
    case 'word':
      if (known) return [known];
      return read ? [token(item.span, 'operator')] : [];
    case 'measure': {
      const numbers = [item.low, ...(item.high ? [item.high] : [])];
      const unit = item.unit && words.get(`${item.unit.span.start}`);
      return [...numbers.map((n) => token(n.span, 'number')), ...(unit ? [unit] : [])];
    }
    case 'money':
      return [item.amount, ...(item.high ? [item.high] : [])].map(({ span }) =>
        token(span, 'number'),
      );
    case 'text':
      return [token(item.span, 'string')];
    case 'date':
    case 'clock':
    case 'code':
      return [token(item.span, 'number')];
    default:
      return [];
  }
}

function token(span: Span, kind: TokenKind): Token {
  return { line: span.line, start: span.start, end: span.end, kind };
}
