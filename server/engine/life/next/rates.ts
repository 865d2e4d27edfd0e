/**
 * Rates that a job wrote down for itself, beside what the files it uses say of the same things now. Only money is brought
 * up: another pack, output or size than the firm’s is the job’s own choice.
 */
import { printItems } from '../../../../grammar/print/items';
import type { ReadLine } from '../../../../grammar/read/values';
import { moneyIn } from '../../share/money';
import type { SourceBlock, SourceFile } from '../../workspace/source';
import { type Rewrite, SAME } from './rewrite';

/** One line of a block that both have. */
export interface RateNow {
  /** `brick harwick-red price` */
  readonly what: string;
  readonly was: string;
  readonly now: string;
}

const PRICED: ReadonlySet<string> = new Set([
  'brick',
  'mix',
  'material',
  'labour',
  'output',
  'serving',
]);

export function ratesNow(file: SourceFile, others: readonly SourceFile[]) {
  const to = new Map<number, string>();
  const rates: RateNow[] = [];
  const known = firm(others);
  for (const block of file.blocks) {
    if (!block.kind || !PRICED.has(block.kind)) continue;
    const name = [block.kind, block.name].filter(Boolean).join(' ');
    for (const line of block.read.heading?.body ?? []) {
      const key = wordOf(line);
      const now = key === undefined ? undefined : known.get(`${name} ${key}`);
      const was = saidIn(block, line);
      if (key === undefined || now === undefined || now === was || !onlyMoney(line, was, now))
        continue;
      rates.push({ what: `${name} ${key}`, was, now });
      to.set(block.firstLine + line.syntax.span.line, replaced(block, line, now));
    }
  }
  const rewrite: Rewrite = (line) => to.get(line) ?? SAME;
  return { rewrite, rates };
}

/** What each line of the firm’s own blocks says. Libraries that ship hold no prices, and theirs are no news. */
function firm(others: readonly SourceFile[]): Map<string, string> {
  const known = new Map<string, string>();
  for (const file of others) {
    if (file.shipped) continue;
    for (const block of file.blocks) {
      if (!block.kind || !PRICED.has(block.kind)) continue;
      const name = [block.kind, block.name].filter(Boolean).join(' ');
      for (const line of block.read.heading?.body ?? []) {
        const key = `${name} ${wordOf(line)}`;
        if (wordOf(line) !== undefined && !known.has(key)) known.set(key, saidIn(block, line));
      }
    }
  }
  return known;
}

/** Lines that may stand several times say no one thing. */
function wordOf(line: ReadLine): string | undefined {
  return line.kind.many ? undefined : line.syntax.key?.text;
}

/** Whether the two say the same but for amounts of money. */
function onlyMoney({ syntax }: ReadLine, was: string, now: string): boolean {
  if (!moneyIn(syntax.items).size) return false;
  const rest = (text: string) => text.replace(MONEY, '');
  return rest(was) === rest(now);
}

/** As {@link printItems} writes money: a sign or a code, and digits with marks; or behind them. */
const MONEY = /(?:[A-Z]{3} ?|[^\w\s"]{1,2})\d[\d,.']*|\d[\d,.']* ?(?:\p{Sc}|[A-Z]{3}\b)/gu;

function saidIn(block: SourceBlock, { syntax }: ReadLine): string {
  return printItems(syntax.items, block.lines[syntax.span.line]!);
}

function replaced(block: SourceBlock, { syntax }: ReadLine, now: string): string {
  const text = block.lines[syntax.span.line]!;
  const comment = syntax.comment ? `  ${text.slice(syntax.comment.span.start)}` : '';
  return `${' '.repeat(syntax.indent)}${syntax.key!.text} ${now}${comment}`;
}
