/** Options of a file as its lines say them. */
import type { ReadLine, Value } from '../../../grammar/read/values';
import { wordOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';

export interface Option {
  readonly name: string;
  readonly title: string;
  readonly block: SourceBlock;
  /** Its `change` and `leave-out` lines, in their order. */
  readonly steps: readonly ReadLine[];
  /** Those it says it stands in place of. */
  readonly insteadOf: readonly string[];
  /** Sentences for the client. */
  readonly notes: readonly string[];
}

const kept = new WeakMap<SourceBlock, Option>();

/** Of two of one name the first holds. */
export function optionsIn(blocks: readonly SourceBlock[]): readonly Option[] {
  const found = new Map<string, Option>();
  for (const block of blocks) {
    const { name } = block;
    if (block.kind !== 'option' || name === undefined || found.has(name)) continue;
    const option = kept.get(block) ?? optionOf(block, name);
    kept.set(block, option);
    found.set(name, option);
  }
  return [...found.values()];
}

function optionOf(block: SourceBlock, name: string): Option {
  const heading = block.read.heading!;
  const lines = (key: string) => heading.body.filter((l) => l.kind.key === key);
  return {
    name,
    title: wordOf(heading.values.title) || name,
    block,
    steps: heading.body.filter((l) => ['change', 'leave-out'].includes(l.kind.key)),
    insteadOf: lines('instead-of').flatMap((l) => namesIn(l.values.options)),
    notes: lines('note').map((l) => wordOf(l.values.text)),
  };
}

/** The names of a list of options. */
export function namesIn(list: Value | undefined): string[] {
  return list?.kind === 'list' ? list.of.map((each) => wordOf(each.option)) : [];
}

/** Whether only one of two can be taken: it is enough that one of them says so. */
export function exclude(a: Option, b: Option): boolean {
  return a !== b && (a.insteadOf.includes(b.name) || b.insteadOf.includes(a.name));
}
