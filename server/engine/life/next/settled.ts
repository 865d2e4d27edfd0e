/** The text of a job as it was agreed: options that were accepted are written into it, and all options are gone. */

import type { Job } from '../../workspace/job';
import { type SourceBlock, SourceFile } from '../../workspace/source';
import { agreedJob } from '../agreed';
import { isIn, optionsOf } from '../in-option';

/** The file itself where no option was accepted: what is still offered is offered again. */
export function settled(job: Job): SourceFile {
  const agreed = agreedJob(job);
  if (!agreed.taken.size) return job.file;
  const lines = agreed.file.blocks.flatMap((block) => {
    const stays = block.kind !== 'option' && isIn(block, agreed.taken);
    return stays ? withoutOption(block) : after(block);
  });
  return new SourceFile(job.file.name, lines.join('\n'));
}

/** A piece of work that was an option is a part of the job like any other. */
function withoutOption(block: SourceBlock): readonly string[] {
  if (!optionsOf(block).length) return block.lines;
  const body = block.read.heading?.body ?? [];
  const out = new Set(body.filter((l) => l.kind.key === 'option').map((l) => l.syntax.span.line));
  return block.lines.filter((_, i) => !out.has(i));
}

/** Comments in the first column after the last line of a block belong to what follows it. */
function after(block: SourceBlock): readonly string[] {
  const last = Math.max(0, ...block.read.syntax.lines.map((l) => l.span.line));
  const rest = block.lines.slice(last + 1);
  const from = rest.findIndex((line) => line.startsWith('#'));
  return from < 0 ? [''] : ['', ...rest.slice(from)];
}
