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
import { type Command, codeOf, fileAnd, JSON_OPTION, OUT, sessionOf, WORKSPACE } from './command';

interface Wanted {
  readonly name: string;
  readonly about: string;
  readonly more: readonly string[];
  readonly options: readonly Option[];
  /** The first is what is written where nobody says. */
  readonly forms: readonly Form[];
  /** Of the job with the options that were accepted. */
  paper(opened: Opened, head: Letterhead | undefined, given: Given, form: Form): Paper;
  /** What --json prints, where it does. */
  json?(opened: Opened, given: Given): string;
}

export function paperCommand(wanted: Wanted): Command {
  const { name, about, more, options, forms, paper, json } = wanted;
  return {
    name,
    takes: 'FILE',
    about,
    more,
    options: [...options, asOption(forms), ...(json ? [JSON_OPTION] : []), OUT, WORKSPACE],
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
      if (json && given.has(JSON_OPTION.name)) {
        io.raw(json({ ...opened, job }, given));
        return codeOf({ opened: [opened], unread: [] });
      }
      const words = wordsFor(languageOf(job)).quote;
      const head = letterheadOf(job, words, logoOf(opened, session, io));
      deliverPaper(paper({ ...opened, job }, head, given, form), form, given, io);
      return codeOf({ opened: [opened], unread: [] });
    },
  };
}
