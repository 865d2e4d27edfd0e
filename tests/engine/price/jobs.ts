/** Jobs whose price is plain arithmetic: costs at a price, and no bricks to lay. */
import type { Term } from '../../../server/engine/working/term';
import type { Job } from '../../../server/engine/workspace/job';
import { jobOf } from '../world';

/** A cost of so much, and what the price block and the job say. */
export function costing(cost: string, price = '', job = '', more = ''): Job {
  const round = /^ {2}round/m.test(price) ? '' : '  round £0\n';
  return jobOf(
    `perpend 1\nuse uk\njob "A"\n${job}cost all "All of it" 1 at ${cost}\n${more}labour\n  bricklayer £20 per h\n  gang 1 bricklayer\nprice\n${round}${price}`,
  );
}

/** Exact figures of the price block by their keys. */
export function figures(job: Job): Record<string, string> {
  return Object.fromEntries(job.price.figures.map((f) => [f.key, f.term.value.toFixed()]));
}

/** The term of a figure of the price block. */
export function termOf(job: Job, key: string): Term {
  return job.price.figures.find((f) => f.key === key)!.term;
}

export function figure(job: Job, key: string): string {
  return figures(job)[key]!;
}

export const errors = (job: Job) =>
  job.findings.filter((f) => f.severity === 'error').map((f) => f.message);
