/** Texts for papers that are still to be filled in: `town "? Your town"`. */
import { clipped } from '../../../grammar/read/fault';
import type { ReadLine, UnknownValue } from '../../../grammar/read/values';
import type { SourceBlock } from '../workspace/source';

export interface Blank {
  readonly block: SourceBlock;
  readonly line: ReadLine;
  readonly value: UnknownValue;
}

/** In the order of the lines. */
export function blanksIn(block: SourceBlock): Blank[] {
  const { heading } = block.read;
  if (!heading) return [];
  return [heading, ...heading.body].flatMap((line) => {
    const value = blankOf(line);
    return value ? [{ block, line, value }] : [];
  });
}

function blankOf({ kind, values }: ReadLine): UnknownValue | undefined {
  for (const slot of kind.takes) {
    const value = slot.slot === 'text' && slot.blank ? values[slot.key] : undefined;
    if (value?.kind === 'unknown') return value;
  }
  return undefined;
}

/** Lines that have an error, as they are written; a long one is cut short. */
export function unreadIn(block: SourceBlock): string[] {
  const errors = block.read.faults.filter(({ severity }) => severity === 'error');
  return [...new Set(errors.map(({ span }) => clipped(block.lines[span.line]!.trim())))];
}
