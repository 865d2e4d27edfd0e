/** perpend new: a job from a template. */
import { later, phrase } from '../../../shared/phrase';
import { jobFrom } from '../../engine/life/template/final';
import type { Given, Option } from '../args';
import { CLEAN, WrongUse } from '../exits';
import { assertFree, writeNew } from '../files/new';
import type { Io } from '../io';
import { newDocument, templatesDocument } from '../json/new';
import { filled } from '../new/answers';
import { judgeIn } from '../new/judge';
import { standing, templateNamed } from '../new/template';
import { STDIN } from '../session';
import { newReport, templatesReport } from '../show/new';
import { type Command, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';
import { NEW_FILE, newFileOf } from './next';

const SET: Option = {
  name: '--set',
  value: 'ANSWER',
  about: later`an answer, as "wall length=7.4 m"; may be given again`,
  many: true,
};
const LIST: Option = {
  name: '--list',
  about: later`list the templates that ship, and what they ask`,
};

export const newCommand: Command = {
  name: 'new',
  takes: 'TEMPLATE',
  about: later`make a job from a template, by a few questions`,
  more: [
    later`TEMPLATE is one that ships (--list), or a file with a heading like
template "Garden wall" and lines like ask north length "How long is the wall?".
At a terminal what --set does not give is asked for, and an empty answer keeps
what the template says; elsewhere that holds, and is told. Where the template
uses no file, the nearest firm.perp in or above the folder of the new file is.`,
  ],
  options: [NEW_FILE, SET, LIST, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    if (given.has(LIST.name)) return list(given, io);
    if (!given.words.length)
      throw new WrongUse(phrase`perpend new needs a template. To list them: perpend new --list`);
    const [named] = fileAnd(given, 'new', 0);
    if (named === STDIN)
      throw new WrongUse(phrase`perpend new needs a template, not what is piped in.`);
    const out = newFileOf(given, 'new');
    const session = sessionOf(given, io);
    const name = session.nameOfNew(out);
    assertFree(name, out);
    const template = templateNamed(named, session);
    const { text, firm } = standing(template, name, session);
    const done = filled(text, given.values(SET.name), judgeIn(session, out), io);
    const fresh = jobFrom(done.text);
    const { job } = session.draft(out, fresh);
    writeNew(name, fresh, out);
    const made = { template: named, out, firm, answers: done.answers, job };
    if (given.has(JSON_OPTION.name)) io.raw(newDocument(made));
    else io.out(newReport(made, io));
    return CLEAN;
  },
};

function list(given: Given, io: Io): number {
  if (given.words.length) throw new WrongUse(phrase`perpend new --list takes no template.`);
  if (given.has(JSON_OPTION.name)) io.raw(templatesDocument());
  else io.out(templatesReport(io));
  return CLEAN;
}
