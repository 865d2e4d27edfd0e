/** The line that stands at a place of a file, as it was read. */
import type { Place } from '../../../shared/span';
import { allFiles } from '../../engine/resolve/uses';
import type { Job } from '../../engine/workspace/job';
import type { SourceBlock } from '../../engine/workspace/source';
import type { ReadLine } from './lines';

export interface LineAt {
  readonly line: ReadLine;
  readonly block: SourceBlock;
}

/** Lines by their places in all files of a job. */
export class LinesAt {
  private readonly files: ReadonlyMap<string, readonly SourceBlock[]>;
  private readonly known = new Map<string, LineAt | undefined>();

  constructor(job: Job) {
    this.files = new Map(allFiles(job.scope).map(({ name, blocks }) => [name, blocks]));
  }

  /** Nothing where no line could be read there. */
  at({ file, line }: Place): LineAt | undefined {
    const key = `${line} ${file}`;
    if (!this.known.has(key)) this.known.set(key, this.found(file, line));
    return this.known.get(key);
  }

  private found(file: string, line: number): LineAt | undefined {
    const block = blockAt(this.files.get(file) ?? [], line);
    const found = block?.read.heading && within(block.read.heading, line - block.firstLine);
    return found && { line: found, block };
  }
}

/** Blocks stand one after the other. */
function blockAt(blocks: readonly SourceBlock[], line: number): SourceBlock | undefined {
  let [from, to] = [0, blocks.length - 1];
  while (from < to) {
    const middle = (from + to + 1) >> 1;
    if (blocks[middle]!.firstLine <= line) from = middle;
    else to = middle - 1;
  }
  const block = blocks[from];
  return block && line >= block.firstLine && line < block.firstLine + block.lines.length
    ? block
    : undefined;
}

function within(line: ReadLine, at: number): ReadLine | undefined {
  if (line.syntax.span.line === at) return line;
  return line.body.map((inner) => within(inner, at)).find(Boolean);
}
