/** How a figure of the job came about, by its id: the whole working, to read by itself. */

import { later, phrase, spoken } from '../../../shared/phrase';
import type { FigureItem, Working } from '../../../shared/protocol';
import { kindSaid } from '../kinds-said';
import { allFigures } from '../views/job-view';
import { showTerm } from '../views/show';
import { workingOf } from '../views/working';
import type { Job } from '../workspace/job';
import { plain } from './markdown';
import { type Linker, PLAIN } from './types';
import { workingPage } from './working-page';

/** Nothing when the job has no such figure. */
export function workingFor(job: Job, id: string, link: Linker = PLAIN): Working | undefined {
  const figure = allFigures(job).find((f) => f.key === id);
  if (!figure) return undefined;
  const view = workingOf(figure.term, job.env);
  const missing = (view.missing ?? []).map((what) => phrase`- Missing: ${plain(what)}`);
  const title = `${view.label}: ${view.result}`;
  const parts = [`# ${plain(title)}`, groupOf(id, job), missing.join('\n')];
  const page = workingPage(view, link);
  return { title, markdown: `${[...parts, page].filter(Boolean).join('\n\n')}\n` };
}

/** Every figure, ready to choose from: the price first, then the job's others, since those are what is asked for most. */
export function figureItems(job: Job): FigureItem[] {
  const items = allFigures(job).map(({ key, term }) => ({
    id: key,
    label: term.label,
    text: showTerm(term, job.env),
    group: groupOf(key, job),
  }));
  const own = items.filter((item) => item.id.startsWith('job.')).reverse();
  const price = own.filter((item) => item.id === 'job.price');
  const others = own.filter((item) => item.id !== 'job.price');
  return [...price, ...others, ...items.filter((item) => !item.id.startsWith('job.'))];
}

const GROUPS: Readonly<Record<string, string>> = {
  job: later`The job`,
  need: later`To buy`,
  buy: later`To buy`,
  cost: later`To buy`,
  mix: later`To mix`,
  stage: later`Payment`,
  batches: later`batches`,
  batch: later`batch`,
  last: later`last`,
  over: later`over`,
  lays: later`lays`,
  left: later`left`,
  result: later`result`,
  partner: later`partner`,
  discount: later`discount`,
  tax: later`tax`,
  deducted: later`deducted`,
};

function groupOf(id: string, job: Job): string {
  const first = id.slice(0, id.indexOf('.'));
  const work = job.works.find((w) => w.name === first);
  return work ? `${kindSaid(work.kind)} ${work.name}` : spoken(GROUPS[first] ?? first);
}
