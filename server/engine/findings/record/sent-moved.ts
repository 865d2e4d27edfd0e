/** The price that the client holds, and the job comes to another. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { type Move, type Moved, movedSince } from '../../life/moved';
import { lineWithin, moneyText, quotedOn, sentLines } from '../../life/write';
import type { Env } from '../../resolve/env';
import { showTerm, showValue } from '../../views/show';
import type { Job } from '../../workspace/job';
import { type Remark, type RemarkEdit, type RemarkWay, rewrite } from '../remark';

const MOST_SHOWN = 4;

export function sentMoved(job: Job): Remark[] {
  const moved = movedSince(job);
  if (!moved) return [];
  const { entry, how, now, by } = moved;
  const { env } = job;
  const more = by.value.isNegative() ? phrase`less` : phrase`more`;
  const gap = showValue(by.value.abs(), by.unit, env);
  const did = how === 'sent' ? phrase`The quote went out at` : phrase`The client accepted`;
  const message = phrase`${did} ${showTerm(entry.amount, env)} on ${entry.date}, and the job now comes to ${showTerm(now, env)}: ${gap} ${more}. ${whatMoved(moved, env)}`;
  return [
    {
      code: 'sent-moved',
      severity: 'warning',
      origin: entry.line.at('money'),
      message,
      ways: () => waysOf(moved, job),
    },
  ];
}

function whatMoved({ parts, entry }: Moved, env: Env): string {
  if (!entry.was.length)
    return phrase`What has moved is not known, since the line has no “was” lines under it: perpend record writes them.`;
  if (!parts.length) return phrase`None of the figures that were kept with it has moved.`;
  const more = parts.length - MOST_SHOWN;
  const shown = parts.slice(0, MOST_SHOWN).map((move) => told(move, env));
  return phrase`What moved: ${shown.join('; ')}${more > 0 ? phrase`; and ${more} more` : ''}.`;
}

function told({ id, label, was, now }: Move, env: Env): string {
  const name = label === id ? id : `${label} (${id})`;
  const [then, today] = [was, now].map((term) => (term ? showTerm(term, env) : phrase`nothing`));
  return phrase`${name} ${then}, now ${today}`;
}

function waysOf(moved: Moved, job: Job): RemarkWay[] {
  return [...sentAgain(moved, job), ...asAgreed(moved, job)];
}

/** On the day of the quote, when that is a later one: the engine has no clock. */
function sentAgain({ how, entry }: Moved, job: Job): RemarkWay[] {
  const date = job.book.setting('job', 'date');
  const day = date?.line.values.date;
  if (how !== 'sent' || day?.kind !== 'date' || day.text <= entry.date) return [];
  const { block, line } = entry.line;
  const last = Math.max(line.syntax.span.line, ...line.syntax.body.map((l) => l.span.line));
  const quoted = quotedOn(day.text, job);
  const title = phrase`Record it as sent again on ${day.text} at ${showTerm(quoted.price.total, job.env)}`;
  return [{ title, edits: [after(block, last, sentLines(day.text, quoted))] }];
}

function after(block: RemarkEdit['block'], line: number, texts: readonly string[]): RemarkEdit {
  const end = block.lines[line]!.length;
  return { block, span: { line, start: end, end }, text: texts.map((t) => `\n${t}`).join('') };
}

/** What the client holds is what is paid: the job is worked backwards from it. */
function asAgreed({ entry, job: priced }: Moved, job: Job): RemarkWay[] {
  const taxed = !priced.price.tax.value.isZero();
  const said = `agreed ${moneyText(exact(entry.amount.value), job.env)}${taxed ? ' with tax' : ''}`;
  const title = phrase`Keep to the price: ${said}`;
  const own = priced.price.agreed?.line;
  if (own?.block.file.name === job.file.name)
    return [{ title, edits: [rewrite(own.origin, said)] }];
  const block = job.file.blocks.find((b) => b.kind === 'price');
  if (block) return [{ title, edits: [lineWithin(block, said)] }];
  const [record] = job.book.blocksOf('record');
  const head = record?.read.syntax.heading?.span.line;
  if (!record || head === undefined) return [];
  const span = { line: head, start: 0, end: 0 };
  return [{ title, edits: [{ block: record, span, text: `price\n  ${said}\n\n` }] }];
}
