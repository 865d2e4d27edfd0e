/** perpend match: bricks that might be bought for a repair, each beside what stands there. */
import { later, phrase } from '../../../shared/phrase';
import type { Work } from '../../engine/brickwork/needs';
import type { Given } from '../args';
import { FAILED } from '../exits';
import type { Io } from '../io';
import { matchDocument } from '../json/match';
import { near } from '../near';
import type { Opened } from '../session';
import { matchReport } from '../show/match';
import { type Command, codeOf, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

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
  run(given: Given, io: Io): number {
    const [file, block] = fileAnd(given, 'match', 1);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    const works = chosen(opened, block);
    if (typeof works === 'string') {
      io.err(`perpend: ${works}\n`);
      return FAILED;
    }
    if (given.has(JSON_OPTION.name)) io.raw(matchDocument(works, opened));
    else io.out(`${works.map((work) => matchReport(work, opened.job.env, io)).join('\n\n')}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** Repairs that have something to compare; else a sentence that says why none. */
function chosen({ job, shown }: Opened, block: string | undefined): readonly Work[] | string {
  const compared = job.works.filter((work) => work.facts.matching);
  if (!compared.length)
    return phrase`There is nothing to compare in ${shown}: that takes a repair which buys bricks, and a candidates or match line in it.`;
  if (block === undefined) return compared;
  const found = compared.filter((work) => work.name === block);
  if (found.length) return found;
  const names = compared.map((work) => work.name).filter(Boolean);
  const [meant] = near(block, names);
  const hint = meant ? phrase`Did you mean ${meant}?` : phrase`There is ${names.join(', ')}.`;
  return phrase`${shown} has nothing called ${block} that bricks are compared for. ${hint}`;
}
