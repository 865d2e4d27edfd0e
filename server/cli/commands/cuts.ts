/** perpend cuts: the cut list of a job, course by course, and the bricks that the pieces are cut from. */
import { later, phrase } from '../../../shared/phrase';
import { cutsDocument } from '../json/cuts';
import { cutsReport } from '../show/cuts';
import { type Command, JSON_OPTION, WORKSPACE } from './command';
import { type OfWorks, runOfWorks } from './of-works';

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
  run: (given, io) => runOfWorks(OF, given, io),
};

/** Walls and piers that are laid. */
const OF: OfWorks = {
  name: 'cuts',
  tells: (work) => work.facts.cuts !== undefined,
  none: (shown) => phrase`There is nothing laid in ${shown} that bricks could be cut for.`,
  notOf: (shown, block, hint) => phrase`${shown} has nothing called ${block} that is laid. ${hint}`,
  document: cutsDocument,
  report: cutsReport,
};
