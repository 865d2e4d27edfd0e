/** What stands at the end of lines while typing: totals of blocks, the price of the job, what a line works out to. */
import type { ReadLine } from '../../../grammar/read/values';
import { summaryOf } from '../views/job-view';
import { showTerm } from '../views/show';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { lineText } from './line-text';
import type { Hint, LineRange } from './types';

/** Only for the lines asked for: the whole of a long file would cost more than a reader sees. */
export function hintsOf(job: Job, range: LineRange): Hint[] {
  const { blocks } = job.file;
  const hints: Hint[] = [];
  for (let i = job.file.blockAt(range.first); i < blocks.length; i++) {
    const block = blocks[i]!;
    if (block.firstLine > range.last) break;
    hints.push(...blockHints(block, job));
  }
  return hints.filter((h) => h.line >= range.first && h.line <= range.last);
}

function blockHints(block: SourceBlock, job: Job): Hint[] {
  const heading = block.read.heading;
  if (!heading) return [];
  const total = totalText(block, job);
  const hints = total ? [hint(block, heading, total, 'total')] : [];
  return [...hints, ...lineHints(block, heading, job)];
}

function totalText(block: SourceBlock, job: Job): string | undefined {
  if (block.kind === 'job') return job.works.length ? priceText(job) : undefined;
  const work = job.works.find((w) => w.block === block);
  return work && priceFirst(summaryOf(work, job));
}

/** The end of a long hint may be cut off; the price is what it is looked at for. */
function priceFirst(summary: string): string {
  const parts = summary.split(SEPARATOR);
  return [parts.at(-1), ...parts.slice(0, -1)].join(SEPARATOR);
}

const SEPARATOR = ' · ';

/** An incomplete price says so. */
function priceText(job: Job): string {
  const { total, tax, taxName } = job.price;
  const incl = tax.value.isZero() ? '' : ` incl. ${taxName}`;
  return `${showTerm(total, job.env)}${incl}${total.gaps.length ? ', not complete' : ''}`;
}

function lineHints(block: SourceBlock, heading: ReadLine, job: Job): Hint[] {
  const work = job.works.find((w) => w.block === block);
  if (!work) return [];
  return [heading, ...heading.body.filter((l) => l.kind.body)].flatMap((parent) =>
    parent.body.flatMap((line) => {
      const text = lineText(line, parent, work, job.env);
      return text ? [hint(block, line, text, 'line')] : [];
    }),
  );
}

/** A total stands at the very end of its line; what a line comes to stands by its value, before a comment. */
function hint(block: SourceBlock, line: ReadLine, text: string, kind: Hint['kind']): Hint {
  const at = line.syntax.span.line;
  const column = kind === 'total' ? block.lines[at]!.trimEnd().length : line.syntax.span.end;
  return { line: block.firstLine + at, column, text, kind };
}
