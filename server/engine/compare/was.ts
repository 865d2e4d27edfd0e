/** What was sent, as the record itself keeps it: figures of that day beside those of now. */

import type { ReadLine } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { kept } from '../life/was';
import { wordOf } from '../resolve/book';
import { LineFacts } from '../resolve/env';
import { allFigures } from '../views/job-view';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { differenceOf, type FigureChange } from './figures';

export interface SinceSent {
  readonly date: string;
  /** The price that was sent, tax in it. */
  readonly price: Term;
  /** How many figures the record keeps; where it keeps none, nothing can be told but the price. */
  readonly figuresKept: number;
  /** Those that are others now. */
  readonly figures: readonly FigureChange[];
  /** The price itself, where it is another. */
  readonly total?: FigureChange;
}

/** Of the last `sent` line; nothing where nothing was sent. */
export function sinceSent(job: Job): SinceSent | undefined {
  const record = job.file.blocks.find((block) => block.kind === 'record');
  const line = record?.read.heading?.body.filter((l) => l.kind.key === 'sent').at(-1);
  if (!record || !line) return undefined;
  const price = new LineFacts(record, line, job.env).term('money', phrase`Price that was sent`);
  const was = line.body.filter((l) => l.kind.key === 'was');
  const now = new Map(allFigures(job).map(({ key, term }) => [key, term]));
  return {
    date: wordOf(line.values.date),
    price,
    figuresKept: was.length,
    figures: was.flatMap((l) => moved(record, l, now, job)),
    total: changeOf('job.price', price, job.price.total, job),
  };
}

function moved(
  record: SourceBlock,
  line: ReadLine,
  now: ReadonlyMap<string, Term>,
  job: Job,
): FigureChange[] {
  const id = wordOf(line.values.figure);
  const is = now.get(id);
  const key = line.values.money ? 'money' : 'value';
  const said = new LineFacts(record, line, job.env).term(key, is?.label ?? id);
  const before = said.unit || !is ? said : { ...said, unit: is.unit };
  const change = changeOf(id, before, is, job);
  return change ? [change] : [];
}

function changeOf(
  id: string,
  before: Term,
  after: Term | undefined,
  job: Job,
): FigureChange | undefined {
  // The record keeps so many digits of a figure: what lies below them has not moved.
  const now = after && { ...after, value: kept(after, job.env) };
  const difference = differenceOf(before, now);
  if (difference?.isZero()) return undefined;
  const money = before.unit === job.env.money.code;
  return { id, label: (after ?? before).label, before, after, difference, money };
}
