/** A copy read once more, before it goes out: what must not be in it is looked for in what was made. */

import type { LineSyntax } from '../../../grammar/syntax';
import { phrase } from '../../../shared/phrase';
import type { Place } from '../../../shared/span';
import { SourceFile } from '../workspace/source';
import { KEPT } from './kept';
import { moneyIn } from './money';

const WITH_PRICE: ReadonlySet<string> = new Set([...KEPT, 'perpend', 'use', 'price']);

/** Lines that cannot be read: what they would hide is not known, so that it cannot be looked for. */
export function unreadIn(files: readonly SourceFile[]): Place | undefined {
  for (const file of files)
    for (const block of file.shipped ? [] : file.blocks) {
      const fault = block.read.faults.find((f) => f.severity === 'error');
      if (fault) return block.place(fault.span);
    }
  return undefined;
}

/** Nothing, for a copy that may go out; else what is wrong with it, which is a fault of ours. */
export function wrongIn(text: string, without: 'costs' | 'money'): string | undefined {
  const file = new SourceFile('', text);
  for (const { kind, read } of file.blocks) {
    if (read.syntax.heading && !WITH_PRICE.has(kind ?? ''))
      return phrase`a block ${kind ?? 'unread'}`;
    const { comments, lines } = read.syntax;
    if (lines.some((line) => line.comment) || (comments.length && kind !== 'perpend'))
      return phrase`a comment`;
    const money = lines.filter(({ items }) => moneyIn(items).size);
    const meant = without === 'costs' && kind === 'price' ? money.filter(isAgreed) : [];
    if (money.length > meant.length) return phrase`an amount of money`;
  }
  return undefined;
}

function isAgreed({ key }: LineSyntax): boolean {
  return key?.text === 'agreed';
}
