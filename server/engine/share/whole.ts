/** The whole job as one file: its text as it is, and in it what it takes from the files it uses. Libraries that ship stay named. */
import { format } from '../../../grammar/print';
import type { ReadLine } from '../../../grammar/read/values';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { usesOf } from './index';
import { merged, type Whole } from './merge';
import { neededOf } from './need';

/** Comments, record, rates and all; only the firm’s logo, which is another file, is not in it. */
export function wholeCopy(job: Job, head: string): string {
  const used = job.scope.files.slice(1);
  const going = neededOf(
    job.file.blocks.filter((block) => block.kind !== 'use'),
    used.flatMap((file) => file.blocks),
  );
  const own = new Set(job.file.blocks);
  const taken = merged([...job.file.blocks, ...going.filter((block) => !own.has(block))]);
  const inner = new Map(taken.filter((w) => own.has(w.block)).map((w) => [w.block, more(w)]));
  const texts = job.file.blocks.map((block) => textOf(block, inner.get(block) ?? []));
  const others = taken.filter((w) => !own.has(w.block)).map(added);
  return format([`# ${head}`, ...texts, '', usesOf(job), '', ...others].join('\n'));
}

/** Lines that other files say of what the job has a block for. */
function more({ block, body }: Whole): string[] {
  return body.filter((each) => each.block.file !== block.file).flatMap(raw);
}

function added({ block, heading, body }: Whole): string {
  const head = block.lines[heading.syntax.span.line]!;
  const lines = body.filter(({ line }) => line.kind.key !== 'logo').flatMap(raw);
  return [head, ...lines, ''].join('\n');
}

function raw({ block, line }: Whole['body'][number]): string[] {
  const one = ({ syntax, body }: ReadLine): string[] => [
    block.lines[syntax.span.line]!,
    ...body.flatMap(one),
  ];
  return one(line);
}

/** As written, with further lines after its last; files that it uses are in the copy. */
function textOf({ kind, lines, read }: SourceBlock, extra: readonly string[]): string {
  const at = read.syntax.heading?.span.line ?? 0;
  if (kind === 'use') return lines.filter((_, i) => i !== at).join('\n');
  if (!extra.length) return lines.join('\n');
  const last = Math.max(...read.syntax.lines.map((l) => l.span.line));
  return [...lines.slice(0, last + 1), ...extra, ...lines.slice(last + 1)].join('\n');
}
