/** The cautions of a scope, read once: when each applies, what to do, whom to ask, and who says so. */
import type { ReadLine, Values } from '../../../grammar/read/values';
import { toBase } from '../../../shared/units';
import { wordOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';
import type { Limit, Than } from './holding';

export interface Condition {
  readonly what: string;
  readonly limit?: Limit;
  /** Holds where no line says it. */
  readonly unsaid: boolean;
}

export interface Rule {
  readonly block: SourceBlock;
  readonly name: string;
  readonly title: string;
  /** One of these is enough; all of its conditions must hold. */
  readonly when: readonly (readonly Condition[])[];
  readonly say: readonly string[];
  readonly ask: readonly string[];
  readonly source: readonly string[];
}

const read = new WeakMap<SourceBlock, Rule>();

/** `blocks` nearest first: the nearest of a name holds. */
export function rulesOf(blocks: readonly SourceBlock[]): Rule[] {
  const rules = new Map<string, Rule>();
  for (const block of blocks) {
    const rule = ruleOf(block);
    if (rule && !rules.has(rule.name)) rules.set(rule.name, rule);
  }
  return [...rules.values()];
}

function ruleOf(block: SourceBlock): Rule | undefined {
  const heading = block.read.heading;
  if (!heading) return undefined;
  let rule = read.get(block);
  if (!rule) {
    rule = made(block, heading);
    read.set(block, rule);
  }
  return rule;
}

function made(block: SourceBlock, heading: ReadLine): Rule {
  const name = wordOf(heading.values.name);
  const texts = (key: string) => linesOf(heading, key).map((line) => wordOf(line.values.text));
  return {
    block,
    name,
    title: wordOf(heading.values.title) || name,
    when: linesOf(heading, 'when').map((line) => conditionsIn(line, block)),
    say: texts('say'),
    ask: texts('ask'),
    source: texts('source'),
  };
}

function linesOf(heading: ReadLine, key: string): ReadLine[] {
  return heading.body.filter((line) => line.kind.key === key);
}

function conditionsIn(line: ReadLine, block: SourceBlock): Condition[] {
  const { when } = line.values;
  return when?.kind === 'list' ? when.of.map((values) => conditionOf(values, block)) : [];
}

function conditionOf(values: Values, block: SourceBlock): Condition {
  const what = wordOf(values.what);
  const { amount } = values;
  const unsaid = values.unsaid !== undefined;
  if (amount?.kind !== 'quantity') return { what, unsaid };
  const base = amount.unit ? toBase(amount.low, amount.unit) : amount.low;
  const { line, start, end } = amount.span;
  const text = block.lines[line]!.slice(start, end);
  return {
    what,
    unsaid,
    limit: { than: wordOf(values.than) as Than, amount: base.toNumber(), text },
  };
}
