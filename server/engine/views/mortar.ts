/** A mix of a job in a line of words: how much of it, in what batches, and what is left over. */
import { phrase } from '../../../shared/phrase';
import { mortarIn } from '../mortar/figures';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import { upTo } from './mixing';
import { showTerm } from './show';

/** A piece of the line, and the figure it is of. */
export interface MixPart {
  readonly text: string;
  readonly term: Term;
}

/** Nothing for a mix that no work of the job is laid in. */
export function mixSummary(name: string | undefined, job: Job): string | undefined {
  return mixParts(name, job)
    ?.map((part) => part.text)
    .join(' · ');
}

export function mixParts(name: string | undefined, job: Job): readonly MixPart[] | undefined {
  if (!job.isJob) return undefined;
  const found = mortarIn(job.price, job.env).find(({ mix }) => mix.name === name);
  if (!found || found.mix.wet.value.isZero()) return undefined;
  const show = (term: Term) => showTerm(term, job.env);
  const { mix, mixing, left } = found;
  const batches = mixing && phrase`${show(mixing.count)} of ${upTo(mixing)}${show(mixing.size)}`;
  const bricks = left?.bricks && phrase`what is left lays ${show(left.bricks)}`;
  return [
    { text: show(mix.wet), term: mix.wet },
    ...(batches ? [{ text: batches, term: mixing.count }] : []),
    ...(bricks ? [{ text: bricks, term: left.bricks! }] : []),
  ];
}

/** How far each other yield model lies from the one that a mix of the job is reckoned by. */
export function yieldsBeside(name: string, job: Job): readonly string[] {
  if (!job.isJob) return [];
  return (
    mortarIn(job.price, job.env)
      .find(({ mix }) => mix.name === name)
      ?.mix.wet.detail?.() ?? []
  );
}
