/** The cut list of a job, and the bricks that the pieces are cut from. */
import type { CutPart } from '../../engine/brickwork/cuts/sheet';
import { lengthText } from '../../engine/brickwork/lengths';
import type { Work } from '../../engine/brickwork/work';
import type { Job } from '../../engine/workspace/job';
import { under } from '../cells';
import { framed } from '../framed';
import { fromBlock } from '../from';
import type { Letterhead, Paper, Part } from '../paper/model';
import { titleOf } from '../quote/work';
import { cutTable } from '../site/cuts';
import type { CutsWords, Words } from '../words';

/** Pieces of work whose bricks are laid, and so cut. */
export function laidIn(job: Job): readonly Work[] {
  return job.works.filter((work) => work.facts.cuts);
}

/** @param only the name of a piece of work; without it, of all */
export function cutsPage(
  job: Job,
  letterhead: Letterhead | undefined,
  version: string,
  only?: string,
): Paper {
  const works = laidIn(job).filter(({ name }) => only === undefined || name === only);
  return framed({
    job,
    letterhead,
    version,
    kind: 'cuts',
    title: (words) => words.pages.cuts.title,
    parts: (words) =>
      works.length
        ? works.flatMap((work) => workPart(work, job, words))
        : [{ part: 'words', text: words.pages.cuts.nothing }],
  });
}

function workPart(work: Work, job: Job, words: Words): Part[] {
  const title = titleOf(work, job.works, words.quote);
  const parts = work.facts.cuts?.() ?? [];
  if (!parts.length)
    return [
      { part: 'words', text: words.pages.cuts.nothingCut(title), from: fromBlock(work.block) },
    ];
  const all = parts.flatMap((part) => [
    ...cutTable(part, job, words.site),
    ...notes(part, job, words.pages.cuts),
  ]);
  const [first, ...others] = all;
  return [...under({ text: title, from: fromBlock(work.block) }, first!), ...others];
}

function notes({ needed, alike, onEdge }: CutPart, { env }: Job, words: CutsWords): Part[] {
  const texts = [
    ...(alike > 1 ? [words.eachOf(alike)] : []),
    ...(onEdge ? [words.onEdge(onEdge)] : []),
    ...needed.bats.flatMap(({ count, length }) =>
      count ? [words.batsLeft(String(count), lengthText(env, length))] : [],
    ),
  ];
  return texts.map((text) => ({ part: 'words', text }));
}
