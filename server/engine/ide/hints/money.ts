/** Behind lines of money: what they come to in this job. A line that holds in another file is told nothing of here. */
import type { ReadLine } from '../../../../grammar/read/values';
import { phrase } from '../../../../shared/phrase';
import { showTerm } from '../../views/show';
import type { Term } from '../../working/term';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { behind, type MadeHint, shown } from './made';

export function moneyHints(block: SourceBlock, job: Job): MadeHint[] {
  if (!job.isJob || block.file !== job.file) return [];
  const heading = block.read.heading!;
  switch (block.kind) {
    case 'cost':
      return costHint(block, heading, job);
    case 'travel':
      return linesOf(heading, (line) => travelOf(line, job), job);
    case 'price':
      return linesOf(heading, (line) => priceOf(line, block, job), job);
    case 'labour':
      return gangHint(heading, block, job);
    default:
      return [];
  }
}

function linesOf(
  { body }: ReadLine,
  of: (line: ReadLine) => Term | undefined,
  job: Job,
): MadeHint[] {
  return body.flatMap((line): MadeHint[] => {
    const term = of(line);
    return term ? [{ ...behind(line), kind: 'money', parts: [shown(term, job.env)] }] : [];
  });
}

/** What its line says already is not said again: one at £240 is £240. */
function costHint(block: SourceBlock, heading: ReadLine, job: Job): MadeHint[] {
  const counted = job.book.blocksOf('cost').filter((b) => b.read.heading?.values.each);
  const term = figure('others', job)?.args[counted.indexOf(block)];
  const { count, each, per, of } = heading.values;
  const one = count?.kind === 'quantity' && !count.high && count.low.eq(1);
  const plain = one && each?.kind === 'money' && !each.high && !per && !of;
  if (!term || plain) return [];
  return [{ ...behind(heading), kind: 'money', parts: [shown(term, job.env)] }];
}

/** Runs come first, then charges. */
function travelOf(line: ReadLine, job: Job): Term | undefined {
  const runs = job.book.settings('travel', 'run');
  const lines = [...runs, ...job.book.settings('travel', 'charge')];
  const at = lines.findIndex((setting) => setting.line === line);
  return at < 0 ? undefined : figure('travel', job)?.args[at];
}

const OF_LINE: Readonly<Record<string, string>> = {
  contingency: 'contingency',
  overhead: 'overhead',
  profit: 'profit',
  margin: 'profit',
};

function priceOf(line: ReadLine, block: SourceBlock, job: Job): Term | undefined {
  const { discounts, stages, retention, deductions } = job.price;
  const key = line.kind.key;
  const own = Object.hasOwn(OF_LINE, key) ? figure(OF_LINE[key]!, job) : undefined;
  if (own) return comesFrom(own, block, line) ? own : undefined;
  if (key === 'stage') return stages[nth(line, 'stage', job)]?.amount;
  if (key === 'discount') return discounts[nth(line, 'discount', job)]?.amount;
  if (key === 'deducted') return deductions[nth(line, 'deducted', job)]?.amount;
  return key === 'retention' && nth(line, key, job) === 0 ? retention?.amount : undefined;
}

function nth(line: ReadLine, key: string, job: Job): number {
  return job.book.settings('price', key).findIndex((setting) => setting.line === line);
}

function figure(key: string, job: Job): Term | undefined {
  return job.price.figures.find((each) => each.key === key)?.term;
}

/** Whether the line gave it: of two that say the same only one holds. */
function comesFrom(term: Term, block: SourceBlock, line: ReadLine, deep = 6): boolean {
  if (term.origin?.block === block && term.origin.span.line === line.syntax.span.line) return true;
  return deep > 0 && term.args.some((arg) => comesFrom(arg, block, line, deep - 1));
}

/** What an hour of all of them costs. */
function gangHint(heading: ReadLine, block: SourceBlock, job: Job): MadeHint[] {
  const { line } = job.book.setting('labour', 'gang') ?? {};
  if (!line || !heading.body.includes(line) || block.file !== job.file) return [];
  const { rate } = job.price.gang;
  if (rate.gaps.length) return [];
  const text = phrase`${showTerm(rate, job.env)} an hour`;
  return [{ ...behind(line), kind: 'money', parts: [{ text, term: rate }] }];
}
