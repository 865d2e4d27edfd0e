/** perpend changes: the note to the client of what has changed since the quote. */
import { later, phrase } from '../../../shared/phrase';
import { leftBlank } from '../../documents/blanks';
import { changesPaper } from '../../documents/changes/paper';
import { headOf } from '../../documents/letterhead';
import { paperJson } from '../../documents/paper/json';
import { inItsLanguage } from '../../documents/spoken';
import { compared } from '../../engine/compare';
import { agreedJob } from '../../engine/life/agreed';
import type { Given } from '../args';
import { sidesOf } from '../compare/sides';
import { asOption, deliverPaper, formAsked, logoOf, READ } from '../files/as';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { VERSION } from '../version';
import { type Command, codeOf, JSON_OPTION, OUT, sessionOf, WORKSPACE } from './command';
import { SINCE } from './compare';

export const changes: Command = {
  name: 'changes',
  takes: 'FILE',
  about: later`tell the client what changed since the quote, and why`,
  more: [
    later`Beside what was sent last, as git holds it; or beside --since; or of two files.
Where no revision of git holds what was sent, only the price is put beside the
other. Why it changed is what the record says was “found” since. It holds the
work in plain words and the price; no costs, no rates and no profit.`,
  ],
  options: [SINCE, asOption(READ), JSON_OPTION, OUT, WORKSPACE],
  run(given: Given, io: Io): number {
    const asJson = given.has(JSON_OPTION.name);
    const form = asJson ? READ[0]! : formAsked(given, READ);
    const session = sessionOf(given, io);
    const two = sidesOf(given, session, 'sent');
    const job = agreedJob('kept' in two ? two.kept.job : two.after);
    if ('kept' in two) io.err(phrase`perpend: ${two.why} Only the price can be compared.\n`);
    const opened = { job, shown: session.shown(job.file.name) };
    const logo = logoOf(opened, session, io);
    const paper = inItsLanguage(
      'kept' in two ? [two.kept.job] : [two.after, two.before],
      (...own) => {
        const [after, before] = own.map(agreedJob);
        const between = before && compared(before, after!);
        return changesPaper(after!, between, headOf(after!, logo), VERSION);
      },
    );
    if (asJson) deliver(paperJson(paper, opened.shown), given.value(OUT.name), io);
    else deliverPaper(paper, form, given, io);
    for (const line of leftBlank(job)) io.err(`perpend: ${line}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};
