/** A line as it goes out: no comment, no money, and of its texts only what may be said. */

import { printItems } from '../../../grammar/print/items';
import { match } from '../../../grammar/read/match';
import type { ReadLine, Values } from '../../../grammar/read/values';
import type { Item } from '../../../grammar/syntax';
import type { SourceBlock } from '../workspace/source';
import { moneyIn } from './money';
import { cleaned, type Hidden } from './texts';

/** Their numbers are no amounts, though an amount of the job may have the same digits. Money is none the less. */
const CONTACT: ReadonlySet<string> = new Set([
  'phone',
  'postcode',
  'email',
  'tax-number',
  'registration',
]);
const NONE: ReadonlySet<string> = new Set();

/** What was taken out of a text, so that it can be told. */
export interface Replaced {
  readonly before: string;
  readonly after: string;
}

/** Nothing for a line that cannot go out at all. */
export function printed(
  block: SourceBlock,
  line: ReadLine,
  hidden: Hidden,
  replaced: Replaced[],
): string | undefined {
  const { syntax } = line;
  const items = withoutMoney(line, syntax.items);
  if (!items || items.some((item) => item.kind === 'text' && !item.closed)) return undefined;
  const source = block.lines[syntax.span.line]!;
  const within = CONTACT.has(line.kind.key) ? { ...hidden, amounts: NONE } : hidden;
  const said = items.map((item) => clean(item, source.length, within, replaced));
  const words = printItems(said, source);
  return `${syntax.key!.text}${words && ' '}${words}`;
}

/** A pack is a fact of the work, and stays where its price goes: `25 kg bag at £6.40`. Any other line with money goes. */
function withoutMoney({ kind, values }: ReadLine, items: readonly Item[]) {
  const money = moneyIn(items);
  if (!money.size) return holdsMoney(values) ? undefined : items;
  const from = items.findIndex((item) => money.has(item));
  const at = items[from - 1];
  const last = items.slice(from).every((item) => money.has(item));
  if (!last || at?.kind !== 'word' || at.text !== 'at' || from < 2) return undefined;
  const rest = items.slice(0, from - 1);
  return match(kind.takes, rest).values ? rest : undefined;
}

/** By how it was read: whatever it was cut into. */
function holdsMoney(values: Values): boolean {
  return Object.values(values).some(
    (value) => value?.kind === 'money' || (value?.kind === 'list' && value.of.some(holdsMoney)),
  );
}

/** Its span then lies behind the line, so that it is written anew, in plain quotation marks. */
function clean(item: Item, end: number, hidden: Hidden, replaced: Replaced[]): Item {
  if (item.kind !== 'text') return item;
  const text = cleaned(item.text, hidden);
  if (text !== item.text) replaced.push({ before: item.text, after: text });
  return { ...item, text, span: { ...item.span, start: end, end } };
}
