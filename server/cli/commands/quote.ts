/** perpend quote: what the client gets. */

import { later, phrase } from '../../../shared/phrase';
import { headOf } from '../../documents/letterhead';
import { paperJson } from '../../documents/paper/json';
import { quoteAsides, quotePaper, quoteView } from '../../documents/quote';
import { inItsLanguage } from '../../documents/spoken';
import { hasErrors } from '../../documents/used';
import { agreedJob } from '../../engine/life/agreed';
import type { Given } from '../args';
import { FAILED } from '../exits';
import { asOption, deliverPaper, formAsked, logoOf, READ } from '../files/as';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import type { Opened } from '../session';
import { VERSION } from '../version';
import { type Command, codeOf, fileAnd, JSON_OPTION, OUT, sessionOf, WORKSPACE } from './command';

export const quote: Command = {
  name: 'quote',
  takes: 'FILE',
  about: later`write the quote for the client, as HTML, PDF or Markdown`,
  more: [
    later`One file that needs no other, to print or to send. It holds what will be
done, the price and the terms; no costs, no rates and no profit. While the price
is not complete, or the file or one it uses has errors, it says at its top that
it is not a quote, and names no amount.`,
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
    const logo = logoOf(opened, session, io);
    const paper = inItsLanguage([opened.job], (own) =>
      quotePaper(quoteView(agreedJob(own!)), headOf(own!, logo), VERSION),
    );
    if (asJson) deliver(paperJson(paper, opened.shown), given.value(OUT.name), io);
    else deliverPaper(paper, form, given, io);
    for (const line of asides(agreed, quoteView(agreed.job).draft)) io.err(`perpend: ${line}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** An empty file, a firm's file, and a text that is no job at all have each no quote, for a reason of its own. */
function nothingIn({ job, shown }: Opened): string {
  if (job.file.lines.every((line) => !line.trim()))
    return phrase`${shown} is empty: there is nothing to quote for.`;
  const what = phrase`${shown} holds no work to quote for: no wall, pier or repair.`;
  return hasErrors(job) ? phrase`${what} It has errors: perpend check ${shown}` : what;
}

/** What the firm should know before it sends the page, and the client is not told. */
function asides({ job, shown }: Opened, draft: string | undefined): string[] {
  const not = draft ? [phrase`NOT A QUOTE yet. ${draft} See: perpend check ${shown}`] : [];
  return [...not, ...quoteAsides(job, draft)];
}
