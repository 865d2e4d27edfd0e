/** What stands at the end of lines while typing: totals of blocks, the price of the job, what a line works out to. */
import type { ReadLine } from '../../../grammar/read/values';
import type { Work } from '../brickwork/needs';
import { amountsOf, moneyOf } from '../views/job-view';
import { mixSummary } from '../views/mortar';
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
  const home = job.homeOf(block);
  const text = totalText(block, home);
  return [...(text ? [total(block, heading, text)] : []), ...lineHints(block, home)];
}

function totalText(block: SourceBlock, job: Job): string | undefined {
  if (block.kind === 'job') return job.works.length ? priceText(job) : undefined;
  if (block.kind === 'option') return optionText(block, job);
  if (block.kind === 'mix') return mixSummary(block.name, job);
  const work = job.workAt(block);
  return work && workText(work, job);
}

/** The price first: the end of a long hint may be cut off, and it is what a reader looks for. */
function workText(work: Work, job: Job): string {
  const { cost, price } = moneyOf(work, job);
  return [price, ...keptOf(work, job).amounts, cost].join(' · ');
}

/** An incomplete price says so. */
function priceText(job: Job): string {
  const { total, tax, taxName } = job.price;
  const incl = tax.value.isZero() ? '' : ` incl. ${taxName}`;
  return `${showTerm(total, job.env)}${incl}${total.gaps.length ? ', not complete' : ''}`;
}

/** What it adds, and what the job comes to with it. */
function optionText({ name }: SourceBlock, job: Job): string | undefined {
  const option = job.options.priced.find((each) => each.name === name);
  if (!option || !job.isJob) return undefined;
  const { more, price } = option;
  const sign = more.total.value.isNegative() ? '' : '+';
  const open = price.total.gaps.length ? ', not complete' : '';
  return `${sign}${showTerm(more.total, job.env)} · ${showTerm(price.total, job.env)} with it${open}`;
}

/** What hangs on a piece of work alone is worked out once, and stands until it changes. */
interface Kept {
  readonly amounts: readonly string[];
  /** Lines count from the block’s first. */
  readonly lines: readonly Hint[];
}

const kept = new WeakMap<Work, Kept>();

function keptOf(work: Work, job: Job): Kept {
  let known = kept.get(work);
  if (!known) {
    known = { amounts: amountsOf(work, job.env), lines: linesOf(work, job) };
    kept.set(work, known);
  }
  return known;
}

function lineHints(block: SourceBlock, job: Job): Hint[] {
  const work = job.workAt(block);
  if (!work) return [];
  return keptOf(work, job).lines.map((h) => ({ ...h, line: block.firstLine + h.line }));
}

function linesOf(work: Work, job: Job): Hint[] {
  const heading = work.block.read.heading!;
  const parents = [heading, ...heading.body.filter((l) => l.kind.body)];
  return parents.flatMap((parent) =>
    parent.body.flatMap((line): Hint[] => {
      const text = lineText(line, parent, work, job.env);
      const { line: at, end: column } = line.syntax.span;
      return text ? [{ line: at, column, text, kind: 'line' }] : [];
    }),
  );
}

/** At the very end of the line, a comment included. */
function total(block: SourceBlock, heading: ReadLine, text: string): Hint {
  const at = heading.syntax.span.line;
  const column = block.lines[at]!.trimEnd().length;
  return { line: block.firstLine + at, column, text, kind: 'total' };
}
