/** Lines of a record as they are written into the file. */
import type { Exact } from '../../../shared/exact';
import type { RemarkEdit } from '../findings/remark';
import type { Env } from '../resolve/env';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { agreedJob } from './agreed';
import { recordOf } from './record';
import { fixedFigures, kept } from './was';

/** In plain digits, which every reader of the notation takes: `£1450.00`, `1450.00 CHF`. */
export function moneyText(value: Exact, { money }: Env): string {
  // Three digits after a point could be thousands; a fourth leaves no doubt.
  const digits = money.digits === 3 ? 4 : money.digits;
  const text = value.toFixed(digits);
  return /^[$£¥€¢₠-₿]$/.test(money.sign) ? `${money.sign}${text}` : `${text} ${money.code}`;
}

/** What a quote of a day is of: the job with what was accepted before it; with `same day`, on that day too. */
export function quotedOn(date: string, job: Job, same?: 'same day'): Job {
  const { accepted } = recordOf(job);
  const agreed = accepted.some((each) => each.date < date || (same && each.date === date));
  return agreed ? agreedJob(job) : job;
}

/** A quote that goes out, with what its price is made of. */
export function sentLines(date: string, job: Job): string[] {
  const total = moneyText(kept(job.price.total, job.env), job.env);
  return [`  sent      ${date} ${total}`, ...wasLines(job)];
}

/** The client says yes, to the job with these options among what is taken, and at its price. */
export function acceptedLines(date: string, options: readonly string[], job: Job): string[] {
  const total = moneyText(kept(job.price.total, job.env), job.env);
  return [`  ${['accepted', date, ...options, total].join(' ')}`, ...wasLines(job)];
}

/** What a price is made of, a figure a line. */
function wasLines(job: Job): string[] {
  return fixedFigures(job).map(
    ({ key, term }) => `    was     ${idText(key)} ${valueText(term, job.env)}`,
  );
}

/** Names may hold what no word holds. */
function idText(id: string): string {
  return /^\p{L}[\p{L}\p{N}-]*(\.[\p{L}\p{N}][\p{L}\p{N}-]*)*$/u.test(id) ? id : JSON.stringify(id);
}

function valueText(term: Term, env: Env): string {
  const value = kept(term, env);
  if (term.unit === env.money.code) return moneyText(value, env);
  return `${value.toFixed()} ${term.unit}`;
}

/** A line under the heading of a block. */
export function lineWithin(block: SourceBlock, text: string): RemarkEdit {
  const line = block.read.syntax.heading!.span.line;
  const end = block.lines[line]!.length;
  return { block, span: { line, start: end, end }, text: `\n  ${text}` };
}
