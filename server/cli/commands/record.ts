/** perpend record: writes what has happened into the job, a line for it. */
import path from 'node:path';
import { agreedJob, fixedPrice, heldPrice } from '../../engine/life/agreed';
import { RECORDED, type Recorded, withRecorded } from '../../engine/life/recorded';
import { acceptedLines, quotedOn, sentLines } from '../../engine/life/write';
import { showTerm, showValue } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import type { Given, Option } from '../args';
import { CLEAN, WrongUse } from '../exits';
import { readText } from '../files/read';
import { writeWhole } from '../files/write';
import type { Io } from '../io';
import { near } from '../near';
import { type Opened, STDIN } from '../session';
import { dayGiven } from '../today';
import { VERSION } from '../version';
import { type Command, filesOf, JSON_OPTION, sessionOf, WORKSPACE } from './command';

const DATE: Option = {
  name: '--date',
  value: 'DATE',
  about: 'the day it happened, 2026-03-02; without it, today',
};

const KINDS = RECORDED;

export const recordCommand: Command = {
  name: 'record',
  takes: 'FILE WHAT',
  about: 'write what has happened into a job: sent, worked, paid',
  more: [
    'WHAT is a line of the record as it would be written, without its date:',
    '',
    '  perpend record job.perp sent',
    '  perpend record job.perp accepted caps',
    '  perpend record job.perp worked 2 people 7.5 h facework 410 bricks',
    '  perpend record job.perp spent £212.40 "sand and cement" for materials',
    '  perpend record job.perp invoiced £362.50 as 26-041-1 "Deposit on order"',
    '  perpend record job.perp paid £362.50',
    '',
    'sent and accepted take the price that the job comes to and keep what it is made',
    'of, so that what has moved can be told later. The line is put in at the end of',
    'the record; nothing else of the file changes. It is written whole or not at all.',
  ],
  options: [DATE, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, kind, ...words] = filesOf(given, 'record');
    if (file === STDIN) throw new WrongUse('What is piped in cannot be written back: give a file.');
    const opened = sessionOf(given, io).open(file!);
    const name = path.resolve(io.cwd, file!);
    const text = readText(name, opened.shown);
    const what = knownKind(kind);
    const recorded = readable(
      linesFor(what, words, dayGiven(given.value(DATE.name)), opened),
      text,
    );
    writeWhole(name, recorded.text, opened.shown);
    if (what === 'accepted') io.err(otherThanHeld(words, opened));
    if (given.has(JSON_OPTION.name)) io.raw(documentOf(recorded, opened));
    else io.out(`${opened.shown}:${recorded.line}: ${recorded.lines[0]}${more(recorded)}\n`);
    return CLEAN;
  },
};

function knownKind(kind: string | undefined): string {
  if (kind !== undefined && KINDS.includes(kind)) return kind;
  const [meant] = kind === undefined ? [] : near(kind, KINDS);
  const hint = meant ? `Did you mean ${meant}?` : `It can be ${KINDS.join(', ')}.`;
  throw new WrongUse(
    kind === undefined
      ? `What has happened? ${hint}`
      : `Nothing of a record is called ${kind}. ${hint}`,
  );
}

/** Ways to read the words: what has a space in it is a text, as the shell takes the quotation marks off; else as it stands. */
function linesFor(
  kind: string,
  words: readonly string[],
  date: string,
  { job, shown }: Opened,
): readonly (readonly string[])[] {
  if (kind === 'sent' && !words.length) {
    const quoted = quotedOn(date, job, 'same day');
    return [sentLines(date, complete(quoted, shown))];
  }
  if (kind === 'accepted' && !words.some((word) => /\d/.test(word) && !isOption(word, job)))
    return [accepted(words, date, job, shown)];
  const line = (texts: readonly string[]) => [`  ${[kind, date, ...texts].join(' ')}`];
  // A title of one word has lost its marks to the shell, and looks like any other word.
  const titled = words.map((word, i) => (i === words.length - 1 ? asText(word) : quotedText(word)));
  return [line(words.map(quotedText)), line(words), line(titled)];
}

function isOption(word: string, job: Job): boolean {
  return namesOf(word).every((name) => job.options.named(name));
}

function namesOf(word: string): string[] {
  return word.split(',').filter(Boolean);
}

function quotedText(word: string): string {
  return /\s/.test(word) && !/^["“]/.test(word) ? asText(word) : word;
}

function asText(word: string): string {
  return `"${word.replace(/["\\]/g, '\\$&')}"`;
}

/** At the price of the job with them and with what was accepted before. */
function accepted(words: readonly string[], date: string, job: Job, shown: string): string[] {
  const names = words.flatMap(namesOf);
  const missing = names.find((name) => !job.options.named(name));
  if (missing !== undefined) {
    const known = job.options.all.map((option) => option.name).join(', ');
    throw new WrongUse(`${shown} has no option ${missing}.${known ? ` It has ${known}.` : ''}`);
  }
  const agreed = job.options.with([...agreedJob(job).taken, ...names])!;
  return acceptedLines(date, names, complete(agreed, shown));
}

/** An acceptance at another price than the client holds is written as it was asked for, and never in silence. */
function otherThanHeld(words: readonly string[], { job, shown }: Opened): string {
  const names = words.flatMap(namesOf);
  if (!fixedPrice(job) || !names.every((name) => job.options.named(name))) return '';
  const before = agreedJob(job);
  const now = job.options.with([...before.taken, ...names])!.price.total;
  const holds = heldPrice(job).value.add(now.value).sub(before.price.total.value);
  if (holds.eq(now.value)) return '';
  const text = showValue(holds, now.unit, job.env);
  return `perpend: The client holds a price of ${text}; it is written at ${showTerm(now, job.env)}, what ${shown} comes to today. Where the old price holds, put it in its line.\n`;
}

/** @throws WrongUse when a price could not be fixed */
function complete(job: Job, shown: string): Job {
  if (!job.isJob) throw new WrongUse(`${shown} holds no work, and so has no price.`);
  if (job.price.total.gaps.length)
    throw new WrongUse(
      `The price of ${shown} is not complete, so it cannot be kept. Give the amount, or see: perpend check ${shown}`,
    );
  return job;
}

/** @throws WrongUse when it cannot be read in any way */
function readable(ways: readonly (readonly string[])[], text: string): Recorded {
  const tried = ways.map((lines) => withRecorded(text, lines));
  const good = tried.find(({ fault }) => !fault);
  if (good) return good;
  const [{ fault, lines }] = tried as [Recorded];
  throw new WrongUse(`“${lines[0]}” cannot be read: ${fault!.message}`);
}

function more({ lines }: Recorded): string {
  const count = lines.length - 1;
  return count ? `, and ${count} figures that it is made of` : '';
}

function documentOf({ line, lines }: Recorded, { shown }: Opened): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-record',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    line,
    lines,
  };
  return `${JSON.stringify(document)}\n`;
}
