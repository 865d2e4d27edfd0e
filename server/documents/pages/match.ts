/** Bricks that might be bought for a repair, each beside what stands there. */

import type { Candidate } from '../../engine/brickwork/matching';
import { criteriaSaid } from '../../engine/brickwork/matching/rank';
import type { Work } from '../../engine/brickwork/work';
import { columnTexts, moreTexts, nearText, stoodText } from '../../engine/views/match';
import type { Job } from '../../engine/workspace/job';
import { rowOf, tableOf, under } from '../cells';
import { framed } from '../framed';
import { fromBlock } from '../from';
import type { From, Letterhead, Paper, Part } from '../paper/model';
import type { MatchWords } from '../words';

/** Repairs that have something to compare. */
export function matchedIn(job: Job): readonly Work[] {
  return job.works.filter((work) => work.facts.matching);
}

/** @param only the name of a repair; without it, of all */
export function matchPage(
  job: Job,
  letterhead: Letterhead | undefined,
  version: string,
  only?: string,
): Paper {
  const works = matchedIn(job).filter(({ name }) => only === undefined || name === only);
  return framed({
    job,
    letterhead,
    version,
    kind: 'match',
    title: (words) => words.pages.match.title,
    parts: (words) => works.flatMap((work) => repairParts(work, job, words.pages.match)),
    foot: (words) => words.pages.forFirm,
  });
}

function repairParts(work: Work, job: Job, words: MatchWords): Part[] {
  const { env } = job;
  const matching = work.facts.matching!;
  const rows = matching.candidates.map((one) => {
    return {
      ...rowOf(`${one.rank} ${one.brick.title}`, ...columnTexts(one, env)),
      from: fromBrick(one),
    };
  });
  const said = [words.beside(stoodText(matching, env)), words.ranked(criteriaSaid(matching.order))];
  return [
    ...under(
      { text: work.title, from: fromBlock(work.block) },
      ...said.map((text): Part => ({ part: 'words', text })),
      tableOf(work.name, words.heads, rows, [3, 4]),
      { part: 'words', text: words.columns, small: true },
    ),
    ...matching.candidates.flatMap((one) => candidateParts(one, job, words)),
  ];
}

/** The block of the brick. */
function fromBrick({ brick }: Candidate): From {
  return fromBlock(brick.facts?.block);
}

function candidateParts(one: Candidate, { env }: Job, words: MatchWords): Part[] {
  const said = [words.size(nearText(one, env)), ...moreTexts(one, env)];
  const parts: Part[] = [
    { part: 'heading', level: 3, text: `${one.rank} ${one.brick.title}`, from: fromBrick(one) },
    ...(one.chosen ? [{ part: 'words' as const, text: words.bought, strong: true }] : []),
    ...(one.why ? [{ part: 'words' as const, text: one.why }] : []),
    { part: 'list', items: said.map((text) => [text]) },
    ...(one.honest.length
      ? [
          { part: 'words' as const, text: words.honest },
          { part: 'list' as const, items: one.honest.map((text) => [text]) },
        ]
      : []),
  ];
  return [{ part: 'together', parts }];
}
