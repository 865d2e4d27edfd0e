/** One run: the words of the command line in, an exit code out. */
import { phrase } from '../../shared/phrase';
import { parseArgs } from './args';
import { buying } from './commands/buying';
import { changes } from './commands/changes';
import { check } from './commands/check';
import type { Command } from './commands/command';
import { compare } from './commands/compare';
import { cuts } from './commands/cuts';
import { day } from './commands/day';
import { draw } from './commands/draw';
import { formatCommand } from './commands/format';
import { invoice } from './commands/invoice';
import { jobsCommand } from './commands/jobs';
import { matchCommand } from './commands/match';
import { measure } from './commands/measure';
import { newCommand } from './commands/new';
import { nextCommand } from './commands/next';
import { price } from './commands/price';
import { quote } from './commands/quote';
import { recordCommand } from './commands/record';
import { resultCommand } from './commands/result';
import { schemaCommand } from './commands/schema';
import { shareCommand } from './commands/share';
import { site } from './commands/site';
import { takeCommand } from './commands/take';
import { why } from './commands/why';
import { CLEAN, FAILED, FileTrouble, WrongUse } from './exits';
import { helpFor, helpForAll } from './help';
import type { Io } from './io';
import { near } from './near';
import { helpPage } from './pages';
import { VERSION } from './version';

/** In the order that help lists them. */
export const COMMANDS: readonly Command[] = [
  price,
  check,
  measure,
  matchCommand,
  why,
  formatCommand,
  cuts,
  day,
  draw,
  quote,
  invoice,
  buying,
  site,
  changes,
  recordCommand,
  resultCommand,
  compare,
  newCommand,
  nextCommand,
  shareCommand,
  takeCommand,
  jobsCommand,
  schemaCommand,
];

/** Never throws: whatever the files hold, there is an exit code and a sentence. */
export function run(args: readonly string[], io: Io): number {
  try {
    return dispatch(args, io);
  } catch (error) {
    io.err(`perpend: ${said(error)}\n`);
    return FAILED;
  }
}

function said(error: unknown): string {
  if (error instanceof WrongUse) return phrase`${error.message} See: perpend --help`;
  if (error instanceof FileTrouble) return error.message;
  const what = error instanceof Error ? error.message : String(error);
  return phrase`A fault of the program, not of your file: ${what}`;
}

function dispatch(args: readonly string[], io: Io): number {
  const [first, ...rest] = args;
  if (first === '--version') return print(`perpend ${VERSION}`, io);
  if (first === undefined) {
    io.err(`${helpForAll(COMMANDS)}\n`);
    return FAILED;
  }
  if (['--help', '-h', 'help'].includes(first)) return help(rest[0], io);
  const command = commandNamed(first);
  const before = rest.indexOf('--');
  const options = before < 0 ? rest : rest.slice(0, before);
  if (options.includes('--help') || options.includes('-h')) return print(helpFor(command), io);
  return command.run(parseArgs(rest, command.options), io);
}

function help(name: string | undefined, io: Io): number {
  if (name === undefined) return print(helpForAll(COMMANDS), io);
  const isCommand = COMMANDS.some((command) => command.name === name);
  const page = isCommand ? undefined : helpPage(name);
  return print(page ?? helpFor(commandNamed(name)), io);
}

function print(text: string, io: Io): number {
  io.out(`${text}\n`);
  return CLEAN;
}

function commandNamed(name: string): Command {
  const found = COMMANDS.find((command) => command.name === name);
  if (found) return found;
  if (/\.perp$/i.test(name))
    throw new WrongUse(
      phrase`${name} is a file, and no command. To price it: perpend price ${name}.`,
    );
  const [meant] = near(
    name,
    COMMANDS.map((command) => command.name),
  );
  throw new WrongUse(
    phrase`There is no command ${name}.${meant ? phrase` Did you mean ${meant}?` : ''}`,
  );
}
