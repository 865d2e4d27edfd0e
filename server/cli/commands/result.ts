/** perpend result: what became of a job, beside what was reckoned. */
import { later, phrase } from '../../../shared/phrase';
import { headOf } from '../../documents/letterhead';
import { outcomePaper } from '../../documents/outcome/paper';
import { inItsLanguage } from '../../documents/spoken';
import type { Given } from '../args';
import { FAILED } from '../exits';
import { asOption, deliverPaper, formAsked, logoOf, READ } from '../files/as';
import type { Io } from '../io';
import { resultDocument } from '../json/result';
import type { Opened, Session } from '../session';
import { resultReport } from '../show/result';
import { VERSION } from '../version';
import { type Command, codeOf, fileAnd, JSON_OPTION, OUT, sessionOf, WORKSPACE } from './command';

const AS = { ...asOption(READ), about: later`html, pdf or md: a paper for the firm itself` };

export const resultCommand: Command = {
  name: 'result',
  takes: 'FILE',
  about: later`show what became of a job: cost, margin, hours, owed`,
  more: [
    later`From what the record says was worked and spent, beside what was reckoned for the
job as it was accepted. Hours are of one person; each costs what one of the gang
does on average. What is not recorded stands as it was reckoned.

With --as or --out it is a paper, for the firm and nobody else: it holds costs.`,
  ],
  options: [AS, JSON_OPTION, OUT, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'result', 0);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    if (given.has(JSON_OPTION.name)) io.raw(resultDocument(opened));
    else if (given.has(AS.name) || given.has(OUT.name)) return deliver(opened, session, given, io);
    else io.out(`${resultReport(opened, io).join('\n')}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

function deliver(opened: Opened, session: Session, given: Given, io: Io): number {
  const form = formAsked(given, READ);
  const { job, shown } = opened;
  if (!job.isJob) {
    io.err(phrase`perpend: ${shown} holds no work: no wall, pier or repair.\n`);
    return FAILED;
  }
  const logo = logoOf(opened, session, io);
  const paper = inItsLanguage([job], (own) => outcomePaper(own!, headOf(own!, logo), VERSION));
  deliverPaper(paper, form, given, io);
  return codeOf({ opened: [opened], unread: [] });
}
