/** perpend quote: what the client gets. */

import { chargesUnregistered, letterheadOf } from '../../documents/letterhead';
import { quotePaper, quoteView } from '../../documents/quote';
import { wordsFor } from '../../documents/words';
import { agreedJob } from '../../engine/life/agreed';
import { inJobsAlike } from '../../engine/views/alike';
import { showTerm } from '../../engine/views/show';
import type { Given } from '../args';
import { FAILED } from '../exits';
import { asOption, deliverPaper, formAsked, logoOf, READ } from '../files/as';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { paperJson } from '../json/paper';
import { priceRange } from '../range';
import type { Opened } from '../session';
import { VERSION } from '../version';
import {
  type Command,
  codeOf,
  fileAnd,
  hasErrors,
  JSON_OPTION,
  OUT,
  sessionOf,
  WORKSPACE,
} from './command';

export const quote: Command = {
  name: 'quote',
  takes: 'FILE',
  about: 'write the quote for the client, as HTML, PDF or Markdown',
  more: [
    'One file that needs no other, to print or to send. It holds what will be',
    'done, the price and the terms; no costs, no rates and no profit. While the price',
    'is not complete, or the file or one it uses has errors, it says at its top that',
    'it is not a quote, and names no amount.',
  ],
  options: [asOption(READ), JSON_OPTION, OUT, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'quote', 0);
    const asJson = given.has(JSON_OPTION.name);
    const form = asJson ? READ[0]! : formAsked(given, READ);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    if (!opened.job.isJob) {
      io.err(`perpend: ${nothingIn(opened)}\n`);
      return FAILED;
    }
    const agreed = { ...opened, job: agreedJob(opened.job) };
    const view = quoteView(agreed.job);
    const words = wordsFor(view.lang).quote;
    const head = letterheadOf(opened.job, words, logoOf(opened, session, io));
    const paper = quotePaper(view, head, VERSION);
    if (asJson) deliver(paperJson(paper, opened.shown), given.value(OUT.name), io);
    else deliverPaper(paper, form, given, io);
    for (const line of asides(agreed, view.draft)) io.err(`perpend: ${line}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** For the firm, beside a paper that charges tax. */
export const NO_TAX_NUMBER =
  'The firm’s block gives no tax-number, and tax is charged. Who is not registered writes in the job: tax none "why".';

/** An empty file, a firm's file, and a text that is no job at all have each no quote, for a reason of its own. */
function nothingIn({ job, shown }: Opened): string {
  if (job.file.lines.every((line) => !line.trim()))
    return `${shown} is empty: there is nothing to quote for.`;
  const what = `${shown} holds no work to quote for: no wall, pier or repair.`;
  return hasErrors(job) ? `${what} It has errors: perpend check ${shown}` : what;
}

/** What the firm should know before it sends the page, and the client is not told. */
function asides({ job, shown }: Opened, draft: string | undefined): string[] {
  const range = priceRange(job);
  const [low, high] = range ? [range.low, range.high].map((end) => showTerm(end, job.env)) : [];
  return [
    draft ? `NOT A QUOTE yet. ${draft} See: perpend check ${shown}` : '',
    range && !draft
      ? `The job has ranges; ${inJobsAlike(job.env)} the price is ${low} to ${high}.`
      : '',
    chargesUnregistered(job) ? NO_TAX_NUMBER : '',
    job.book.blocksOf('firm').length ? '' : 'No firm block says whose quote this is.',
  ].filter(Boolean);
}
