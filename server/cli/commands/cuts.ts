/** perpend cuts: the cut list of a job, course by course, and the bricks that the pieces are cut from. */
import { later, phrase } from '../../../shared/phrase';
import type { Work } from '../../engine/brickwork/needs';
import type { Given } from '../args';
import { FAILED } from '../exits';
import type { Io } from '../io';
import { cutsDocument } from '../json/cuts';
import { near } from '../near';
import type { Opened } from '../session';
import { cutsReport } from '../show/cuts';
import { type Command, codeOf, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

export const cuts: Command = {
  name: 'cuts',
  takes: 'FILE [BLOCK]',
  about: later`list what is cut, course by course, and from which bricks`,
  more: [
    later`BLOCK is the name of a wall, a pier or a repair; without it, all are listed.
Pieces are nested into as few bricks as may be, with what the saw takes; bats at
hand are used first. Courses count from 1, places from the left end.`,
  ],
  options: [JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, block] = fileAnd(given, 'cuts', 1);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    const works = chosen(opened, block);
    if (typeof works === 'string') {
      io.err(`perpend: ${works}\n`);
      return FAILED;
    }
    if (given.has(JSON_OPTION.name)) io.raw(cutsDocument(works, opened));
    else io.out(`${works.map((work) => cutsReport(work, opened.job.env)).join('\n\n')}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** Walls and piers that are laid; else a sentence that says why none. */
function chosen({ job, shown }: Opened, block: string | undefined): readonly Work[] | string {
  const laid = job.works.filter((work) => work.facts.cuts);
  if (!laid.length) return phrase`There is nothing laid in ${shown} that bricks could be cut for.`;
  if (block === undefined) return laid;
  const found = laid.filter((work) => work.name === block);
  if (found.length) return found;
  const names = laid.map((work) => work.name).filter(Boolean);
  const [meant] = near(block, names);
  const hint = meant ? phrase`Did you mean ${meant}?` : phrase`There is ${names.join(', ')}.`;
  return phrase`${shown} has nothing called ${block} that is laid. ${hint}`;
}
