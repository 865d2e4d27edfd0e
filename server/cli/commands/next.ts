/** perpend next: a new job from a past one. */
import { later, phrase } from '../../../shared/phrase';
import { compared } from '../../engine/compare';
import { agreedJob, fixedPrice } from '../../engine/life/agreed';
import { nextJob, type Wishes } from '../../engine/life/next';
import { settled } from '../../engine/life/next/settled';
import type { Given, Option } from '../args';
import { CLEAN, WrongUse } from '../exits';
import { assertFree, writeNew } from '../files/new';
import { reaching } from '../files/reach';
import type { Io } from '../io';
import { nextDocument } from '../json/made';
import { STDIN } from '../session';
import { nextReport } from '../show/next';
import { type Command, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

export const NEW_FILE: Option = {
  name: '--out',
  value: 'FILE',
  about: later`the new file; one that is there is never written over`,
};

const WISHES: readonly Option[] = [
  { name: '--title', value: 'TEXT', about: later`its title; without it, the old one` },
  { name: '--client', value: 'TEXT', about: later`for whom` },
  { name: '--site', value: 'TEXT', about: later`where` },
  { name: '--ref', value: 'TEXT', about: later`your reference` },
  { name: '--date', value: 'DATE', about: later`the day of the quote, 2026-03-02` },
];

export const nextCommand: Command = {
  name: 'next',
  takes: 'OLD',
  about: later`make a new job from a past one, at today’s rates`,
  more: [
    later`The work is kept as it is written, comments too; options that were accepted are
written into it. Client, site, date, reference, record, who is billed, an agreed
price and discounts are cleared. Money that the job wrote down for itself is
brought up to what the firm’s files say now. Told is what the price moved by.
Notes and titles stay as they are: read them before the job goes to anyone else.`,
  ],
  options: [NEW_FILE, ...WISHES, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'next', 0);
    if (file === STDIN)
      throw new WrongUse(phrase`perpend next needs a file, not what is piped in.`);
    const out = newFileOf(given, 'next');
    const session = sessionOf(given, io);
    const name = session.nameOfNew(out);
    assertFree(name, out);
    const { job, shown } = session.open(file);
    if (!job.isJob) throw new WrongUse(phrase`${shown} is no job: there is nothing to begin from.`);
    const wishes = { ...wishesOf(given), reach: reaching(job.file.name, name) };
    const made = nextJob(settled(job), job.scope.files.slice(1), wishes);
    const found = compared(agreedJob(job), session.draft(out, made.text).job);
    const sent = fixedPrice(job);
    writeNew(name, made.text, out);
    const files = { file: shown, out };
    if (given.has(JSON_OPTION.name)) io.raw(nextDocument(made, found, sent, files));
    else io.out(nextReport(made, found, sent, files, io));
    return CLEAN;
  },
};

/** @throws WrongUse without one */
export function newFileOf(given: Given, command: string): string {
  const out = given.value(NEW_FILE.name);
  if (out === undefined)
    throw new WrongUse(phrase`perpend ${command} needs --out FILE: the new file.`);
  return out;
}

/** @throws WrongUse for what is no date */
function wishesOf(given: Given): Wishes {
  const said = (name: string) => given.value(`--${name}`);
  const date = said('date');
  if (date !== undefined && !isDay(date))
    throw new WrongUse(phrase`${date} is no date. Write it like this: --date 2026-03-02.`);
  return {
    title: said('title'),
    client: said('client'),
    site: said('site'),
    ref: said('ref'),
    date,
  };
}

/** There are days of that form that no year has. */
function isDay(text: string): boolean {
  const at = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  return !Number.isNaN(at) && new Date(at).toISOString().startsWith(text);
}
