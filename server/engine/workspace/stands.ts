/** The block that a repair is in: a wall or a pier of its file, else of a file it uses; for a pier of a wall, that wall. */
import { type Book, wordOf } from '../resolve/book';
import type { LineFacts } from '../resolve/env';
import type { SourceBlock } from './source';

export function standsIn(
  line: LineFacts | undefined,
  blocks: readonly SourceBlock[],
  book: Book,
): SourceBlock | undefined {
  const name = line?.word('wall');
  if (!line || !name) return undefined;
  const own = (kind: string) => blocks.find((b) => b.kind === kind && b.name === name);
  const wall = own('wall') ?? book.find('wall', name);
  if (wall) return wall;
  return own('pier') ?? book.find('pier', name) ?? blocks.find((b) => hasPier(b, name));
}

/** Whether it is a wall with a pier of that name. */
export function hasPier(block: SourceBlock, name: string): boolean {
  if (block.kind !== 'wall') return false;
  const body = block.read.heading?.body ?? [];
  return body.some((line) => line.kind.key === 'pier' && wordOf(line.values.name) === name);
}
