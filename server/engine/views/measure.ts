/**
 * What a job does not know yet: what is still to be measured, and what waits for it; then what is known only between
 * two values, the one that the price most hangs on first.
 */
import type { LineSyntax } from '../../../grammar/syntax';
import type { Place, Span } from '../../../shared/span';
import type { RangeShare } from '../ranges/of-job';
import { wordOf } from '../resolve/book';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { allFigures } from './job-view';

/** A line with `?` in it. */
export interface Unmeasured {
  readonly block: SourceBlock;
  /** Of the question mark. */
  readonly span: Span;
  /** The line without its comment. */
  readonly text: string;
  /** Ids of the figures that are not complete without it. */
  readonly waiting: readonly string[];
}

/** In the order of the files: the job’s own lines first. */
export function unmeasuredIn(job: Job): readonly Unmeasured[] {
  const blocks = job.scope.files.filter((f) => !f.shipped).flatMap((file) => file.blocks);
  const lines = blocks.flatMap((block) => openLines(block).map((line) => ({ block, ...line })));
  if (!lines.length) return [];
  const waiting = waitingByLine(job);
  return lines.map(({ block, span, text }) => ({
    block,
    span,
    text,
    waiting: nearestFirst(waiting.get(lineKey(block, span)) ?? [], block),
  }));
}

/** Those of the work that the line stands in, then the price of the job: all others follow from them. */
function nearestFirst(ids: readonly string[], block: SourceBlock): string[] {
  const own = `${wordOf(block.read.heading?.values.name)}.`;
  const rank = (id: string) => (id.startsWith(own) ? 0 : id === 'job.price' ? 1 : 2);
  return [...ids].sort((a, b) => rank(a) - rank(b));
}

function openLines(block: SourceBlock): { span: Span; text: string }[] {
  if (!block.lines.some((line) => line.includes('?'))) return [];
  const heading = block.read.syntax.heading;
  return heading ? openIn(heading, block) : [];
}

function openIn(line: LineSyntax, block: SourceBlock): { span: Span; text: string }[] {
  const mark = line.items.find((item) => item.kind === 'sign' && item.text === '?');
  const { span } = line;
  const text = words(block, span);
  const own = mark ? [{ span: mark.span, text }] : [];
  return [...own, ...line.body.flatMap((inner) => openIn(inner, block))];
}

const lineKey = (block: SourceBlock, span: Span) =>
  `${block.file.name}:${block.firstLine + span.line}`;

function waitingByLine(job: Job): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { key, term } of allFigures(job)) {
    const lines = term.gaps.flatMap(({ origin }) =>
      origin ? [lineKey(origin.block, origin.span)] : [],
    );
    for (const line of new Set(lines)) found.set(line, [...(found.get(line) ?? []), key]);
  }
  return found;
}

/** A range as its line has it: where, and the words. */
export function rangePlace({ origin }: RangeShare): Place {
  return origin.block.place(origin.span);
}

/** The whole line of a range, without its comment. */
export function rangeText({ origin, line }: RangeShare): string {
  return words(origin.block, line.syntax.span);
}

/** As it is written, without its columns. */
function words(block: SourceBlock, span: Span): string {
  return block.lines[span.line]!.slice(span.start, span.end).replace(/\s+/g, ' ');
}
