/** The parts of a job, from what is worked out already: work, costs, price, what is open. */
import type { PartTold } from '../../../../shared/protocol/parts';
import { wordOf } from '../../resolve/book';
import { allFigures } from '../../views/job-view';
import { showTerm } from '../../views/show';
import { workingOf } from '../../views/working';
import type { Job } from '../../workspace/job';
import { plain, workingList } from '../markdown';
import { moneyParts } from './money';
import { openParts } from './open';
import type { JobPart } from './part';
import { workParts } from './work';

export type { JobPart } from './part';

export interface PartsOfJob {
  readonly title: string;
  readonly price: string;
  readonly complete: boolean;
  readonly parts: readonly JobPart[];
}

/** Nothing for a file that is no job. */
export function partsOf(job: Job): PartsOfJob | undefined {
  if (!job.isJob) return undefined;
  const block = job.book.blocksOf('job').find((b) => b.file.name === job.file.name);
  const { total } = job.price;
  const parts = [...workParts(job), ...moneyParts(job), ...openParts(job)];
  return {
    title: wordOf(block?.read.heading?.values.title),
    price: showTerm(total, job.env),
    complete: !total.gaps.length && !parts.some(({ kind }) => kind === 'stops'),
    parts,
  };
}

/** Deep enough to see what a figure is made of; the whole working is a page of its own. */
const DEEP = 3;
const MOST_LINES = 14;

/** How a figure came about, short. Nothing when the job has no such figure. */
export function partTold(job: Job, id: string): PartTold | undefined {
  const figure = allFigures(job).find((f) => f.key === id);
  if (!figure) return undefined;
  const view = workingOf(figure.term, job.env);
  const missing = (view.missing ?? []).map((what) => `- ${plain(what)}`);
  const list = workingList(view, { deep: DEEP, most: MOST_LINES });
  return { markdown: [list, missing.join('\n')].filter(Boolean).join('\n\n') };
}
