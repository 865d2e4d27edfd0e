/** What commands that write a paper of a job do alike. */
import { phrase } from '../../../shared/phrase';
import { headOf } from '../../documents/letterhead';
import type { Letterhead, Paper } from '../../documents/paper';
import { paperJson } from '../../documents/paper/json';
import { inItsLanguage } from '../../documents/spoken';
import { agreedJob } from '../../engine/life/agreed';
import type { Given, Option } from '../args';
import { FAILED } from '../exits';
import { asOption, deliverPaper, type Form, formAsked, logoOf } from '../files/as';
import { deliver } from '../files/deliver';
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
        io.err(phrase`perpend: ${opened.shown} holds no work: no wall, pier or repair.\n`);
        return FAILED;
      }
      const job = agreedJob(opened.job);
      const agreed = { ...opened, job };
      const logo = logoOf(opened, session, io);
      const made = inItsLanguage([opened.job], (own) => {
        const accepted = agreedJob(own!);
        return paper({ ...opened, job: accepted }, headOf(accepted, logo), given, form);
      });
      if (asJson)
        deliver(json?.(agreed, given) ?? paperJson(made, opened.shown), given.value(OUT.name), io);
      else deliverPaper(made, form, given, io);
      return codeOf({ opened: [opened], unread: [] });
    },
  };
}
