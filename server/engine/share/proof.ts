/** A copy read once more, before it goes out: what must not be in it is looked for in what was made. */
import type { Item, LineSyntax } from '../../../grammar/syntax';
import { SourceFile } from '../workspace/source';
import { KEPT } from './kept';

const WITH_PRICE: ReadonlySet<string> = new Set([...KEPT, 'perpend', 'use', 'price']);

/** Nothing, for a copy that may go out; else what is wrong with it, which is a fault of ours. */
export function wrongIn(text: string, without: 'costs' | 'money'): string | undefined {
  const file = new SourceFile('', text);
  for (const { kind, read } of file.blocks) {
    if (read.syntax.heading && !WITH_PRICE.has(kind ?? '')) return `a block ${kind ?? 'unread'}`;
    const { comments, lines } = read.syntax;
    if (lines.some((line) => line.comment) || (comments.length && kind !== 'perpend'))
      return 'a comment';
    const money = lines.filter(({ items }) => items.some(isMoney));
    const meant = without === 'costs' && kind === 'price' ? money.filter(isAgreed) : [];
    if (money.length > meant.length) return 'an amount of money';
  }
  return undefined;
}

function isMoney({ kind }: Item): boolean {
  return kind === 'money';
}

function isAgreed({ key }: LineSyntax): boolean {
  return key?.text === 'agreed';
}
