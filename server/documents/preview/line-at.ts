/** The line that stands at a place of a file, as it was read. */
import type { Place } from '../../../shared/span';
import type { Job } from '../../engine/workspace/job';
import type { SourceBlock } from '../../engine/workspace/source';
import type { ReadLine } from './lines';

export interface LineAt {
  readonly line: ReadLine;
  readonly block: SourceBlock;
}

/** Nothing where no line could be read there. */
export function lineAt({ file, line }: Place, job: Job): LineAt | undefined {
  const block = job.scope.files
    .find(({ name }) => name === file)
    ?.blocks.find(({ firstLine, lines }) => line >= firstLine && line < firstLine + lines.length);
  const { heading } = block?.read ?? {};
  const found = block && heading && within(heading, line - block.firstLine);
  return found && { line: found, block };
}

function within(line: ReadLine, at: number): ReadLine | undefined {
  if (line.syntax.span.line === at) return line;
  return line.body.map((inner) => within(inner, at)).find(Boolean);
}
