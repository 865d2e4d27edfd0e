/** perpend match: bricks that might be bought for a repair, each beside what stands there. */
import { later, phrase } from '../../../shared/phrase';
import { matchDocument } from '../json/match';
import { matchReport } from '../show/match';
import { type Command, JSON_OPTION, WORKSPACE } from './command';
import { type OfWorks, runOfWorks } from './of-works';

export const matchCommand: Command = {
  name: 'match',
  takes: 'FILE [BLOCK]',
  about: later`compare bricks that might be bought with what stands there`,
  more: [
    later`BLOCK is the name of a repair; without it, all that buy a brick are listed. Its
match and candidates lines say which bricks; they are ranked by the match-order
of the defaults. Columns: by how much a brick’s length, width and height differ
from what stands; the bed joint that keeps the gauge; drift, by which its
courses come out too high or too low at its usual joint; what the bricks that
this repair is short of cost, before overhead, profit and tax.`,
  ],
  options: [JSON_OPTION, WORKSPACE],
  run: (given, io) => runOfWorks(OF, given, io),
};

/** Repairs that have something to compare. */
const OF: OfWorks = {
  name: 'match',
  tells: (work) => work.facts.matching !== undefined,
  none: (shown) =>
    phrase`There is nothing to compare in ${shown}: that takes a repair which buys bricks, and a candidates or match line in it.`,
  notOf: (shown, block, hint) =>
    phrase`${shown} has nothing called ${block} that bricks are compared for. ${hint}`,
  document: matchDocument,
  report: matchReport,
};
