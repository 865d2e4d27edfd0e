/** What commands that write a paper of a job do alike. */
import { languageOf, letterheadOf } from '../../documents/letterhead';
import type { Letterhead, Paper } from '../../documents/paper';
import { wordsFor } from '../../documents/words';
import { agreedJob } from '../../engine/life/agreed';
import type { Given, Option } from '../args';
import { FAILED } from '../exits';
import { asOption, deliverPaper, type Form, formAsked, logoOf } from '../files/as';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { paperJson } from '../json/paper';
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
  /** What --json prints, where that is not the paper as it is. */
  json?(opened: Opened, given: Given): string;
}

export function paperCommand(wanted: Wanted): Command {
  const { name, about, more, options, forms, paper, json } = wanted;
  return {
    name,
    takes: 'FILE',
    about,
    more,
    options: [...options, asOption(forms), JSON_OPTION, OUT, WORKSPACE],
    run(given: Given, io: Io): number {
      const [file] = fileAnd(given, name, 0);
      const asJson = given.has(JSON_OPTION.name);
      const form = asJson ? forms[0]! : formAsked(given, forms);
      const session = sessionOf(given, io);
      const opened = session.open(file);
      if (!opened.job.isJob) {
        io.err(`perpend: ${opened.shown} holds no work: no wall, pier or repair.\n`);
        return FAILED;
      }
      const job = agreedJob(opened.job);
      const words = wordsFor(languageOf(job)).quote;
      const head = letterheadOf(job, words, logoOf(opened, session, io));
      const agreed = { ...opened, job };
      const made = paper(agreed, head, given, form);
      if (asJson)
        deliver(json?.(agreed, given) ?? paperJson(made, opened.shown), given.value(OUT.name), io);
      else deliverPaper(made, form, given, io);
      return codeOf({ opened: [opened], unread: [] });
    },
  };
}
