/** perpend take: what a partner’s file says otherwise, into ours. */

import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import { taken } from '../../engine/share/take';
import type { Given, Option } from '../args';
import { CLEAN, WrongUse } from '../exits';
import { readText } from '../files/read';
import { writeWhole } from '../files/write';
import type { Io } from '../io';
import { takeDocument } from '../json/take';
import { near } from '../near';
import { STDIN } from '../session';
import { takeReport } from '../show/take';
import { type Command, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

const FROM: Option = { name: '--from', value: 'FILE', about: later`the file that came back` };
const BLOCK: Option = {
  name: '--block',
  value: 'NAME',
  about: later`take this block, by its name; may be given again`,
  many: true,
};
const ALL: Option = { name: '--all', about: later`take every block` };
const RATES: Option = {
  name: '--rates',
  about: later`their prices, labour, outputs, travel and costs too`,
};
const CHECK: Option = { name: '--check', about: later`print what would be taken; write nothing` };

export const takeCommand: Command = {
  name: 'take',
  takes: 'OURS',
  about: later`take into a job what a partner’s copy says otherwise`,
  more: [
    later`Lines that theirs has and ours lacks are put in, and those that say something
else are replaced; our comments, and lines that theirs does not have, stay and
are told. Prices and rates are taken only with --rates; the job’s own block, the
firm, the price, options and the record never. Titles and notes of which a part
was taken out before they went out are not taken. See first what changed:
perpend compare OURS THEIRS.`,
  ],
  options: [FROM, BLOCK, ALL, RATES, CHECK, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'take', 0);
    const from = given.value(FROM.name);
    if (from === undefined) throw new WrongUse(phrase`perpend take needs --from FILE: theirs.`);
    if (file === STDIN)
      throw new WrongUse(phrase`What is piped in cannot be written back: give a file.`);
    const names = given.values(BLOCK.name);
    if (!names.length !== given.has(ALL.name))
      throw new WrongUse(phrase`Say what to take: --block NAME, or --all.`);
    const session = sessionOf(given, io);
    const [ours, theirs] = [session.open(file), session.open(from)];
    const text = readText(path.resolve(io.cwd, file), ours.shown);
    const used = ours.job.scope.files.slice(1).flatMap((each) => each.blocks);
    const wishes = {
      names: names.length ? new Set(names) : undefined,
      rates: given.has(RATES.name),
    };
    const found = taken(text, theirs.job.file, used, wishes);
    for (const name of names) assertOffered(name, found.offered, theirs.shown);
    const check = given.has(CHECK.name);
    if (!check && found.edits.length)
      writeWhole(path.resolve(io.cwd, file), found.text, ours.shown);
    const told = { ...found, file: ours.shown, from: theirs.shown, written: !check };
    if (given.has(JSON_OPTION.name)) io.raw(takeDocument(told));
    else io.out(takeReport(told, io));
    return CLEAN;
  },
};

function assertOffered(name: string, offered: readonly string[], shown: string): void {
  if (offered.includes(name)) return;
  const [meant] = near(name, offered);
  const hint = meant
    ? phrase`Did you mean ${meant}?`
    : phrase`There is ${offered.join(', ') || phrase`nothing`}.`;
  throw new WrongUse(phrase`${shown} has no block ${name} that could be taken. ${hint}`);
}
