/** Commands about some pieces of work of a file: all that can be told of, or the one that is named. */
import { phrase } from '../../../shared/phrase';
import type { Work } from '../../engine/brickwork/work';
import type { Env } from '../../engine/resolve/env';
import type { Given } from '../args';
import { FAILED } from '../exits';
import type { Io } from '../io';
import { near } from '../near';
import type { Opened } from '../session';
import { codeOf, fileAnd, JSON_OPTION, sessionOf } from './command';

export interface OfWorks {
  /** The command. */
  readonly name: string;
  /** Whether there is anything to tell of a piece of work. */
  tells(work: Work): boolean;
  /** Why nothing is told of the file. */
  none(shown: string): string;
  /** Why nothing is told of that name; `hint`: of what else it is. */
  notOf(shown: string, block: string, hint: string): string;
  document(works: readonly Work[], opened: Opened): string;
  report(work: Work, env: Env, io: Io): string;
}

/** @returns the exit code */
export function runOfWorks(of: OfWorks, given: Given, io: Io): number {
  const [file, block] = fileAnd(given, of.name, 1);
  const opened = sessionOf(given, io).open(file);
  const works = chosen(of, opened, block);
  if (typeof works === 'string') {
    io.err(`perpend: ${works}\n`);
    return FAILED;
  }
  if (given.has(JSON_OPTION.name)) io.raw(of.document(works, opened));
  else io.out(`${works.map((work) => of.report(work, opened.job.env, io)).join('\n\n')}\n`);
  return codeOf({ opened: [opened], unread: [] });
}

/** Else a sentence that says why none. */
function chosen(
  of: OfWorks,
  { job, shown }: Opened,
  block: string | undefined,
): readonly Work[] | string {
  const all = job.works.filter(of.tells);
  if (!all.length) return of.none(shown);
  if (block === undefined) return all;
  const found = all.filter((work) => work.name === block);
  if (found.length) return found;
  const names = all.map((work) => work.name).filter(Boolean);
  const [meant] = near(block, names);
  const hint = meant ? phrase`Did you mean ${meant}?` : phrase`There is ${names.join(', ')}.`;
  return of.notOf(shown, block, hint);
}
