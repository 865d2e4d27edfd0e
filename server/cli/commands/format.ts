/** perpend format: one layout for every file, its meaning untouched. */

import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import type { Given } from '../args';
import { CLEAN, ERRORS, FAILED, FileTrouble, WrongUse, worst } from '../exits';
import { readText } from '../files/read';
import { writeWhole } from '../files/write';
import { formatText } from '../format-text';
import type { Io } from '../io';
import { STDIN } from '../session';
import { type Command, filesOf } from './command';

const WRITE = { name: '--write', about: later`put the files in order where they stand` };
const CHECK = {
  name: '--check',
  about: later`change nothing; exit with 1 when a file would change`,
};

export const formatCommand: Command = {
  name: 'format',
  takes: 'FILE...',
  about: later`print a file in one layout, or put files in it`,
  more: [
    later`Indents, columns and empty lines are made one; words, numbers, comments and
their order stay. A line that cannot be read only moves to its depth. A file is
written whole or not at all, and keeps its mode.`,
  ],
  options: [WRITE, CHECK],
  run(given: Given, io: Io): number {
    const files = filesOf(given, 'format');
    const how = mode(given, files);
    return worst(files.map((file) => guarded(file, how, io)));
  },
};

type Mode = 'print' | 'write' | 'check';

function mode(given: Given, files: readonly string[]): Mode {
  const [write, check] = [given.has(WRITE.name), given.has(CHECK.name)];
  if (write && check) throw new WrongUse(phrase`Give --write or --check, not both.`);
  if (write && files.includes(STDIN))
    throw new WrongUse(phrase`What is piped in cannot be written back: leave --write out.`);
  if (!write && !check && files.length > 1)
    throw new WrongUse(phrase`With more than one file give --write or --check.`);
  return write ? 'write' : check ? 'check' : 'print';
}

/** One file that cannot be read or written does not keep the others from their turn. */
function guarded(file: string, how: Mode, io: Io): number {
  try {
    return one(file, how, io);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    io.err(`perpend: ${error.message}\n`);
    return FAILED;
  }
}

function one(file: string, how: Mode, io: Io): number {
  const name = path.resolve(io.cwd, file);
  const shown = file === STDIN ? '<stdin>' : file;
  const text = readText(file === STDIN ? 0 : name, shown);
  const formatted = formatText(text);
  if (formatted === undefined)
    throw new FileTrouble(phrase`${shown} is too large to be put in order.`);
  if (how === 'print') io.raw(formatted);
  if (how === 'print' || formatted === text) return CLEAN;
  if (how === 'write') writeWhole(name, formatted, shown);
  io.out(how === 'write' ? phrase`${shown}: put in order\n` : phrase`${shown}: would change\n`);
  return how === 'write' ? CLEAN : ERRORS;
}
