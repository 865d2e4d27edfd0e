/** What a paper for the client leaves out, since nobody has filled it in yet. */
import { phrase } from '../../shared/phrase';
import { blanksIn } from '../engine/resolve/blanks';
import type { Job } from '../engine/workspace/job';
import type { SourceBlock } from '../engine/workspace/source';

/** A sentence for each block that has such, for whoever makes the paper; the client is told nothing of it. */
export function leftBlank({ book, file }: Job): string[] {
  const own = file.blocks.filter(({ kind }) => kind === 'job' || kind === 'bill-to');
  return [...book.blocksOf('firm').slice(0, 1), ...own].flatMap(toldOf);
}

function toldOf(block: SourceBlock): string[] {
  const words = [...new Set(blanksIn(block).map(({ line }) => line.kind.key))];
  if (!words.length) return [];
  const file = block.file.name.split(/[\\/]/).at(-1);
  return [phrase`Still to be filled in, and so left out: ${words.join(', ')} (${file}).`];
}
