/** perpend record: writes what has happened into the job, a line for it. */

import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import { RECORDED, type Recorded } from '../../engine/life/recorded';
import { recording } from '../../engine/life/recording';
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
  about: later`the day it happened, 2026-03-02; without it, today`,
};

const KINDS = RECORDED;

export const recordCommand: Command = {
  name: 'record',
  takes: 'FILE WHAT',
  about: later`write what has happened into a job: sent, worked, paid`,
  more: [
    later`WHAT is a line of the record as it would be written, without its date:

  perpend record job.perp sent
  perpend record job.perp accepted caps
  perpend record job.perp worked 2 people 7.5 h facework 410 bricks
  perpend record job.perp spent £212.40 "sand and cement" for materials
  perpend record job.perp invoiced £362.50 as 26-041-1 "Deposit on order"
  perpend record job.perp paid £362.50

sent and accepted take the price that the job comes to and keep what it is made
of, so that what has moved can be told later. The line is put in at the end of
the record; nothing else of the file changes. It is written whole or not at all.`,
  ],
  options: [DATE, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, kind, ...words] = filesOf(given, 'record');
    if (file === STDIN)
      throw new WrongUse(phrase`What is piped in cannot be written back: give a file.`);
    const opened = sessionOf(given, io).open(file!);
    const name = path.resolve(io.cwd, file!);
    const text = readText(name, opened.shown);
    const what = knownKind(kind);
    const called = { shown: opened.shown, check: `perpend check ${opened.shown}` };
    const happened = { what, words, date: dayGiven(given.value(DATE.name)) };
    const recorded = recording(opened.job, text, happened, called);
    if (typeof recorded === 'string') throw new WrongUse(recorded);
    writeWhole(name, recorded.text, opened.shown);
    for (const aside of recorded.asides) io.err(`perpend: ${aside}\n`);
    if (given.has(JSON_OPTION.name)) io.raw(documentOf(recorded, opened));
    else io.out(`${opened.shown}:${recorded.line}: ${recorded.lines[0]}${more(recorded)}\n`);
    return CLEAN;
  },
};

function knownKind(kind: string | undefined): string {
  if (kind !== undefined && KINDS.includes(kind)) return kind;
  const [meant] = kind === undefined ? [] : near(kind, KINDS);
  const hint = meant ? phrase`Did you mean ${meant}?` : phrase`It can be ${KINDS.join(', ')}.`;
  throw new WrongUse(
    kind === undefined
      ? phrase`What has happened? ${hint}`
      : phrase`Nothing of a record is called ${kind}. ${hint}`,
  );
}

function more({ lines }: Recorded): string {
  const count = lines.length - 1;
  return count ? phrase`, and ${count} figures that it is made of` : '';
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
