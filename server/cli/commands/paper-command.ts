/** What commands that write a paper of a job do alike. */
import { languageOf, letterheadOf } from '../../documents/letterhead';
import type { Letterhead, Paper } from '../../documents/paper';
import { wordsFor } from '../../documents/words';
import { agreedJob } from '../../engine/life/agreed';
import type { Given, Option } from '../args';
import { FAILED } from '../exits';
import { asOption, deliverPaper, type Form, formAsked, logoOf } from '../files/as';
import type { Io } from '../io';
import type { Opened } from '../session';
import { type Command, codeOf, fileAnd, OUT, sessionOf, WORKSPACE } from './command';

interface Wanted {
  readonly name: string;
  readonly about: string;
  readonly more: readonly string[];
  readonly options: readonly Option[];
  /** The first is what is written where nobody says. */
  readonly forms: readonly Form[];
  /** Of the job with the options that were accepted. */
  paper(opened: Opened, head: Letterhead | undefined, given: Given): Paper;
}

export function paperCommand({ name, about, more, options, forms, paper }: Wanted): Command {
  return {
    name,
    takes: 'FILE',
    about,
    more,
    options: [...options, asOption(forms), OUT, WORKSPACE],
    run(given: Given, io: Io): number {
      const [file] = fileAnd(given, name, 0);
      const form = formAsked(given, forms);
      const session = sessionOf(given, io);
      const opened = session.open(file);
      if (!opened.job.isJob) {
        io.err(`perpend: ${opened.shown} holds no work: no wall, pier or repair.\n`);
        return FAILED;
      }
      const job = agreedJob(opened.job);
      const words = wordsFor(languageOf(job)).quote;
      const head = letterheadOf(job, words, logoOf(opened, session, io));
      deliverPaper(paper({ ...opened, job }, head, given), form, given, io);
      return codeOf({ opened: [opened], unread: [] });
    },
  };
}
