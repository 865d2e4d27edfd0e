/** What a paper for the client leaves out, since nobody has filled it in yet, or nobody can read it. */
import { phrase } from '../../shared/phrase';
import { blanksIn, unreadIn } from '../engine/resolve/blanks';
import type { Job } from '../engine/workspace/job';
import type { SourceBlock } from '../engine/workspace/source';

/** A sentence for each block that has such, for whoever makes the paper; the client is told nothing of it. */
export function leftBlank({ book, file }: Job): string[] {
  const own = file.blocks.filter(({ kind }) => kind === 'job' || kind === 'bill-to');
  const blocks = [...book.blocksOf('firm').slice(0, 1), ...own];
  return blocks.flatMap((block) => [...toldOf(block), ...unreadOf(block)]);
}

function toldOf(block: SourceBlock): string[] {
  const words = [...new Set(blanksIn(block).map(({ line }) => line.kind.key))];
  if (!words.length) return [];
  return [phrase`Still to be filled in, and so left out: ${words.join(', ')} (${fileOf(block)}).`];
}

/** No price hangs on such a line of a firm, and so nothing else would tell that it is missing. */
function unreadOf(block: SourceBlock): string[] {
  return unreadIn(block).map(
    (text) => phrase`A line cannot be read, and so is left out: ${text} (${fileOf(block)}).`,
  );
}

function fileOf({ file }: SourceBlock): string {
  return file.name.split(/[\\/]/).at(-1)!;
}
