/** Which blocks are only done when an option is taken. */
import { wordOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';

/** Kinds of block that an option can hold; others are not even read for it. */
const MAY_BE: ReadonlySet<string> = new Set(['wall', 'pier', 'repair', 'cost']);

const NONE: readonly string[] = [];
const kept = new WeakMap<SourceBlock, readonly string[]>();

/** Options that the block is a part of; none for one that is always done. */
export function optionsOf(block: SourceBlock): readonly string[] {
  if (block.kind === undefined || !MAY_BE.has(block.kind)) return NONE;
  let known = kept.get(block);
  if (!known) {
    known = said(block);
    kept.set(block, known);
  }
  return known;
}

function said(block: SourceBlock): readonly string[] {
  const line = block.read.heading?.body.find((l) => l.kind.key === 'option');
  const list = line?.values.options;
  return list?.kind === 'list' ? list.of.map((each) => wordOf(each.option)) : NONE;
}

export function isIn(block: SourceBlock, taken: ReadonlySet<string>): boolean {
  const options = optionsOf(block);
  return !options.length || options.some((name) => taken.has(name));
}
