/** Bricks that might be bought for a repair, each beside what stands there. */
import type { Candidate } from '../../engine/brickwork/matching';
import type { Work } from '../../engine/brickwork/needs';
import {
  bedText,
  costText,
  driftText,
  largerText,
  moreTexts,
  nearText,
  stoodText,
} from '../../engine/views/match';
import type { Job } from '../../engine/workspace/job';
import { rowOf, tableOf, under } from '../cells';
import { framed } from '../framed';
import type { Letterhead, Paper, Part } from '../paper/model';
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
    const texts = [largerText, bedText, driftText, costText].map((text) => text(one, env));
    return rowOf(`${one.rank} ${one.brick.title}`, ...texts);
  });
  const said = [words.beside(stoodText(matching, env)), words.ranked(matching.order)];
  return [
    ...under(
      work.title,
      ...said.map((text): Part => ({ part: 'words', text })),
      tableOf(work.name, words.heads, rows, [3, 4]),
      { part: 'words', text: words.columns, small: true },
    ),
    ...matching.candidates.flatMap((one) => candidateParts(one, job, words)),
  ];
}

function candidateParts(one: Candidate, { env }: Job, words: MatchWords): Part[] {
  const said = [words.size(nearText(one, env)), ...moreTexts(one, env)];
  const parts: Part[] = [
    { part: 'heading', level: 3, text: `${one.rank} ${one.brick.title}` },
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
