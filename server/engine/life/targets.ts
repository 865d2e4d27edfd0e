/** What an option can change: the work and costs of a file, and the openings and piers in its walls, by name. */
import type { ReadLine } from '../../../grammar/read/values';
import { wordOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';

export interface ToChange {
  readonly block: SourceBlock;
  /** Its own heading, or that of an opening or a pier in it. */
  readonly heading: ReadLine;
}

const KINDS: ReadonlySet<string> = new Set(['wall', 'pier', 'repair', 'cost']);

export type Targets = ReadonlyMap<string, readonly ToChange[]>;

export function targetsIn(blocks: readonly SourceBlock[]): Targets {
  const found = new Map<string, ToChange[]>();
  for (const block of blocks)
    for (const each of inBlock(block)) {
      const name = wordOf(each.heading.values.name);
      const list = found.get(name);
      if (list) list.push(each);
      else found.set(name, [each]);
    }
  return found;
}

const kept = new WeakMap<SourceBlock, readonly ToChange[]>();

function inBlock(block: SourceBlock): readonly ToChange[] {
  const known = kept.get(block);
  if (known) return known;
  const heading = KINDS.has(block.kind ?? '') ? block.read.heading : undefined;
  const inner = (heading?.body ?? []).filter((l) => l.kind.body && l.values.name);
  const made = heading ? [heading, ...inner].map((each) => ({ block, heading: each })) : [];
  kept.set(block, made);
  return made;
}
