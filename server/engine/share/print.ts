/** A line as it goes out: no comment, no money, and of its texts only what may be said. */

import { printItems } from '../../../grammar/print/items';
import { match } from '../../../grammar/read/match';
import type { ReadLine } from '../../../grammar/read/values';
import type { Item } from '../../../grammar/syntax';
import type { SourceBlock } from '../workspace/source';
import { cleaned, type Hidden } from './texts';

/** What was taken out of a text, so that it can be told. */
export interface Replaced {
  readonly before: string;
  readonly after: string;
}

/** Nothing for a line that cannot go out at all. */
export function printed(
  block: SourceBlock,
  { kind, syntax }: ReadLine,
  hidden: Hidden,
  replaced: Replaced[],
): string | undefined {
  const items = withoutMoney(kind.takes, syntax.items);
  if (!items || items.some((item) => item.kind === 'text' && !item.closed)) return undefined;
  const source = block.lines[syntax.span.line]!;
  const said = items.map((item) => clean(item, source.length, hidden, replaced));
  const words = printItems(said, source);
  return `${syntax.key!.text}${words && ' '}${words}`;
}

/** A pack is a fact of the work, and stays where its price goes: `25 kg bag at £6.40`. Any other line with money goes. */
function withoutMoney(takes: ReadLine['kind']['takes'], items: readonly Item[]) {
  if (!items.some(isMoney)) return items;
  const [at, money] = items.slice(-2);
  const rest = items.slice(0, -2);
  const ends = at?.kind === 'word' && at.text === 'at' && money !== undefined && isMoney(money);
  if (!ends || !rest.length || rest.some(isMoney)) return undefined;
  return match(takes, rest).values ? rest : undefined;
}

function isMoney({ kind }: Item): boolean {
  return kind === 'money';
}

/** Its span then lies behind the line, so that it is written anew, in plain quotation marks. */
function clean(item: Item, end: number, hidden: Hidden, replaced: Replaced[]): Item {
  if (item.kind !== 'text') return item;
  const text = cleaned(item.text, hidden);
  if (text !== item.text) replaced.push({ before: item.text, after: text });
  return { ...item, text, span: { ...item.span, start: end, end } };
}
