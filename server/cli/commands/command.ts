/** What every command is, and what several of them do alike. */

import { later, phrase } from '../../../shared/phrase';
import { hasErrors } from '../../documents/used';
import type { Given, Option } from '../args';
import { CLEAN, ERRORS, FAILED, FileTrouble, WrongUse, worst } from '../exits';
import type { Io } from '../io';
import { type Opened, Session, STDIN } from '../session';

export interface Command {
  readonly name: string;
  /** What stands after the name. */
  readonly takes: string;
  /** One line for the list of commands. */
  readonly about: string;
  /** Further lines of its own help. */
  readonly more: readonly string[];
  readonly options: readonly Option[];
  /** @returns the exit code. @throws WrongUse, FileTrouble */
  run(given: Given, io: Io): number;
}

export const WORKSPACE: Option = {
  name: '--workspace',
  value: 'FOLDER',
  about: later`the folder whose files a job may use`,
};
export const JSON_OPTION: Option = {
  name: '--json',
  about: later`print JSON (see: perpend schema)`,
};
export const OUT: Option = {
  name: '--out',
  value: 'PATH',
  about: later`write to this file; without it, print`,
};

/** The files a command was given. @throws WrongUse when there are none, or the piped text twice */
export function filesOf(given: Given, command: string): readonly string[] {
  if (!given.words.length) throw new WrongUse(phrase`perpend ${command} needs a file.`);
  if (given.words.filter((word) => word === STDIN).length > 1)
    throw new WrongUse(phrase`What is piped in can be read only once: give - once.`);
  return given.words;
}

/** Exactly one file, and at most so many words after it. */
export function fileAnd(given: Given, command: string, most: number): [string, ...string[]] {
  const [file, ...rest] = filesOf(given, command);
  if (rest.length > most) throw new WrongUse(phrase`perpend ${command} takes one file at a time.`);
  return [file!, ...rest];
}

export function sessionOf(given: Given, io: Io): Session {
  return new Session(io.cwd, given.value(WORKSPACE.name));
}

/** The files that can be read, each opened; of the others the reason is said, and kept. */
export interface Batch {
  readonly opened: readonly Opened[];
  readonly unread: readonly { readonly file: string; readonly message: string }[];
}

export function openAll(files: readonly string[], session: Session, io: Io): Batch {
  const opened: Opened[] = [];
  const unread: Batch['unread'][number][] = [];
  for (const file of files) {
    try {
      opened.push(session.open(file));
    } catch (error) {
      if (!(error instanceof FileTrouble)) throw error;
      io.err(`perpend: ${error.message}\n`);
      unread.push({ file, message: error.message });
    }
  }
  return { opened, unread };
}

export function codeOf({ opened, unread }: Batch): number {
  const found = opened.map(({ job }) => (hasErrors(job) ? ERRORS : CLEAN));
  return worst([...found, unread.length ? FAILED : CLEAN]);
}
